/** Both ends of each course of a stretch that is cut off, chosen together where there is little between them. */
import { type Candidate, chooseBonded } from '../choose';
import { brokenLap, type Craft } from '../craft';
import { type Closing, type CutOff, SAME } from './cutting';
import { acrossFills, type Fill } from './fills';
import { after, endOf, gapOf, inward } from './one-end';

/** Ways to close one end that are tried with each of the other's. */
const KEPT = 16;
/** What it costs that one of its perpends all but stands over another: more than any cuts. */
const STANDS = 100;

interface Both extends Candidate {
  readonly closing: Closing;
}

/** How each course is closed; null when one has no way at all. */
export function together(what: CutOff): Closing[] | null {
  const { craft, whole, clear, beware } = what;
  const { step } = craft.grid;
  const length = clear.to - clear.from;
  const near = beware.map((all) => inward(all, clear.from, 'left', length).filter((x) => x > 0));
  const layers = whole.runs.map((_, course) => bothEnds(what, course, near[course]!));
  const bewareOf = near.map((all) => all.map((x) => x / step));
  const chosen = chooseBonded(layers, brokenLap(craft), bewareOf, true) as Both[] | null;
  return chosen?.map(({ closing }) => closing) ?? null;
}

function bothEnds(what: CutOff, course: number, near: readonly number[]): Both[] {
  const { craft, whole, clear, beware } = what;
  const { joint } = whole.runs[course]!;
  const length = clear.to - clear.from;
  const left = endOf(what, course, 'left');
  const right = endOf(what, course, 'right');
  const far = inward(beware[course]!, clear.to, 'right', length);
  const lefts = bestOf(left.fills, near, craft);
  const rights = bestOf(right.fills, far, craft);
  const found: Both[] = [];
  for (const l of lefts)
    for (const r of rights) {
      const kept = length - r.resume - l.resume;
      if (kept < -joint - SAME || (kept > -joint + SAME && kept < SAME)) continue;
      const pattern = kept > 0 ? after(left.pieces, l, joint, length - r.resume) : [];
      const mine = kept > 0 ? r.perpends : r.perpends.slice(0, -1);
      const theirs = mine.map((x) => length - x).reverse();
      found.push(both({ left: l, right: r }, [...l.perpends, ...pattern, ...theirs], craft));
    }
  const gap = gapOf(what, course, 'left');
  const lead = clear.right === 'butted' ? joint : 0;
  for (const fill of acrossFills(gap, length, lead)) {
    const none = { pieces: [], resume: lead, off: 0, cost: 0, perpends: [] };
    found.push(both({ left: fill, right: none }, fill.perpends.slice(0, -1), craft));
  }
  return found;
}

/** The cheapest ways, those first that stand clear of what lies above and below. */
function bestOf(fills: readonly Fill[], beware: readonly number[], craft: Craft): Fill[] {
  const lap = craft.grid.module / 8;
  const stands = ({ perpends }: Fill) =>
    perpends.some((x) => beware.some((y) => Math.abs(x - y) < lap));
  const dear = new Map(fills.map((fill) => [fill, fill.cost + (stands(fill) ? STANDS : 0)]));
  return [...fills].sort((a, b) => dear.get(a)! - dear.get(b)!).slice(0, KEPT);
}

function both(closing: Closing, perpends: readonly number[], { grid }: Craft): Both {
  const cost = (closing.left?.cost ?? 0) + (closing.right?.cost ?? 0);
  return { closing, cells: [], cost, from: 0, to: 0, perpends: perpends.map((x) => x / grid.step) };
}
