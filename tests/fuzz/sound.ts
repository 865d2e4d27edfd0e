/** What must be true of a job whatever its text. */
import { expect } from 'vitest';
import { allFigures, jobView } from '../../server/engine/views/job-view';
import { workingOf } from '../../server/engine/views/working';
import type { Job } from '../../server/engine/workspace/job';
import { Decimal } from '../../shared/exact';
import type { Finding } from '../../shared/finding';

const NO_NUMBER = /\b(?:NaN|Infinity|undefined|\[object)\b/;

/** @returns the job's figures by their id, each with whether it is complete */
export function sound(job: Job): Map<string, string> {
  const view = jobView(job);
  for (const finding of view.findings) inside(finding, job.file.lines);
  const figures = new Map<string, string>();
  for (const { key, term } of allFigures(job)) {
    expect(term.value.isFinite(), `${key} is ${term.value.toString()}`).toBe(true);
    figures.set(key, `${term.value.toFixed()} ${term.unit} ${term.gaps.length}`);
  }
  const shown = [
    ...view.blocks.flatMap((b) => [b.summary, ...b.figures.map((f) => f.text)]),
    ...view.totals.map((f) => f.text),
  ];
  expect(shown.filter((text) => NO_NUMBER.test(text))).toEqual([]);
  stagesAddUp(job);
  const working = workingOf(job.price.total, job.env);
  expect(working.result).toBe(view.totals.find((f) => f.id === 'job.price')!.text);
  const { low, high } = job.priceEnds;
  expect(low.total.value.isFinite() && high.total.value.isFinite()).toBe(true);
  return figures;
}

/** Every place of a finding and of its ways out is a place of the text, or of a file it is made of. */
function inside(finding: Finding, lines: readonly string[]): void {
  const places = [finding.place, ...finding.ways.flatMap((way) => way.edits.map((e) => e.place))];
  for (const place of places) {
    const line = lines[place.line];
    const there = place.start >= 0 && place.start <= place.end && place.end <= (line?.length ?? 0);
    const empty = place.line === 0 && place.end === 0;
    expect(there || empty, `${finding.code} at ${JSON.stringify(place)} of “${line}”`).toBe(true);
  }
  expect(finding.message.length).toBeGreaterThan(0);
  expect(finding.message, finding.code).not.toMatch(NO_NUMBER_WORD);
}

/** Such a word may stand in what the file itself says, so only numbers beside a unit are looked for. */
const NO_NUMBER_WORD = /(?:NaN|Infinity|undefined) (?:mm|in|courses|bricks)/;

function stagesAddUp({ price }: Job): void {
  const { stages, total } = price;
  const hasRest = stages.some((s) => s.amount.label === 'the rest');
  if (!hasRest || stages.filter((s) => s.amount.label === 'the rest').length > 1) return;
  const all = stages.reduce((sum, s) => sum.plus(s.amount.value), new Decimal(0));
  expect(all.toFixed()).toBe(total.value.toFixed());
}
