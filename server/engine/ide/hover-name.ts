/** A name under the pointer: the thing it names, as each file of the job writes it. */
import { summaryOf } from '../views/job-view';
import type { Job } from '../workspace/job';
import { notation, plain, whereOf } from './markdown';
import { type Named, titleOf } from './names';
import type { Linker } from './types';

/** Longer things are cut: the reader can go there. */
const MOST_LINES = 14;

export function hoverThing(things: readonly Named[], job: Job, link: Linker): string {
  const [first] = things;
  const title = titleOf(first!);
  const name = `**${first!.kind} ${plain(first!.name)}**${title ? ` ${plain(title)}` : ''}`;
  const work = job.works.find((w) => w.block === first!.block && !first!.line.kind.open);
  const parts = work && first!.line.kind.top ? [summaryOf(work, job)] : [];
  return [name, ...parts, ...things.map((thing) => written(thing, link))].join('\n\n');
}

function written({ block, line }: Named, link: Linker): string {
  const from = line.syntax.span.line;
  const last = Math.max(from, ...line.body.map((l) => l.syntax.span.line));
  const lines = block.lines.slice(from, Math.min(last + 1, from + MOST_LINES));
  if (last + 1 > from + MOST_LINES) lines.push('  …');
  const place = block.place(line.syntax.span);
  return `${notation(lines)}\n${link(whereOf(place), place)}`;
}
