import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_HINTS, hintsOf } from '../../server/engine/ide/hints';
import { tokensOf } from '../../server/engine/ide/tokens';
import { totalsOf } from '../../server/engine/ide/totals';
import { figureItems } from '../../server/engine/ide/working';
import { MOST_CHARACTERS, type TextChange } from '../../server/engine/workspace/source';
import type { Workspace } from '../../server/engine/workspace/workspace';
import { inRoot, workspaceOf } from '../engine/world';
import { read } from '../tree';

const FILES = {
  'firm.perp': read('examples/firm.perp'),
  'garden-wall/job.perp': read('examples/garden-wall/job.perp'),
  'repair/job.perp': read('examples/repair/job.perp'),
};
const NAMES = Object.keys(FILES).map(inRoot);

/** Everything an editor would show of a file. */
function shown(workspace: Workspace, name: string) {
  const job = workspace.job(name)!;
  return {
    findings: structuredClone(
      job.findings.map((f) => ({ ...f, ways: f.ways.map((w) => ({ ...w })) })),
    ),
    hints: hintsOf(job, { first: 0, last: 100_000 }, ALL_HINTS),
    totals: totalsOf(job),
    figures: job.isJob ? figureItems(job) : [],
    tokens: tokensOf(job.file),
  };
}

/** A session in which nothing was edited: every file as it is now. */
function fresh(workspace: Workspace): Workspace {
  const other = workspaceOf({});
  for (const name of NAMES) other.opened(name, workspace.file(name)!.text);
  return other;
}

function opened(): Workspace {
  const workspace = workspaceOf({});
  for (const name of NAMES) workspace.opened(name, FILES[name.slice(6) as keyof typeof FILES]);
  return workspace;
}

const PIECES = [
  '',
  ' ',
  '\n',
  '\n\n  ',
  '#',
  '"',
  '0',
  '7',
  '.',
  '2 ',
  '?',
  'wall w "W"\n  brick harwick-red\n  length 2.5 m\n  height 6 courses\n',
  '  opening o\n    from left 1 m\n    width 900 mm\n',
  'wall north\n',
  'brick harwick-red\n  price £3 each\n',
  'use uk\n',
  'job\n  currency EUR\n',
  'cost van "Van" 1 at £55\n',
  'price\n  profit 5%\n',
  'defaults\n  thick 1 brick\n  units imperial\n',
  'repair r\n  in north\n  repoint 2..3 m2\n',
  'labour\n  gang 2 bricklayer\n',
];

/** Numbers that become places of whatever text there is by then. */
const edit = fc.record({
  file: fc.nat(),
  line: fc.nat(),
  column: fc.nat(),
  down: fc.constantFrom(0, 0, 0, 0, 1, 3, 12),
  across: fc.nat(12),
  piece: fc.constantFrom(...PIECES),
});
type Edit = typeof edit extends fc.Arbitrary<infer E> ? E : never;

function apply(workspace: Workspace, { file, line, column, down, across, piece }: Edit): void {
  const name = NAMES[file % NAMES.length]!;
  const { lines } = workspace.file(name)!;
  const startLine = line % lines.length;
  const startColumn = column % (lines[startLine]!.length + 1);
  const endLine = Math.min(startLine + down, lines.length - 1);
  const end = endLine > startLine ? across : startColumn + (across >> 2);
  const endColumn = Math.min(end, lines[endLine]!.length);
  const change: TextChange = { startLine, startColumn, endLine, endColumn, text: piece };
  workspace.edited(name, [change]);
}

describe('after any edits', () => {
  test('everything is as in a session that was never edited', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 30, maxLength: 30 }), (edits) => {
        const workspace = opened();
        edits.forEach((e, i) => {
          apply(workspace, e);
          if (i % 3 === 0) for (const name of NAMES) shown(workspace, name);
        });
        const other = fresh(workspace);
        for (const name of NAMES) expect(shown(workspace, name)).toEqual(shown(other, name));
      }),
      { numRuns: 10 },
    );
  });

  test('a file that grows too large is not read, and is again when it shrinks', () => {
    const workspace = opened();
    const name = NAMES[1]!;
    const before = shown(workspace, name);
    const large = '#'.repeat(MOST_CHARACTERS);
    workspace.edited(name, [
      { startLine: 0, startColumn: 9, endLine: 0, endColumn: 9, text: large },
    ]);
    expect(workspace.job(name)!.findings.map((f) => f.code)).toEqual(['file-too-large']);
    workspace.edited(name, [{ startLine: 3, startColumn: 0, endLine: 3, endColumn: 0, text: 'x' }]);
    workspace.edited(name, [{ startLine: 3, startColumn: 0, endLine: 3, endColumn: 1, text: '' }]);
    workspace.edited(name, [
      { startLine: 0, startColumn: 9, endLine: 0, endColumn: 9 + large.length, text: '' },
    ]);
    expect(shown(workspace, name)).toEqual(before);
  });
});

describe('what an edit leaves alone', () => {
  test('keeps its results: the other walls, and all walls when only the price changes', () => {
    const workspace = opened();
    const name = NAMES[1]!;
    const line = workspace.file(name)!.lines.findIndex((l) => l.startsWith('cost skip'));
    const works = workspace.job(name)!.works;
    const total = workspace.job(name)!.price.total.value.toNumber();
    const end = workspace.file(name)!.lines[line]!.length;
    workspace.edited(name, [
      { startLine: line, startColumn: end, endLine: line, endColumn: end, text: '0' },
    ]);
    expect(workspace.job(name)!.price.total.value.toNumber()).toBeGreaterThan(total);
    expect(workspace.job(name)!.works[0] === works[0]).toBe(true);
    workspace.edited(name, [
      { startLine: 0, startColumn: 9, endLine: 0, endColumn: 9, text: '\ndefaults\n  lift 1 m' },
    ]);
    expect(workspace.job(name)!.works[0] === works[0]).toBe(false);
  });
});
