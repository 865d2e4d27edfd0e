/** A name under the pointer: the thing it names, as each file of the job writes it. */
import { summaryOf } from '../views/job-view';
import { comparedIn } from '../views/match';
import { mixSummary, yieldsBeside } from '../views/mortar';
import type { Job } from '../workspace/job';
import { notation, plain, whereOf } from './markdown';
import { type Named, titleOf } from './names';
import type { Linker } from './types';

/** Longer things are cut: the reader can go there. */
const MOST_LINES = 14;
/** A brick may be compared in very many repairs. */
const MOST_COMPARED = 4;

export function hoverThing(things: readonly Named[], job: Job, link: Linker): string {
  const [first] = things;
  const title = titleOf(first!);
  const name = `**${first!.kind} ${plain(first!.name)}**${title ? ` ${plain(title)}` : ''}`;
  const work = job.works.find((w) => w.block === first!.block && !first!.line.kind.open);
  const parts = work && first!.line.kind.top ? [summaryOf(work, job)] : mixed(first!, job);
  return [name, ...parts, ...things.map((thing) => written(thing, link))].join('\n\n');
}

/** Of a brick: how it compares with what stands where it might be bought. Of a mix: how it is mixed for this job, and what other yield models would make of it. */
function mixed({ kind, name }: Named, job: Job): string[] {
  if (kind === 'brick') return comparedIn(name, job).slice(0, MOST_COMPARED).map(plain);
  const summary = kind === 'mix' ? mixSummary(name, job) : undefined;
  return summary ? [plain(summary), ...yieldsBeside(name, job).map(plain)] : [];
}

function written({ block, line }: Named, link: Linker): string {
  const from = line.syntax.span.line;
  const last = Math.max(from, ...line.body.map((l) => l.syntax.span.line));
  const lines = block.lines.slice(from, Math.min(last + 1, from + MOST_LINES));
  if (last + 1 > from + MOST_LINES) lines.push('  …');
  const place = block.place(line.syntax.span);
  return `${notation(lines)}\n${link(whereOf(place), place)}`;
}
