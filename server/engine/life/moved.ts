/** What has moved since a price was given: by the figures that were kept with it. */

import { type Exact, ZERO } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import { allFigures } from '../views/job-view';
import { differenceOf } from '../working/beside';
import { difference, type Term } from '../working/term';
import type { Job } from '../workspace/job';
import { type Fixed, fixedPrice } from './agreed';
import type { Sent } from './record';
import { fixedFigures, kept } from './was';

export interface Move {
  readonly id: string;
  readonly label: string;
  readonly was: Term | undefined;
  readonly now: Term | undefined;
  /** Now, less what it was, to the digits that the record keeps; nothing where their units are not of one kind. */
  readonly by: Exact | undefined;
}

export interface Moved extends Fixed {
  readonly now: Term;
  /** What it comes to now, less what was given. */
  readonly by: Term;
  /** Parts of the price in money, the biggest first; sums of them are left out. Empty where nothing was kept. */
  readonly parts: readonly Move[];
  /** All that was kept and is otherwise, in the order of the record; what is new at the end. */
  readonly all: readonly Move[];
}

/** Nothing where no price was given, where it is what the job comes to, or where that is not known. */
export function movedSince(job: Job): Moved | undefined {
  const fixed = fixedPrice(job);
  if (!fixed || fixed.entry.amount.gaps.length) return undefined;
  const now = fixed.job.price.total;
  const by = difference(phrase`Moved`, now.unit, now, fixed.entry.amount);
  if (now.gaps.length || by.value.isZero()) return undefined;
  let all: readonly Move[] | undefined;
  const moves = () => {
    all ??= movesOf(fixed);
    return all;
  };
  return {
    ...fixed,
    now,
    by,
    get all() {
      return moves();
    },
    get parts() {
      return partsOf(moves(), now.unit);
    },
  };
}

function movesOf({ entry, job }: Fixed): Move[] {
  if (!entry.was.length) return [];
  const then = new Set(entry.was.map((w) => w.id));
  // What was written by hand is not all there was: only of a whole record what is not in it is new.
  const whole = then.has('job.price');
  const fresh = whole ? fixedFigures(job).filter(({ key }) => !then.has(key)) : [];
  const added = fresh.map(({ key, term }: Figure) => moveOf(key, undefined, term, job));
  return [...keptMoves(entry, job), ...added.filter(isOther)];
}

/** Figures that an entry of the record keeps and that are others now, in its order. */
export function keptMoves({ was }: Pick<Sent, 'was'>, job: Job): Move[] {
  const now = new Map(was.length ? allFigures(job).map((f) => [f.key, f.term]) : []);
  return was.map(({ id, value }) => moveOf(id, value, now.get(id), job)).filter(isOther);
}

/** A figure of the record beside that of now: what lies below the digits that were written down has not moved. */
export function moveOf(
  id: string,
  said: Term | undefined,
  now: Term | undefined,
  { env }: Job,
): Move {
  // A number alone is in the unit that the figure has.
  const was = said && now && !said.unit ? { ...said, unit: now.unit } : said;
  const [then, today] = [was, now].map((t) => t && { unit: t.unit, value: kept(t, env) });
  return { id, label: now?.label ?? id, was, now, by: differenceOf(then, today) };
}

export const isOther = ({ by }: Move): boolean => !by?.isZero();

/** Figures that add up to the price, and are no sum of others here. */
const PARTS =
  /^(cost\..+|partner\..+\.labour|job\.(labour|travel|others|contingency|overhead|profit|discount|tax|rounding))$/;

function partsOf(all: readonly Move[], unit: string): Move[] {
  const money = all.filter(({ was, now }) => [was, now].every((t) => !t || t.unit === unit));
  const parts = money.filter(({ id }) => PARTS.test(id));
  const shown = parts.length ? parts : money;
  return [...shown].sort((a, b) => sizeOf(b).cmp(sizeOf(a)));
}

const sizeOf = ({ by }: Move): Exact => by?.abs() ?? ZERO;
