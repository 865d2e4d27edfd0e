/** A piece of work on the site sheet: what is built, its drawings, its cuts. */
import type { Work } from '../../engine/brickwork/work';
import type { Paper as SheetSize } from '../../engine/drawing';
import type { Job } from '../../engine/workspace/job';
import { fromBlock } from '../from';
import type { Part } from '../paper/model';
import { listOf } from '../quote/paper';
import { notesOf, saidOf, titleOf } from '../quote/work';
import type { SiteWords, Words } from '../words';
import { sheetsOf, VIEWS, type View } from '../work-sheets';
import { cutTable } from './cuts';

/**
 * Room between the margins of a page, mm: each sheet takes as much of it as it needs. A gauge rod is as long as a page has
 * room for; plans in more room would be drawn larger, and one to a page.
 */
const WIDTH = { A4: 174, Letter: 180 };
const HEIGHT: Readonly<Record<View, number>> = {
  front: 130,
  back: 130,
  plan: 128,
  top: 225,
  rod: 225,
};
const SHORTER = { A4: 0, Letter: 14 };

/** @param rods titles of work by what its gauge rod shows: one that shows the same is not drawn again */
export function workParts(work: Work, job: Job, words: Words, rods: Map<string, string>): Part[] {
  const title = titleOf(work, job.works, words.quote);
  const [first, ...others] = drawings({ ...work, title }, job, words.site, rods);
  const head: Part[] = [
    { part: 'heading', level: 2, text: title, from: fromBlock(work.block) },
    listOf(saidOf(work)),
    ...notesOf(work, job).map((told): Part => ({ part: 'words', ...told })),
  ];
  return [
    { part: 'together', parts: first ? [...head, first] : head },
    ...others,
    ...cuts(work, job, words.site),
  ];
}

/** The back is drawn where another skin stands there. */
function drawings(work: Work, job: Job, words: SiteWords, rods: Map<string, string>): Part[] {
  const { backing } = work.facts;
  const views = VIEWS.filter((view) => view !== 'back' || backing);
  return views.flatMap((view) => {
    const sheets = sheetsOf(work, job.env, view, { paper: roomFor(view, job), works: job.works });
    const [first] = sheets;
    const other = view === 'rod' && first ? rods.get(first.description) : undefined;
    if (other !== undefined) return [{ part: 'words', text: words.sameRod(other) } as const];
    if (view === 'rod' && first) rods.set(first.description, work.title);
    return sheets.map((sheet): Part => ({ part: 'drawing', sheet, words: sheet.description }));
  });
}

function roomFor(view: View, { env }: Job): SheetSize {
  const size = env.imperial ? 'Letter' : 'A4';
  const height = HEIGHT[view] - (HEIGHT[view] > 200 ? SHORTER[size] : 0);
  return { width: WIDTH[size], height, margin: 0.5, short: true };
}

function cuts(work: Work, job: Job, words: SiteWords): Part[] {
  const parts = work.facts.cuts?.() ?? [];
  return parts.flatMap((part) => cutTable(part, job, words));
}
