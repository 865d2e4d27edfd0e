/** How a figure came about, for a reader that is a program. */
import { phrase } from '../../../shared/phrase';
import type { FigureItem } from '../../../shared/protocol';
import type { Told } from '../../../shared/protocol/tools';
import { plain } from '../../engine/ide/markdown';
import { figureItems, workingFor } from '../../engine/ide/working';
import type { Job } from '../../engine/workspace/job';

/** As many as may be meant, or are listed. */
const MOST_LISTED = 400;
const MOST_MEANT = 8;

/**
 * @param figure an id, or words of its name; without it, all are listed
 * @returns a sentence where there is no such figure, with those that may be meant
 */
export function explainTold(job: Job, file: string, figure?: string): Told | string {
  if (!job.isJob) return phrase`${file} holds no work, and so no figures.`;
  const items = figureItems(job);
  if (!figure?.trim()) return listed(items, file);
  const found = named(items, figure.trim());
  const working = found.length === 1 ? workingFor(job, found[0]!.id) : undefined;
  if (!working) return meant(found, figure);
  const { id, label, text } = found[0]!;
  return { markdown: working.markdown, json: JSON.stringify({ file, id, label, text }) };
}

/** By its id; else by its whole name; else by what its id or name holds. */
function named(items: readonly FigureItem[], figure: string): readonly FigureItem[] {
  const wanted = figure.toLowerCase();
  const by = (is: (item: FigureItem) => boolean) => items.filter(is);
  const ways = [
    by(({ id }) => id.toLowerCase() === wanted),
    by(({ label }) => label.toLowerCase() === wanted),
    by(({ id, label }) => [id, label].some((text) => text.toLowerCase().includes(wanted))),
  ];
  return ways.find((way) => way.length) ?? [];
}

function meant(found: readonly FigureItem[], figure: string): string {
  if (!found.length)
    return phrase`There is no figure ${figure}. Asked without one, all are listed.`;
  const some = found.slice(0, MOST_MEANT).map(({ id, label }) => `${id} (${label})`);
  return phrase`${figure} may be ${some.join(', ')}.`;
}

function listed(items: readonly FigureItem[], file: string): Told {
  const some = items.slice(0, MOST_LISTED);
  const lines = some.map(({ id, label, text }) => `- \`${id}\` ${plain(label)}: ${plain(text)}`);
  const figures = some.map(({ id, label, text }) => ({ id, label, text }));
  return {
    markdown: `${lines.join('\n')}\n`,
    json: JSON.stringify({ file, figures, all: items.length }),
  };
}
