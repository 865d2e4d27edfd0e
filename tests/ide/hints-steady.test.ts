/** A text typed key by key: hints of other lines neither vanish nor move, and none changes for a line that cannot be read yet. */
import { describe, expect, test } from 'vitest';
import { ALL_HINTS } from '../../server/engine/ide/hints';
import { SteadyHints } from '../../server/engine/ide/hints/steady';
import type { Hint } from '../../server/engine/ide/types';
import type { Workspace } from '../../server/engine/workspace/workspace';
import { inRoot, workspaceOf } from '../engine/world';
import { FILES } from './ask';

const NAME = inRoot('job.perp');
const WALLS = `perpend 1
job "Orchard"
use "firm.perp"
wall north "North"
  brick red
  length 1790 mm
  height 8 courses
  coping brick-on-edge
wall south "South"
  brick red
  length 2690 mm
  height 1.2 m
  opening gate
    from left 665 mm
    width 910 mm
cost skip "Skip" 2 at £240
`;
const RANGE = { first: 0, last: 1000 };

class Typist {
  readonly workspace: Workspace = workspaceOf(FILES);
  private readonly steady = new SteadyHints();

  constructor(text: string) {
    this.workspace.opened(NAME, text);
  }

  hints(): readonly Hint[] {
    return this.steady.of(this.workspace.job(NAME)!, RANGE, ALL_HINTS);
  }

  lines(): readonly string[] {
    return this.workspace.file(NAME)!.lines;
  }

  type(line: number, column: number, text: string, gone = 0): void {
    const place = { startLine: line, endLine: line };
    this.workspace.edited(NAME, [
      { ...place, startColumn: column, endColumn: column + gone, text },
    ]);
  }
}

/** Hints of lines that say what they said, as line of text, kind and column. */
function places(hints: readonly Hint[], lines: readonly string[]): string[] {
  return hints.map(({ line, column, kind }) => `${lines[line]} | ${kind} ${column}`);
}

/** Types into a line, key by key; at each the hints of other lines have to stand. */
function typed(typist: Typist, line: number, column: number, text: string): void {
  const before = places(typist.hints(), typist.lines());
  const own = typist.lines()[line]!;
  const others = before.filter((place) => !place.startsWith(`${own} |`));
  [...text].forEach((key, i) => {
    typist.type(line, column + i, key);
    const now = places(typist.hints(), typist.lines());
    for (const place of others) expect(now, `after ${text.slice(0, i + 1)}`).toContain(place);
  });
}

describe('key by key', () => {
  test('a new wall at the end', () => {
    const typist = new Typist(`${WALLS}\n`);
    let line = typist.lines().length - 1;
    for (const text of [
      'wall east "East side"',
      '  brick red',
      '  length 1790 mm',
      '  height 6 courses',
    ]) {
      typed(typist, line, 0, text);
      typist.type(line, text.length, '\n');
      line += 1;
    }
    expect(typist.hints().filter((h) => h.kind === 'total')).toHaveLength(4);
  });

  test('a new block between two walls, whose first letters take the lines below for their own', () => {
    const typist = new Typist(WALLS.replace('wall south', '\nwall south'));
    typed(typist, 8, 0, 'material cement');
  });

  test('an amount in mm, which for a key is one in m', () => {
    const typist = new Typist(WALLS.replace('  coping', '  \n  coping'));
    typed(typist, 7, 2, 'joint 10 mm');
    expect(typist.hints().every((hint) => !hint.held)).toBe(true);
  });

  test('an amount in m stands where it takes nothing away', () => {
    const typist = new Typist(WALLS);
    typist.hints();
    typist.type(5, 9, '17.9 m', 7);
    const hints = typist.hints();
    expect(hints.some((hint) => hint.held)).toBe(false);
    expect(hints.find((hint) => hint.line === 5)?.text).toContain('bricks');
  });

  test('a new line in a wall', () => {
    const typist = new Typist(WALLS.replace('  coping', '  \n  coping'));
    typed(typist, 7, 2, 'mix general');
  });

  test.each([
    ['a length', '1790 mm', '2690 mm'],
    ['a name', 'red', 'standard'],
    ['a title', '"North"', '"North boundary"'],
    ['a word', 'height', 'length'],
    ['an amount', '2 at £240', '3 at £190'],
  ])('%s taken out and written anew', (_, old, text) => {
    const typist = new Typist(WALLS);
    const line = typist.lines().findIndex((l) => l.includes(old));
    const column = typist.lines()[line]!.indexOf(old);
    const own = typist.lines()[line]!;
    const others = places(typist.hints(), typist.lines()).filter((p) => !p.startsWith(`${own} |`));
    for (let i = old.length - 1; i >= 0; i--) {
      typist.type(line, column + i, '', 1);
      const now = places(typist.hints(), typist.lines());
      for (const place of others) expect(now).toContain(place);
    }
    typed(typist, line, column, text);
  });
});

describe('while a line cannot be read', () => {
  const cut = () => {
    const typist = new Typist(WALLS);
    const before = typist.hints();
    typist.type(5, 14, '', 2);
    return { typist, before, now: typist.hints() };
  };

  test('hints of other lines say what they said', () => {
    const { before, now } = cut();
    const others = (hints: readonly Hint[]) =>
      hints.filter((h) => h.line !== 5).map(({ line, text }) => `${line} ${text}`);
    expect(others(now)).toEqual(others(before));
  });

  test('its own says nothing, but for a heading', () => {
    const { now } = cut();
    expect(now.filter((h) => h.line === 5)).toEqual([]);
    const typist = new Typist(WALLS);
    typist.hints();
    typist.type(3, 5, '', 5);
    const [total] = typist.hints().filter((h) => h.line === 3);
    expect(total).toMatchObject({ kind: 'total', column: 13, held: true });
  });

  test('they say that they are held', () => {
    const { now } = cut();
    expect(now.every((h) => h.held)).toBe(true);
  });

  test('until another line is edited: then each says what there is', () => {
    const { typist, before } = cut();
    typist.type(10, 9, '3', 1);
    const now = typist.hints();
    expect(now.some((h) => h.held)).toBe(false);
    expect(now.find((h) => h.line === 1)!.text).toContain('not complete');
    expect(now.find((h) => h.line === 1)!.text).not.toBe(before.find((h) => h.line === 1)!.text);
  });

  test('until it can be read again', () => {
    const { typist, before } = cut();
    typist.type(5, 14, 'mm');
    expect(typist.hints()).toEqual(before);
  });
});

test('a line that says it is not known is told of at once', () => {
  const typist = new Typist(WALLS);
  typist.hints();
  typist.type(5, 9, '?', 7);
  expect(typist.hints().find((h) => h.line === 3)!.text).toContain('…');
});

test('a file that cannot be read when it is opened holds nothing', () => {
  const typist = new Typist(WALLS.replace('length 1790', 'lenght 1790'));
  expect(typist.hints().some((h) => h.held)).toBe(false);
  expect(typist.hints().find((h) => h.line === 1)!.text).toContain('not complete');
});

test('a hint that is held is never of a line asked for elsewhere', () => {
  const typist = new Typist(WALLS);
  typist.hints();
  typist.type(2, 5, '\n');
  const lines = typist.lines();
  for (const hint of typist.hints())
    expect(hint.column).toBeLessThanOrEqual(lines[hint.line]!.length);
});
