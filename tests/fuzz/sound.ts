/** What must be true of a job whatever its text. */
import { expect } from 'vitest';
import { allFigures, jobView } from '../../server/engine/views/job-view';
import { workingOf } from '../../server/engine/views/working';
import type { Job } from '../../server/engine/workspace/job';
import { Decimal } from '../../shared/exact';
import type { Finding } from '../../shared/finding';

/** No number beside a unit, or nothing at all; the words by themselves may stand in what a file says. */
const NO_NUMBER =
  /(?:NaN|Infinity|undefined|\[object Object\])(?:[\s\u00a0]*(?:mm|in|courses|bricks?|h|l|m²?)\b|$)/;

/** @returns the job's figures by their id, each with its value, its unit and how much it lacks */
export function sound(job: Job): Map<string, string> {
  const view = jobView(job);
  const { lines } = job.file;
  expect(view.findings.flatMap((finding) => astray(finding, lines))).toEqual([]);
  expect(view.findings.filter((f) => !f.message || NO_NUMBER.test(f.message))).toEqual([]);
  const all = allFigures(job);
  expect(all.filter(({ term }) => !term.value.isFinite()).map(({ key }) => key)).toEqual([]);
  const texts = [
    ...view.blocks.flatMap((b) => [b.summary, ...b.figures.map((f) => f.text)]),
    ...view.totals.map((f) => f.text),
  ];
  expect(texts.filter((text) => NO_NUMBER.test(text))).toEqual([]);
  stagesAddUp(job);
  const working = workingOf(job.price.total, job.env);
  expect(working.result).toBe(view.totals.find((f) => f.id === 'job.price')!.text);
  const { spread } = job;
  if (spread)
    expect(spread.low.value.isFinite() && spread.high.value.gt(spread.low.value)).toBe(true);
  return new Map(
    all.map(({ key, term }) => [key, `${term.value.toFixed()} ${term.unit} ${term.gaps.length}`]),
  );
}

/** Places of a finding and of its ways out that are no place of the text. */
function astray(finding: Finding, lines: readonly string[]): string[] {
  const places = [finding.place, ...finding.ways.flatMap((way) => way.edits.map((e) => e.place))];
  return places
    .filter(({ line, start, end }) => {
      const room = lines[line]?.length ?? (line === 0 ? 0 : -1);
      return !(start >= 0 && start <= end && end <= room);
    })
    .map((place) => `${finding.code} at ${JSON.stringify(place)}`);
}

/** Stages that are not the price to the penny are told of, and those that are, are not. */
function stagesAddUp({ price, findings }: Job): void {
  const { stages, total } = price;
  if (!stages.length || total.gaps.length || total.value.isZero()) return;
  const all = stages.reduce((sum, s) => sum.plus(s.amount.value), new Decimal(0));
  const negative = stages.some((s) => s.amount.value.lt(0));
  const rests = stages.filter((s) => s.line.values.rest).length;
  const off = !all.eq(total.value) || negative || rests > 1;
  expect(findings.some((f) => f.code === 'stages-off')).toBe(off);
}
