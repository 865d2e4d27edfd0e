import type { CutWay, FitQuestion } from './fit';
import { estimate, SAME } from './halves';

/** Wholes and one or two like cuts, at the joint nearest the best that leaves every cut long enough. */
interface Cutting {
  wholes: number;
  cut: number;
  joint: number;
  off: number;
}

/**
 * For `wholes` whole pieces and `cuts` cuts: the cut is what `joint` leaves, so the joints that keep
 * it between the least cut and a whole piece are a range; the best joint is brought into it.
 */
function cutting(q: FitQuestion, wholes: number, cuts: 1 | 2): Cutting | null {
  const { least, most, best, leastCut } = q.limits;
  const joints = wholes + cuts - 1 + q.endJoints;
  const left = q.length - wholes * q.piece;
  const longest = longestCut(q);
  if (joints === 0) return plain(left, q);
  const low = Math.max(least, (left - cuts * longest) / joints);
  const high = Math.min(most, (left - cuts * leastCut) / joints);
  if (low > high + SAME) return null;
  const joint = Math.min(Math.max(best, low), Math.max(low, high));
  const cut = (left - joints * joint) / cuts;
  return cut < q.piece - SAME && cut <= longest + SAME
    ? { wholes, cut, joint, off: Math.abs(joint - best) }
    : null;
}

/** A piece less what the saw takes, mm. */
function longestCut({ piece, limits }: FitQuestion): number {
  return piece - (limits.kerf ?? 0);
}

/** A lone cut with no joint at all. */
function plain(length: number, q: FitQuestion): Cutting | null {
  const { piece, limits } = q;
  const longest = Math.min(piece - SAME, longestCut(q) + SAME);
  if (length < limits.leastCut - SAME || length > longest) return null;
  return { wholes: 0, cut: length, joint: limits.best, off: 0 };
}

function better(a: Cutting, b: Cutting | null): boolean {
  if (!b || a.off < b.off - SAME) return true;
  return a.off < b.off + SAME && a.cut > b.cut + SAME;
}

/**
 * The joint nearest the best stands where the best joint itself leaves room for the cuts, or next
 * to it: only those numbers of wholes are tried.
 */
function bestCutting(q: FitQuestion, cuts: 1 | 2): Cutting | null {
  const around = Math.floor(estimate(q, q.length) / 2);
  let best: Cutting | null = null;
  for (let wholes = Math.max(0, around - cuts - 2); wholes <= around + 1; wholes++) {
    const found = cutting(q, wholes, cuts);
    if (found && better(found, best)) best = found;
  }
  return best;
}

/**
 * One cut; and where that would alter the joint, or cannot be, a whole and the rest made into two like cuts. A run
 * that no cut of a decent length goes into has the longest that does.
 */
export function cutWays(question: FitQuestion): CutWay[] {
  const ways = longEnough(question);
  return ways.length ? ways : tooShort(question);
}

function longEnough(question: FitQuestion): CutWay[] {
  const one = bestCutting(question, 1);
  const two = one && one.off < SAME ? null : bestCutting(question, 2);
  return [...wayOf(one, 1, question), ...wayOf(two, 2, question)];
}

function tooShort(question: FitQuestion): CutWay[] {
  const any = { ...question, limits: { ...question.limits, leastCut: 0 } };
  const ways = [1 as const, 2 as const].flatMap((n) => wayOf(bestCutting(any, n), n, question));
  const longest = Math.max(...ways.map((way) => way.cut));
  const found = longest > SAME ? ways.find((way) => way.cut === longest) : undefined;
  return found ? [{ ...found, short: true }] : [];
}

function wayOf(found: Cutting | null, cuts: 1 | 2, { cutAt = 'middle' }: FitQuestion): CutWay[] {
  return found ? [{ kind: 'cut', where: cutAt, cuts, ...pick(found) }] : [];
}

function pick({ wholes, cut, joint }: Cutting) {
  return { wholes, cut, joint };
}
