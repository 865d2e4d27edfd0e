/** A repair in what nothing of the job is called: it is reckoned by the defaults, and none of it is complete. */
import { expect, test } from 'vitest';
import { jobView } from '../../../server/engine/views/job-view';
import { NORTH, repaired } from './repairing';

const LINES = `rebuild 1.35 m x 9 courses
brick plain
mix general
salvage 50%
cut-out 2 bricks
repoint 1 m2
tooth-in 4 courses`;

const GAP = 'the wall that r is in is not known';

test('every figure and the price say that the wall is not known', () => {
  const view = jobView(repaired(`in nowhere\n${LINES}`, NORTH));
  const { figures } = view.blocks.at(-1)!;
  expect(figures.length).toBeGreaterThan(8);
  for (const { id, complete, missing } of figures)
    expect([id, complete, missing.includes(GAP)]).toEqual([id, false, true]);
  const price = view.totals.find((f) => f.id === 'job.price')!;
  expect([price.complete, price.missing.filter((what) => what === GAP)]).toEqual([false, [GAP]]);
  expect(view.findings.map((f) => f.code)).toContain('name-unknown');
  // Told where the name stands, and not again where the totals are.
  expect(view.findings.filter((f) => f.message.includes(GAP))).toEqual([]);
});

test('where the wall is known, or none is named, nothing hangs on it', () => {
  for (const at of ['in north\n', '']) {
    const view = jobView(repaired(`${at}${LINES}`, NORTH));
    expect(view.blocks.at(-1)!.figures.flatMap((f) => f.missing)).not.toContain(GAP);
    expect(view.blocks.at(-1)!.figures[0]!.complete).toBe(true);
  }
});

test('nor is anything complete of a pier that its wall has not', () => {
  const view = jobView(
    repaired('in north ghost\nbrick plain\nmix general\ncut-out 2 bricks', NORTH),
  );
  for (const { missing } of view.blocks.at(-1)!.figures)
    expect(missing).toContain('the pier that r is in is not known');
});
