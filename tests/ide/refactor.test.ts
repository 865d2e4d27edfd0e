/** Changes that mend nothing: what is offered where, and what becomes of the text. */
import { describe, expect, test } from 'vitest';
import { refactoringsFor } from '../../server/engine/ide/actions';
import type { Action } from '../../server/engine/ide/types';
import { applied, withEdits } from '../harness/edits';
import { asked, job } from './ask';

const HEAD = 'perpend 1\nuse "firm.perp"\n';

function offered(marked: string, fills = false): { text: string; actions: Action[] } {
  const { job: made, at, text } = asked(marked);
  const range = {
    startLine: at.line,
    startColumn: at.column,
    endLine: at.line,
    endColumn: at.column,
  };
  return { text, actions: refactoringsFor(made, range, fills) };
}

/** The text after the action whose title begins so. */
function after(marked: string, title: string, fills = false): string | undefined {
  const { text, actions } = offered(marked, fills);
  const action = actions.find((a) => a.title.startsWith(title));
  if (!action) return undefined;
  if (action.later) return withEdits(text, action.later());
  return applied(
    text,
    action.edits.map((e) => ({ span: e.place, text: e.text })),
  );
}

const wall = (lines: string) => `${HEAD}wall n\n  brick red\n${lines}`;

describe('a height', () => {
  test.each([
    ['  length 2240 mm\n  hei$0ght 8 courses\n', '  length 2240 mm\n  height 600 mm\n'],
    ['  length 2240 mm\n  height 600$0 mm\n', '  length 2240 mm\n  height 8 courses\n'],
    ['  length 2240 mm\n  height 75 m$0m\n', '  length 2240 mm\n  height 1 course\n'],
  ])('is said otherwise: %j', (marked, text) => {
    expect(after(wall(marked), 'Write the height')).toBe(wall(text));
  });

  test('comes to the same price', () => {
    const text = wall('  length 2240 mm\n  height 8 courses\n  stands held\n');
    const changed = after(text.replace('height', 'hei$0ght'), 'Write the height')!;
    expect(job(changed).price.total.value.eq(job(text).price.total.value)).toBe(true);
  });

  test.each([
    ['that is no whole number of courses', '  length 2240 mm\n  hei$0ght 250 mm\n'],
    ['that works with other beds', '  length 2240 mm\n  hei$0ght 1225 mm\n'],
    ['that is a range', '  length 2240 mm\n  hei$0ght 8..10 courses\n'],
    ['that is not known', '  length 2240 mm\n  hei$0ght ?\n'],
    [
      'of an opening',
      '  length 2240 mm\n  height 8 courses\n  opening a\n    from left 440 mm\n    width 910 mm\n    hei$0ght 4 courses\n',
    ],
  ])('%s is left as it is', (_, marked) => {
    expect(after(wall(marked), 'Write the height')).toBeUndefined();
  });
});

describe('a range', () => {
  test.each([
    [wall('  length 2$0 m\n'), wall('  length 1..3 m\n')],
    [wall('  length 2.4$00 m\n'), wall('  length 2.16..2.64 m\n')],
    [wall('  length 22$040 mm\n'), wall('  length 2016..2464 mm\n')],
    [
      `${HEAD}repair f\n  brick red\n  rebuild 6$00 bricks\n`,
      `${HEAD}repair f\n  brick red\n  rebuild 54..66 bricks\n`,
    ],
    [`${HEAD}cost skip "Skip" 1 at £24$00\n`, `${HEAD}cost skip "Skip" 1 at £216..£264\n`],
    [
      `${HEAD}repair f\n  brick red\n  salvage 5$00%\n`,
      `${HEAD}repair f\n  brick red\n  salvage 45..55%\n`,
    ],
  ])('is written of a guess: %j', (marked, text) => {
    expect(after(marked, 'Write a range')).toBe(text);
    expect(
      job(text).findings.filter((f) => f.severity === 'error' && !/unknown/.test(f.code)),
    ).toEqual([]);
  });

  test('has its ends to fill in, where an editor can', () => {
    expect(after(wall('  length 22$040 mm\n'), 'Write a range', true)).toContain(
      // biome-ignore lint/suspicious/noTemplateCurlyInString: places to fill in, as editors write them
      'length ${1:2016}..${2:2464} mm',
    );
  });

  test.each([
    ['what is a range', wall('  length 2..2$0.5 m\n')],
    ['a fraction', wall('  length 7 1/$02 in\n')],
    ['what is decided', `${HEAD}price\n  round £$05\n`],
    ['what has happened', `${HEAD}record\n  paid 2026-03-09 £$090\n`],
    ['a name', wall('  mix gen$0eral\n')],
    ['what is still to be measured', wall('  length $0?\n')],
  ])('is not offered of %s', (_, marked) => {
    expect(after(marked, 'Write a range')).toBeUndefined();
  });
});

describe('lines that are missing', () => {
  test.each([
    [`${HEAD}wall$0 n\n  brick red\n`, 'Add length and height', '  length  ?\n  height  ?\n'],
    [`${HEAD}wa$0ll n\n  length 2240 mm\n`, 'Add height', '  height  ?\n'],
    [`${HEAD}pier$0 g\n  brick red\n`, 'Add size and height', '  size  ?\n  height  ?\n'],
    [
      `${HEAD}wall n\n  length 3 m\n  height 8 courses\n  open$0ing a\n`,
      'Add from and width',
      '    from  ?\n    width  ?\n',
    ],
  ])('are added under the heading: %j', (marked, title, lines) => {
    const plain = marked.replace('$0', '');
    const line = marked.slice(0, marked.indexOf('$0')).split('\n').length - 1;
    const all = plain.split('\n');
    const expected = [
      ...all.slice(0, line + 1),
      ...lines.trimEnd().split('\n'),
      ...all.slice(line + 1),
    ];
    expect(after(marked, title)).toBe(expected.join('\n'));
  });

  test('hold examples to fill in, where an editor can', () => {
    expect(after(`${HEAD}wall$0 n\n`, 'Add length', true)).toBe(
      `${HEAD}wall n\n  length  \${1:7.4 m}\n  height  \${2:18 courses}\n`,
    );
  });

  test('are not offered where nothing is missing, nor away from the heading', () => {
    expect(
      after(wall('  length 2 m\n  height 8 courses\n').replace('wall', 'wa$0ll'), 'Add'),
    ).toBeUndefined();
    expect(after(wall('  len$0gth 2 m\n'), 'Add')).toBeUndefined();
  });
});

describe('a line that all work says alike', () => {
  const TWO = `${HEAD}wall a\n  brick red\n  length 2240 mm\n  height 8 courses\nwall b\n  length 1790 mm\n  brick   red\n  height 8 courses\n`;
  const title = 'Say “brick red” once';

  test('is said once, in defaults', () => {
    expect(after(TWO.replace('brick red', 'br$0ick red'), title)).toBe(
      `${HEAD}defaults\n  brick red\n\nwall a\n  length 2240 mm\n  height 8 courses\nwall b\n  length 1790 mm\n  height 8 courses\n`,
    );
  });

  test('goes into the defaults that are there', () => {
    const text = TWO.replace('wall a', 'defaults\n  mix general\nwall a');
    const changed = after(text.replace('brick red', 'br$0ick red'), title)!;
    expect(changed).toContain('defaults\n  brick red\n  mix general\nwall a\n  length');
  });

  test('comes to the same price', () => {
    const changed = after(TWO.replace('brick red', 'br$0ick red'), title)!;
    expect(job(changed).price.total.value.eq(job(TWO).price.total.value)).toBe(true);
  });

  test.each([
    ['of one wall alone', TWO.slice(0, TWO.indexOf('wall b'))],
    [
      'where another wall leaves it to the defaults',
      `${TWO}wall c\n  length 1790 mm\n  height 8 courses\n`,
    ],
    ['where the file’s defaults say it', TWO.replace('wall a', 'defaults\n  brick red\nwall a')],
  ])('is not offered %s', (_, text) => {
    expect(
      after(text.replace('wall a\n  brick red', 'wall a\n  br$0ick red'), title),
    ).toBeUndefined();
  });

  test('is not offered of a length', () => {
    expect(after(TWO.replace('length', 'len$0gth'), 'Say')).toBeUndefined();
  });
});

describe('an option', () => {
  test('of a line is written at the end, its name and value to fill in', () => {
    expect(
      after(wall('  length 2240 mm\n  hei$0ght 8 courses\n'), 'Offer another height', true),
    ).toBe(
      wall('  length 2240 mm\n  height 8 courses\n\n') +
        // biome-ignore lint/suspicious/noTemplateCurlyInString: places to fill in, as editors write them
        'option ${1:other} "${2:height}"\n  change  n height ${3:8 courses}\n',
    );
  });

  test('filled in, it is one without an error', () => {
    const text = `${wall('  length 2240 mm\n  height 8 courses\n\n')}option other "height"\n  change  n height 9 courses\n`;
    expect(job(text).findings.filter((f) => f.severity === 'error')).toEqual([]);
  });

  test('is not offered where nothing can be filled in, nor of a note', () => {
    expect(after(wall('  length 2240 mm\n  hei$0ght 8 courses\n'), 'Offer')).toBeUndefined();
    expect(after(wall('  no$0te "A"\n'), 'Offer', true)).toBeUndefined();
  });
});
