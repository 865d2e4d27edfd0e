/** Figures of two revisions that are not the same: what the work takes, what is bought, what it costs. */
import type { Exact } from '../../../shared/exact';
import type { Figure } from '../brickwork/needs';
import { jobFigures, workFigures } from '../views/job-view';
import { differenceOf } from '../working/beside';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import { pairedBy } from './pair';
import type { WorkPair } from './work';

export interface FigureChange {
  /** `north.bricks`, `job.price`: as the later job has it; of one that is gone as the earlier had it. */
  readonly id: string;
  readonly label: string;
  readonly before?: Term;
  readonly after?: Term;
  /** In the unit of the later one; nothing where the two cannot be put beside each other. */
  readonly difference?: Exact;
  /** In the currency of its job. */
  readonly money: boolean;
}

/** Of one piece of work, under the name it has now. */
export function workFigureChanges(
  { before, after }: WorkPair,
  old: Job,
  now: Job,
): readonly FigureChange[] {
  const name = (after ?? before)!.name;
  return changesOf(figuresOf(before, old, name), figuresOf(after, now, name), old, now);
}

function figuresOf(piece: WorkPair['before'], job: Job, name: string): readonly Figure[] {
  if (!piece?.work) return [];
  const own = piece.name.length;
  return workFigures(piece.work, job).map(({ key, term }) => {
    return { key: `${name}${key.slice(own)}`, term };
  });
}

/** Of the job as a whole: what is bought, mixed, driven and paid. */
export function jobFigureChanges(before: Job, after: Job): readonly FigureChange[] {
  const [old, now] = [before, after].map((job) => (job.isJob ? priced(job) : []));
  return changesOf(old!, now!, before, after);
}

/** What became of the job is no revision of it: a day that is recorded moves no price. */
function priced(job: Job): readonly Figure[] {
  return jobFigures(job).filter(({ key }) => !key.startsWith('result.'));
}

function changesOf(
  old: readonly Figure[],
  now: readonly Figure[],
  before: Job,
  after: Job,
): readonly FigureChange[] {
  const { pairs, gone, added } = pairedBy(old, now, ({ key }) => key);
  const change = (figure: Figure, a: Term | undefined, b: Term | undefined): FigureChange => {
    const money = (b ? after : before).env.money.code === (b ?? a)!.unit;
    const difference = differenceOf(a, b);
    return { id: figure.key, label: figure.term.label, before: a, after: b, difference, money };
  };
  const place = new Map(now.map((figure, i) => [figure, i]));
  const both = pairs
    .filter(([a, b]) => !alike(a.term, b.term))
    .sort(([, a], [, b]) => place.get(a)! - place.get(b)!);
  return [
    ...both.map(([a, b]) => change(b, a.term, b.term)),
    ...added.filter(isSome).map((figure) => change(figure, undefined, figure.term)),
    ...gone.filter(isSome).map((figure) => change(figure, figure.term, undefined)),
  ];
}

/** A figure of nought that comes or goes is nothing. */
function isSome({ term }: Figure): boolean {
  return !term.value.isZero() || term.gaps.length > 0;
}

function alike(a: Term, b: Term): boolean {
  if (a.gaps.length > 0 !== b.gaps.length > 0) return false;
  return differenceOf(a, b)?.isZero() ?? false;
}
