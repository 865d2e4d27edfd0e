import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/blocks';
import { HEADINGS, type LineKind } from '../../grammar/lines';
import { signaturesAt } from '../../server/engine/ide/signature';
import { asked, job } from './ask';

const HEAD = 'perpend 1\nuse "firm.perp"\n';

function told(marked: string) {
  const { job: of, at } = asked(HEAD + marked);
  return signaturesAt(of, at);
}

/** The label of the active signature, its active part in angle brackets; nothing where there is none. */
function shown(marked: string): string | undefined {
  const found = told(marked);
  if (!found) return undefined;
  const { label, parts, active } = found.signatures[found.active]!;
  const part = parts[active!]!;
  return `${label.slice(0, part.start)}<${label.slice(part.start, part.end)}>${label.slice(part.end)}`;
}

/** What is told of the active part. */
function partTold(marked: string): string {
  const { signatures, active } = told(marked)!;
  const { parts, active: part } = signatures[active]!;
  return parts[part!]!.text;
}

describe('what a line takes', () => {
  test.each([
    ['a length', 'wall n\n  length $0', 'length <length>'],
    ['its number is written, its unit is not', 'wall n\n  length 7.4 $0', 'length <length>'],
    ['within the number', 'wall n\n  length 7$0.4 m', 'length <length>'],
    ['at the end of the unit', 'wall n\n  length 7.4 m$0', 'length <length>'],
    ['a name', 'wall n\n  brick re$0', 'brick <brick>'],
    ['a choice', 'wall n\n  opening g\n    from $0', 'from <left|right> length'],
    ['what follows a choice', 'wall n\n  opening g\n    from left $0', 'from left|right <length>'],
    ['the second side of a size', 'wall n\n  footing 450 x $0', 'footing <length x length> [mix]'],
    [
      'what may follow a size',
      'wall n\n  footing 450 x 225 mm $0',
      'footing length x length [<mix>]',
    ],
    ['a heading’s title', 'wall north $0', 'wall name [<"title">]'],
    ['within a text', 'job "Orch$0ard"', 'job [<"title">]'],
    ['a trade by its own word', 'labour\n  mason £30 $0', 'mason money <per> h-or-day'],
    ['what comes after a joining word', 'labour\n  mason £30 per $0', 'mason money per <h-or-day>'],
    ['the next thing of a list', 'mix m\n  parts cement 1, $0', 'parts <material> number [, …]'],
    ['that a list goes on', 'mix m\n  parts cement 1 $0', 'parts material number [<, …>]'],
    ['a way that fits what is written', 'wall n\n  height 8 $0', 'height <courses>'],
    [
      'in the middle of a line that is whole',
      'cost s "Skip" 1 $0at £240',
      'cost name "title" number <at> money [per day]',
    ],
  ])('%s', (_, marked, wanted) => {
    expect(shown(marked)).toBe(wanted);
  });

  test('each way to write a line is a signature of its own, the one begun in front', () => {
    const labels = (marked: string) => told(marked)!.signatures.map((s) => s.label);
    expect(labels('use $0')).toEqual(['use "file"', 'use library']);
    expect(labels('wall n\n  height 8 $0')).toEqual(['height courses', 'height length']);
    const found = told('brick b\n  price £1 per $0')!;
    expect(found.signatures.map((s) => s.label)).toEqual([
      'price money each',
      'price money per number',
      'price money per pack',
    ]);
    expect(found.active).toBe(1);
    expect(found.signatures[0]!.active).toBeUndefined();
    expect(found.signatures[2]!.active).toBe(2);
  });

  test('the ways of a line that an option writes anew are that line’s', () => {
    const wall = 'wall north\n  length 3 m\noption o\n';
    expect(shown(`${wall}  change north height $0`)).toBe('change north height <courses>');
    expect(shown(`${wall}  change $0`)).toMatch(/^change <.*> line$/);
  });
});

describe('of each part is told', () => {
  test.each([
    ['what it is, with an example', 'wall n\n  length $0', /^A length such as 7\.4 m$/],
    ['a size', 'wall n\n  footing $0', /^A size such as 450 x 225 mm$/],
    ['names that there are', 'wall n\n  brick $0', /^The name of a brick, such as `red`, /],
    [
      'openings of this wall alone',
      'wall a\n  opening x\nwall n\n  opening y\n  pier p\n    at $0',
      /such as `y`$/,
    ],
    ['a word that stands as it is', 'cost s "Skip" 1 $0', /^The word `at`, as it stands$/],
    ['the words it may be', 'wall n\n  left $0', /stopped/],
    ['how the list goes on', 'mix m\n  parts cement 1 $0', /`parts cement 1, lime 1, sand 6`$/],
    ['a number, as the example has it', 'brick b\n  pack $0', /^A plain number, such as `452`$/],
  ])('%s', (_, marked, wanted) => {
    expect(partTold(marked)).toMatch(wanted);
  });

  test('and of the whole line what its word means', () => {
    expect(told('wall n\n  length $0')!.signatures[0]!.text).toContain('length 7.4 m');
  });
});

describe('nothing is told', () => {
  test.each([
    ['on the line’s own word', 'wall n\n  len$0gth 7 m'],
    ['right behind it', 'wall n\n  length$0'],
    ['on an unknown line', 'wall n\n  lenght $0'],
    ['in a comment', 'wall n\n  length 7 m # about $0'],
    ['on an empty line', 'wall n\n  $0'],
    ['where nothing more may follow', 'wall n\n  brick red $0'],
    ['after what does not fit', 'wall n\n  brick 7 m $0'],
    ['of a heading that takes nothing', 'price $0'],
  ])('%s', (_, marked) => {
    expect(told(marked)).toBeUndefined();
  });

  test('a space in a text asks for nothing', () => {
    expect(told('job "Orchard $0"')!.inText).toBe(true);
    expect(told('job $0"Orchard"')!.inText).toBe(false);
  });
});

/** A heading with every line that may stand under it, each written as its example. */
function written(kind: LineKind, indent = 0): string[] {
  const inner = (kind.body ?? []).flatMap((line) => written(line, indent + 2));
  return [' '.repeat(indent) + kind.example, ...inner];
}

describe('every kind of line', () => {
  test.each(HEADINGS.map((kind) => [kind.key, written(kind)] as const))('of %s', (_, lines) => {
    const of = job(lines.join('\n'));
    lines.forEach((text, line) => {
      const { key, items } = readLine(text, 0)!;
      for (const column of [key!.span.end + 1, ...items.map(({ span }) => span.end)]) {
        const found = signaturesAt(of, { line, column });
        if (!items.length) expect(found).toBeUndefined();
        else expectWhole(found, `${text} at ${column}`);
      }
    });
  });
});

/** Its parts stand in order within the label, each is told of, and one is active. */
function expectWhole(found: ReturnType<typeof signaturesAt>, where: string): void {
  const { signatures, active } = found ?? { signatures: [], active: 0 };
  expect(signatures[active]?.parts[signatures[active]?.active ?? -1], where).toBeDefined();
  for (const { label, parts } of signatures) {
    let end = 0;
    for (const part of parts) {
      expect(part.start).toBeGreaterThan(end);
      expect(part.end).toBeGreaterThan(part.start);
      expect(part.text).not.toBe('');
      end = part.end;
    }
    expect(end).toBeLessThanOrEqual(label.length);
  }
}
