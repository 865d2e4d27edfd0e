/** What a preview beside the text shows: the work under the cursor, drawn, or a paper of the job. */
import { phrase } from '../../../shared/phrase';
import {
  type Choice,
  DRAWINGS,
  FRONT,
  type KeyShown,
  type PaperShown,
  type PreviewParams,
  type WorkChoice,
} from '../../../shared/protocol/preview';
import type { Work } from '../../engine/brickwork/work';
import type { Job } from '../../engine/workspace/job';
import { kindNamed } from '../pages';
import { canDraw, faceOf, setOf, type View } from '../work-sheets';
import { type Asked, backAsked, faceAsked, type SetAsked } from './asked';
import { plansAsked } from './asked-plan';
import { rodAsked } from './asked-rod';
import { topsAsked } from './asked-top';
import { choicesFor } from './choices';
import { type Drawn, drawFace, drawSet } from './draw';
import { type Found, Lines, linesOf } from './lines';
import { Origins } from './origins';
import { type Around, paperOf } from './papers';

export type Asking = Pick<PreviewParams, 'line' | 'show' | 'work' | 'pinned' | 'room'>;

/** As it is shown, before it is said what of it has changed. */
export interface Previewed {
  readonly show: string;
  readonly work?: string;
  readonly title: string;
  readonly described: string;
  readonly choices: readonly Choice[];
  readonly works: readonly WorkChoice[];
  readonly lines: readonly Found[];
  readonly drawn?: Drawn & { readonly notes: readonly string[] };
  readonly paper?: PaperShown;
  readonly nothing?: string;
}

/** What is shown beside the text: a drawing as parts, or a paper as HTML. */
export function previewOf(job: Job, asking: Asking, around: Around): Previewed {
  const paper = kindNamed(asking.show);
  const works = worksOf(job);
  const drawable = works.filter(({ work }) => canDraw(work));
  const chosen = workFor(asking, drawable);
  const head = {
    choices: choicesFor(chosen?.work, job, asking.show),
    works: drawable.map(({ key, work }) => ({ key, label: work.title, line: lineOf(work) })),
    ...(chosen ? { work: chosen.key } : {}),
  };
  const lines = new Lines();
  if (paper) {
    const made = paperOf(paper.kind, job, lines, around);
    const title = paper.title();
    const at = { show: paper.kind, title, described: '', lines: lines.list, ...head };
    if (typeof made === 'string') return { ...at, nothing: made };
    const { title: described, ...shown } = made;
    return { ...at, described, paper: shown };
  }
  const view = DRAWINGS.find((each) => each === asking.show) ?? FRONT;
  if (!chosen) return { ...head, show: view, ...nothingDrawn(job), lines: [] };
  return { ...head, ...drawnWork(chosen.work, job, view, asking, lines) };
}

/**
 * The work that is shown cannot be drawn for now, most often because a line of it is being written: what was drawn of it
 * stays then, and no other work takes its place.
 */
export function isHeld(job: Job, { line, show, work, pinned }: Omit<Asking, 'room'>): boolean {
  const shown = kindNamed(show) ? undefined : worksOf(job).find(({ key }) => key === work);
  if (!shown || canDraw(shown.work)) return false;
  return pinned === true || isIn(line, shown.work);
}

interface Keyed {
  readonly key: string;
  readonly work: Work;
}

/** By kind and name; work that has none, or the name of another, by its place among such too. */
function worksOf({ works }: Job): Keyed[] {
  const seen = new Map<string, number>();
  return works.map((work) => {
    const named = [work.kind, work.name].filter(Boolean).join(' ');
    const count = (seen.get(named) ?? 0) + 1;
    seen.set(named, count);
    return { key: count > 1 ? `${named} ${count}` : named, work };
  });
}

function lineOf({ block }: Work): number {
  return block.headPlace.line;
}

/** The one under the cursor; else the one that was shown; else the first. */
function workFor({ line, work, pinned }: Asking, all: readonly Keyed[]): Keyed | undefined {
  const shown = all.find(({ key }) => key === work);
  if (pinned && shown) return shown;
  return all.find(({ work: each }) => isIn(line, each)) ?? shown ?? all[0];
}

function isIn(line: number, { block }: Work): boolean {
  const { heading } = block.read;
  if (!heading) return false;
  const at = linesOf(heading, block);
  return line >= at.line && line <= at.last;
}

function nothingDrawn({ works }: Job) {
  const nothing = works.length
    ? phrase`Nothing of this job can be drawn yet: its findings say what is missing.`
    : phrase`This file holds no wall, no pier and no repair, so there is nothing to draw.`;
  return { title: phrase`Nothing to draw`, described: nothing, nothing };
}

function viewTitle(title: string, view: View): string {
  switch (view) {
    case 'back':
      return phrase`${title}: back`;
    case 'plan':
      return phrase`${title}: plan`;
    case 'top':
      return phrase`${title}: from above`;
    case 'rod':
      return phrase`${title}: gauge rod`;
    default:
      return title;
  }
}

function drawnWork(work: Work, job: Job, view: View, { room }: Asking, lines: Lines) {
  const origins = new Origins(work, lines);
  const found =
    view === 'front' || view === 'back'
      ? faceDrawn(work, job, view, origins, room)
      : setDrawn(work, job, view, origins, room);
  const title = viewTitle(work.title, view);
  const at = { show: view, title, lines: lines.list };
  if (found) return { ...at, described: found.described, drawn: found };
  const nothing = phrase`There is no such drawing of ${work.title}: choose another.`;
  return { ...at, described: nothing, nothing };
}

function faceDrawn(
  work: Work,
  job: Job,
  face: 'front' | 'back',
  origins: Origins,
  room: Asking['room'],
) {
  const drawing = faceOf(work, job.env, face);
  if (!drawing) return undefined;
  const length = origins.out?.spec.length ?? 0;
  const asked: Asked = face === 'back' ? backAsked(origins, length) : faceAsked(origins);
  const { description: described, notes } = drawing;
  return { ...drawFace(drawing, asked, room), described, notes };
}

function setDrawn(
  work: Work,
  { env, works }: Job,
  view: 'plan' | 'top' | 'rod',
  origins: Origins,
  room: Asking['room'],
) {
  const set = setOf(work, env, view, { works });
  if (!set) return undefined;
  const { description: described, notes } = set;
  return { ...drawSet(set, SETS_ASKED[view](origins), room), described, notes };
}

const SETS_ASKED: Readonly<Record<'plan' | 'top' | 'rod', (origins: Origins) => SetAsked>> = {
  plan: plansAsked,
  top: topsAsked,
  rod: rodAsked,
};

export type { KeyShown };
