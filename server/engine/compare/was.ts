/** What was sent, as the record itself keeps it: figures of that day beside those of now. */
import { isOther, keptMoves, type Move, moveOf } from '../life/moved';
import { recordOf } from '../life/record';
import { kept } from '../life/was';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import type { FigureChange } from './figures';

export interface SinceSent {
  readonly date: string;
  /** The price that was sent, tax in it. */
  readonly price: Term;
  /** How many figures the record keeps; where it keeps none, nothing can be told but the price. */
  readonly figuresKept: number;
  /** Those that are others now. */
  readonly figures: readonly FigureChange[];
  /** The price itself, where it is another. */
  readonly total?: FigureChange;
}

/** Of the last `sent` line; nothing where nothing was sent. */
export function sinceSent(job: Job): SinceSent | undefined {
  const sent = recordOf(job).sent.at(-1);
  if (!sent) return undefined;
  const { date, amount: price, was } = sent;
  const total = moveOf('job.price', price, job.price.total, job);
  return {
    date,
    price,
    figuresKept: was.length,
    figures: keptMoves(sent, job).map((move) => changeOf(move, job)),
    total: isOther(total) ? changeOf(total, job) : undefined,
  };
}

/** A figure of now to the digits of the record, so that what is shown adds up. */
function changeOf({ id, label, was, now, by }: Move, { env }: Job): FigureChange {
  const after = now && { ...now, value: kept(now, env) };
  const money = was?.unit === env.money.code;
  return { id, label, before: was, after, difference: by, money };
}
