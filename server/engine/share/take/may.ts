/** What is taken from a partner’s file, and what never is. */
import type { SaidLine } from '../../compare';
import { isHidden, KEPT } from '../kept';
import { moneyIn } from '../money';
import { TAKEN_OUT } from '../texts';

/** Their rates, which are taken where that is said. */
const RATES: ReadonlySet<string> = new Set(['labour', 'output', 'serving', 'travel', 'cost']);
/** What each firm says of itself, of its client and of what came of the job. */
const OWN: ReadonlySet<string> = new Set(['job', 'firm']);

export function mayTakeBlock(kind: string | undefined, rates: boolean): boolean {
  if (kind === undefined || OWN.has(kind)) return false;
  return KEPT.has(kind) || (rates && RATES.has(kind));
}

/**
 * A line of theirs in the place of `ours`, or beside it. A price of ours never gives way to none, and no line to one of
 * which something was taken out before we got it.
 */
export function mayTakeLine(
  kind: string,
  theirs: SaidLine,
  ours: SaidLine | undefined,
  rates: boolean,
): boolean {
  if (theirs.means.startsWith('unread')) return false;
  if (texts(theirs).some((text) => text.includes(TAKEN_OUT))) return false;
  if (hasMoney(theirs)) return rates;
  return !(ours && hasMoney(ours)) && (rates || !isHidden(kind, theirs.key));
}

/** A line of ours that they could have had. */
export function couldHave(kind: string, ours: SaidLine): boolean {
  return !isHidden(kind, ours.key) && !hasMoney(ours);
}

function hasMoney({ items }: SaidLine): boolean {
  return moneyIn(items).size > 0;
}

function texts({ items }: SaidLine): string[] {
  return items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
}
