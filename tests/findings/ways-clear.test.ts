/**
 * Every way out of every fit finding, over random walls and piers: it edits the text, the finding is gone, and what it
 * says of the laying is how the courses are then laid. Lengths come as a tape gives them, with no thought of bricks.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../server/engine/workspace/job';
import type { Finding, WayOut } from '../../shared/finding';
import { inRoot, workspaceOf } from '../engine/world';
import { afterWay } from './tells';

/** One workspace for all, so that the library is read once. */
const workspace = workspaceOf({});
const FILE = inRoot('job.perp');

function jobOf(text: string): Job {
  workspace.opened(FILE, text);
  return workspace.job(FILE)!;
}

const CODES = new Set([
  'fit-run',
  'fit-coping',
  'fit-height',
  'height-joints',
  'bond-broken',
  'opening-width',
  'cap-overhang',
  'pier-size',
  'fit-idle',
  'gauge-off',
]);

const mm = (least: number, most: number) => fc.integer({ min: least, max: most });

const bond = fc.constantFrom(
  ['stretcher', '1/2 brick'],
  ['english', '1 brick'],
  ['flemish', '1 brick'],
  ['header', '1 brick'],
  ['english-garden-wall', '1 brick'],
);

const height = fc.oneof(
  fc.integer({ min: 4, max: 20 }).map((n) => `${n} courses`),
  mm(300, 1600).map((n) => `${n} mm`),
);
const end = fc.constantFrom('stopped', 'toothed', 'butted');

const opening = fc.option(
  fc.record({
    from: mm(250, 2200),
    width: mm(400, 1500),
    side: fc.constantFrom('left', 'right'),
    sill: fc.constantFrom(0, 0, 3),
    pier: fc.option(fc.constantFrom('1.5 x 1 bricks', '1.5 x 1.5 bricks', '330 x 220 mm')),
  }),
);

/** Walls that are held, so that nothing is said of how high they stand. */
const wall = fc
  .record({
    bond,
    height,
    length: mm(900, 7500),
    left: end,
    right: end,
    opening,
    coped: fc.boolean(),
  })
  .map(({ bond: [name, thick], opening: gap, ...w }) => {
    const lines = [
      'perpend 1',
      'use uk',
      'wall north',
      `  bond ${name}`,
      `  thick ${thick}`,
      `  length ${w.length} mm`,
      `  height ${w.height}`,
      `  left ${w.left}`,
      `  right ${w.right}`,
      '  stands held',
      ...(w.coped ? ['  coping brick-on-edge'] : []),
    ];
    if (gap) {
      lines.push(
        '  opening gap',
        `    from ${gap.side} ${gap.from} mm`,
        `    width ${gap.width} mm`,
      );
      if (gap.sill) lines.push(`    sill ${gap.sill} courses`);
      if (gap.pier && !gap.sill)
        lines.push(
          '  pier hanging',
          '    at gap left',
          `    size ${gap.pier}`,
          '    cap 350 x 350 mm',
        );
    }
    return `${lines.join('\n')}\n`;
  });

const pier = fc
  .record({
    size: fc.oneof(
      fc.constantFrom('1 x 1 bricks', '1.5 x 1.5 bricks', '2 x 2 bricks', '2 x 1.5 bricks'),
      fc.tuple(mm(205, 460), mm(205, 460)).map(([a, b]) => `${a} x ${b} mm`),
    ),
    height,
    top: fc.constantFrom(
      '',
      '  coping brick-on-edge\n',
      '  cap 330 x 330 mm\n',
      '  cap 600 x 600 mm\n',
    ),
    number: fc.constantFrom('', '  number 2\n'),
  })
  .map(
    (p) =>
      `perpend 1\nuse uk\npier gate\n  size ${p.size}\n  height ${p.height}\n${p.top}${p.number}`,
  );

/** Which of several alike: the run it names, else its place. */
function about(finding: Finding): string {
  return /\((run-\d+), /.exec(finding.message)?.[1] ?? '';
}

const like = (finding: Finding) => (other: Finding) =>
  other.code === finding.code && about(other) === about(finding);

const errorsIn = (findings: readonly Finding[]) =>
  findings.filter((f) => f.severity === 'error').length;

function clears(text: string, finding: Finding, way: WayOut, before: readonly Finding[]): Job {
  expect(way.edits.length).toBeGreaterThan(0);
  const after = afterWay(text, way.edits);
  expect(after).not.toBe(text);
  const job = jobOf(after);
  const found = job.findings;
  const said = `${finding.code} “${way.title}”\n${after}`;
  expect(found.filter(like(finding)).length, said).toBe(before.filter(like(finding)).length - 1);
  expect(errorsIn(found), said).toBeLessThanOrEqual(errorsIn(before));
  return job;
}

/** All lengths of cuts in the stretches of a wall, as they are laid. */
function cutsLaid(job: Job): number[] {
  const out = job.works[0]!.facts.settingOut!;
  const runs = out.bands.flatMap((b) => b.segments.flatMap((s) => s.runs));
  const pieces = runs.flatMap((r) => r.groups.flatMap((g) => g.pieces));
  return pieces.filter((p) => p.piece === 'cut').map((p) => p.length);
}

/** “Cuts of 130 mm and 186.3 mm by turns …”: each is laid, to the tenth that is said. */
function saysWhatIsLaid(title: string, after: Job): void {
  const [cuts] = /^(A cut|Cuts|\d+ cuts) of .*?(?= in | by )/.exec(title) ?? [];
  const laid = cutsLaid(after);
  for (const [, said] of (cuts ?? '').matchAll(/([\d.]+) mm/g))
    expect(
      laid.some((mm) => Math.abs(mm - Number(said)) <= 0.051),
      title,
    ).toBe(true);
}

interface Seen {
  readonly offered: Map<string, number>;
  readonly bare: Set<string>;
}

function everyWay(text: string, seen: Seen): void {
  const before = jobOf(text).findings;
  const judged = before.filter((f) => CODES.has(f.code)).map((f) => ({ ...f, ways: f.ways }));
  for (const finding of judged) {
    if (!finding.ways.length) seen.bare.add(finding.code);
    const ways = finding.ways;
    for (const way of ways) {
      const after = clears(text, finding, way, before);
      if (finding.code === 'fit-run') saysWhatIsLaid(way.title, after);
      seen.offered.set(finding.code, (seen.offered.get(finding.code) ?? 0) + 1);
    }
  }
}

describe('every way out edits the text and clears its finding', () => {
  const seen: Seen = { offered: new Map(), bare: new Set() };

  test('of random walls, with openings and piers', () => {
    fc.assert(
      fc.property(wall, (text) => everyWay(text, seen)),
      { numRuns: 50 },
    );
  });

  test('of random piers that stand alone', () => {
    fc.assert(
      fc.property(pier, (text) => everyWay(text, seen)),
      { numRuns: 80 },
    );
  });

  test('and each kind of finding came up, with ways out', () => {
    for (const code of ['fit-run', 'fit-coping', 'fit-height', 'height-joints', 'bond-broken'])
      expect(seen.offered.get(code) ?? 0, code).toBeGreaterThan(5);
    for (const code of ['opening-width', 'cap-overhang', 'pier-size'])
      expect(seen.offered.get(code) ?? 0, code).toBeGreaterThan(3);
    expect([...seen.bare]).toEqual([]);
  });
});
