/** A piece of work on the site sheet: what is built, its drawings, its cuts. */
import { cutRow } from '../../engine/brickwork/cuts/rows';
import type { CutPart } from '../../engine/brickwork/cuts/sheet';
import { cuttingsText } from '../../engine/brickwork/cuts/text';
import type { Work } from '../../engine/brickwork/needs';
import type { Paper as SheetSize } from '../../engine/drawing';
import type { Job } from '../../engine/workspace/job';
import type { Part } from '../paper/model';
import { titleOf } from '../quote/work';
import type { SiteWords, Words } from '../words';
import { sheetsOf, VIEWS, type View } from '../work-sheets';

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
    { part: 'heading', level: 2, text: title },
    { part: 'list', items: work.facts.says.map((each) => [each]) },
    ...work.notes.map((text): Part => ({ part: 'words', text })),
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

function cutTable(part: CutPart, { env }: Job, words: SiteWords): Part[] {
  const { label, brick, places, needed, alike } = part;
  const times = alike > 1 ? ` × ${alike}` : '';
  const numbers = new Set([2, 3]);
  const table: Part = {
    part: 'table',
    name: `${words.cuts}: ${label}`,
    columns: words.cutHeads.map((title, i) => ({
      title,
      holds: numbers.has(i) ? 'number' : 'text',
    })),
    rows: places.map((place) => ({ cells: cutRow(place, env).map((text) => ({ text })) })),
  };
  const [head, ...ways] = cuttingsText(needed, env);
  return [
    { part: 'heading', level: 3, text: `${words.cuts}: ${label} (${brick})${times}` },
    ...(places.length ? [table] : []),
    ...cutFrom(head, ways),
  ];
}

/** How many bricks it takes, and what each is cut into. */
function cutFrom(head: string | undefined, ways: readonly string[]): Part[] {
  if (!head) return [];
  const items = ways.map((way) => [way.trim()]);
  return [
    {
      part: 'together',
      parts: [
        { part: 'words', text: sentence(head) },
        { part: 'list', items },
      ],
    },
  ];
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
