/** All that was plainly meant, mended at once: what is mended, what is left alone, and that the text is the better for it. */
import { describe, expect, test } from 'vitest';
import { actionsFor, fixAllOf } from '../../server/engine/ide/actions';
import { editsBetween } from '../../server/engine/ide/mend/edited';
import { withEdits } from '../harness/edits';
import { job } from './ask';

const HEAD = 'perpend 1\nuse "firm.perp"\n';
const WALL = 'wall n\n  brick red\n  length 2240 mm\n  height 8 courses\n  stands held\n';

/** The text after all of it; nothing where it is not offered. */
function mended(text: string): string | undefined {
  const [action] = fixAllOf(job(text));
  return action && withEdits(text, action.later!());
}

/** The text after all of one kind, asked for at a place. */
function mendedKind(text: string, line: number, column: number): string | undefined {
  const at = { startLine: line, startColumn: column, endLine: line, endColumn: column };
  const action = actionsFor(job(text), at).find((a) => a.later);
  return action && withEdits(text, action.later!());
}

describe('what was plainly meant', () => {
  test.each([
    ['a heading', `${HEAD}wal n\n${WALL.slice(7)}`, `${HEAD}${WALL}`],
    ['a line', HEAD + WALL.replace('length', 'lenght'), HEAD + WALL],
    ['a unit', HEAD + WALL.replace('courses', 'corses'), HEAD + WALL],
    ['a name', HEAD + WALL.replace('red', 'rad'), HEAD + WALL],
    ['two in one text', HEAD + WALL.replace('red', 'rad').replace('length', 'lenght'), HEAD + WALL],
    [
      'a line of a mended heading',
      `${HEAD}wal n\n  brick red\n  lenght 2240 mm\n  height 8 courses\n  stands held\n`,
      HEAD + WALL,
    ],
    ['the edition', `use "firm.perp"\n${WALL}`, `perpend 1\n\nuse "firm.perp"\n${WALL}`],
    [
      'a task',
      `${HEAD}${WALL}record\n  worked 2026-03-09 2 people 7 h facewerk\n`,
      `${HEAD}${WALL}record\n  worked 2026-03-09 2 people 7 h facework\n`,
    ],
    [
      'an option’s block',
      `${HEAD}${WALL}option o\n  change m height 9 courses\n`,
      `${HEAD}${WALL}option o\n  change n height 9 courses\n`,
    ],
    [
      'an option’s line',
      `${HEAD}${WALL}option o\n  change n heigth 9 courses\n`,
      `${HEAD}${WALL}option o\n  change n height 9 courses\n`,
    ],
  ])('%s', (_, text, after) => {
    expect(mended(text)).toBe(after);
  });

  test('remarks, blanks and everything else stay as they are', () => {
    const text = `# A job\n${HEAD}\n${WALL.replace('length 2240 mm', 'lenght   2240 mm   # as measured')}\n# the end\n`;
    expect(mended(text)).toBe(text.replace('lenght', 'length'));
  });

  test('words that hid that a run does not fit', () => {
    const text = HEAD + WALL.replace('red', 'rad').replace('length 2240', 'lenght 1840');
    expect(mended(text)).toBe(HEAD + WALL.replace('2240', '1840'));
  });

  test('a line that has lost its indent', () => {
    expect(mended(HEAD + WALL.replace('  height', 'height'))).toBe(HEAD + WALL);
  });
});

describe('what is left alone', () => {
  test.each([
    ['nothing is wrong', HEAD + WALL],
    ['a run that does not fit: how it is laid is a decision', HEAD + WALL.replace('2240', '2300')],
    ['a discount that is too large', `${HEAD}job "A"\ncost s "S" 1 at £9\nprice\n  discount £10\n`],
    [
      'a price that has moved',
      `${HEAD}job "A"\ncost s "S" 1 at £9\nrecord\n  sent 2026-03-02 £8\n`,
    ],
    ['a number that can be read two ways', HEAD + WALL.replace('2240 mm', '2,240 mm')],
    ['a word that means nothing known', HEAD + WALL.replace('red', 'qqqqqq')],
  ])('%s', (_, text) => {
    expect(mended(text) ?? text).toBe(text);
  });

  test('a price that was complete does not move', () => {
    const text = `${HEAD}${WALL}record\n  worked 2026-03-09 2 people 7 h facewerk\n`;
    const before = job(text).price.total.value;
    expect(job(mended(text)!).price.total.value.eq(before)).toBe(true);
  });

  test('with a fault that cannot be mended beside it, what can be is', () => {
    const text = HEAD + WALL.replace('length', 'lenght').replace('red', 'qqqqqq');
    expect(mended(text)).toBe(text.replace('lenght', 'length'));
  });
});

describe('whatever the text', () => {
  const words = ['lenght', 'length', 'hight', 'rad', 'red', 'corses', '7 kg', 'wal', 'wall', 'n'];
  test.each(Array.from({ length: 30 }, (_, seed) => seed))(
    '%i: fewer findings, never more errors, and done in one go',
    (seed) => {
      let at = seed * 7919 + 1;
      const next = () => {
        at = (at * 48271) % 2147483647;
        return at;
      };
      const lines = Array.from({ length: 8 }, () => {
        const said = Array.from({ length: 1 + (next() % 3) }, () => words[next() % words.length]);
        return `${' '.repeat((next() % 3) * 2)}${said.join(' ')}`;
      });
      const text = `${HEAD}${WALL}${lines.join('\n')}\n`;
      const after = mended(text);
      if (after === undefined || after === text) return;
      const errors = (of: string) => job(of).findings.filter((f) => f.severity === 'error').length;
      const grave = (of: string) =>
        job(of).findings.filter((f) => f.severity === 'error' || f.severity === 'warning').length;
      expect(errors(after)).toBeLessThanOrEqual(errors(text));
      if (errors(after) === errors(text)) expect(grave(after)).toBeLessThan(grave(text));
      expect(mended(after) ?? after).toBe(after);
    },
  );
});

describe('all of one kind', () => {
  const TWO = `${HEAD}wall a\n  brick rad\n  length 2240 mm\n  height 8 courses\nwall b\n  brick rad\n  lenght 2240 mm\n  height 8 courses\n`;

  test('are mended in the whole file, and nothing else', () => {
    expect(mendedKind(TWO, 3, 9)).toBe(TWO.replaceAll('rad', 'red'));
  });

  test('are offered with how many there are', () => {
    const at = { startLine: 3, startColumn: 9, endLine: 3, endColumn: 9 };
    expect(actionsFor(job(TWO), at).map((a) => a.title)).toEqual([
      'Write red',
      'Mend all 2 of this kind in the file',
    ]);
  });

  test('are not offered of one alone', () => {
    expect(mendedKind(TWO, 8, 4)).toBeUndefined();
  });

  test('may be what is decided by whoever asks', () => {
    const wall = (name: string) =>
      `wall ${name}\n  brick red\n  length 2300 mm\n  height 8 courses\n  stands held\n`;
    const text = `${HEAD}${wall('a')}${wall('b')}`;
    const after = mendedKind(text, 4, 10)!;
    expect(after).not.toBe(text);
    expect(job(after).findings.filter((f) => f.code === 'fit-run')).toEqual([]);
  });
});

describe('edits between two texts', () => {
  test.each([
    ['a\nb\nc', 'a\nx\nc'],
    ['a\nb\nc', 'a\nb\nb2\nc'],
    ['a\nb\nc', 'b\nc'],
    ['a\nb\nc', 'a\nb'],
    ['a\nb\nc', 'x\na\nb\nc'],
    ['a\nb\nc', 'a\nb\nc\nd'],
    ['a\nb\nc', ''],
    ['', 'a\nb'],
    ['a\na\na', 'a\na'],
    ['a\nb\nc\nd', 'x\nc\nd'],
  ])('%j to %j', (before, after) => {
    const edits = editsBetween(before.split('\n'), after.split('\n'));
    expect(withEdits(before, edits)).toBe(after);
  });
});
