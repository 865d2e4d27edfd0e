/** Which papers and pages there are of a job, and each of them made. */
import { phrase } from '../../../shared/phrase';
import type { Form, PageItem, PageKind, PageOptions } from '../../../shared/protocol/pages';
import type { Work } from '../../engine/brickwork/work';
import { type Comparison, compared } from '../../engine/compare';
import { agreedJob } from '../../engine/life/agreed';
import type { Job } from '../../engine/workspace/job';
import { headOf } from '../letterhead';
import type { Picture } from '../paper/model';
import { inItsLanguage } from '../spoken';
import { canDraw } from '../work-sheets';
import type { Kind, Made } from './kinds';
import { OWN } from './own';
import { PAPERS } from './papers';

export type { Made } from './kinds';

export const KINDS: readonly Kind[] = [...PAPERS, ...OWN];

export function kindNamed(name: string): Kind | undefined {
  return KINDS.find(({ kind }) => kind === name);
}

/** All that there are, those of this job with what they can be of; of the others why there is none. Drawings last. */
export function pagesOf(job: Job): PageItem[] {
  const nothing = nothingIn(job);
  const items = KINDS.map(({ kind, reader, forms, ...of }): PageItem => {
    const why = nothing ?? of.why?.(job);
    const works = why === undefined ? (of.works?.(job) ?? []).map(workItem) : [];
    return { kind, title: of.title(), about: of.about(), reader, forms, works, why };
  });
  return [...items, drawingItem(job, nothing)];
}

function drawingItem(job: Job, nothing: string | undefined): PageItem {
  const works = job.works.filter(canDraw).map(workItem);
  return {
    kind: 'drawing',
    title: phrase`Drawing`,
    about: phrase`A wall or a pier, every brick: faces, courses on plan, coping, gauge rod.`,
    reader: 'site',
    forms: ['svg', 'dxf'],
    works,
    why: nothing ?? (works.length ? undefined : phrase`No work in it can be drawn yet.`),
  };
}

function workItem({ name, title }: Work): PageItem['works'][number] {
  return { name, title: title || name };
}

/** Why there is no paper at all of a file. */
function nothingIn(job: Job): string | undefined {
  if (job.isJob) return undefined;
  if (job.file.lines.every((line) => !line.trim())) return phrase`The file is empty.`;
  return phrase`The file holds no work: no wall, pier or repair.`;
}

export interface Wishes {
  /** Of the tool, for the small print. */
  readonly version: string;
  readonly options?: PageOptions;
  /** What it will be written as. */
  readonly form?: Form;
  /** The firm’s logo, once somebody has read it. */
  readonly logo?: Omit<Picture, 'words'>;
  /** Of a note of changes: the job as it was sent. */
  readonly before?: Job;
}

/** @returns a sentence where there is none */
export function pageOf(job: Job, kind: PageKind, wishes: Wishes): Made | string {
  const found = kindNamed(kind);
  if (!found) return phrase`There is no page ${kind}.`;
  const why = nothingIn(job) ?? found.why?.(job);
  if (why !== undefined) return why;
  const { before } = wishes;
  return inItsLanguage(before ? [job, before] : [job], (own, then) =>
    madeOf(found, own!, then, wishes),
  );
}

function madeOf(kind: Kind, job: Job, before: Job | undefined, wishes: Wishes): Made | string {
  const { version, options = {}, form = 'html', logo } = wishes;
  const agreed = agreedJob(job);
  const between: Comparison | undefined = before && compared(agreedJob(before), agreed);
  const head = headOf(agreed, logo);
  return kind.make({ job, agreed, head, version, options, form, between });
}
