/** One end of each course of a stretch that is cut off: the pattern there, and how it is closed. */
import { type Candidate, chooseBonded } from '../choose';
import { brokenLap } from '../craft';
import { BRICK } from '../grid';
import { type CutOff, ownEnds, SAME } from './cutting';
import { type Fill, fillsOf, type Gap } from './fills';
import { type NearPiece, piecesFrom, REACH, type Side } from './near-end';

/** Of a brick: so much at the most is taken up by joints at an end where the pattern all but fits, 9 mm of 225. */
const MOST_EASE = 1 / 25;

export interface EndOf {
  readonly pieces: readonly NearPiece[];
  readonly fills: readonly Fill[];
}

/** One end of one course: the pattern there, and every way to close it. */
export function endOf(what: CutOff, course: number, side: Side): EndOf {
  const gap = gapOf(what, course, side);
  return { pieces: gap.pieces, fills: fillsOf(gap) };
}

/** What of a course is to be laid again at one end, mm: up to where the pieces may stay as they are. */
export function gapOf(what: CutOff, course: number, side: Side): Gap {
  const { craft, whole, clear, beware } = what;
  const { module: brick } = craft.grid;
  const far = Math.min((REACH + 1) * brick, clear.to - clear.from);
  const at = side === 'left' ? clear.from : clear.to;
  const { joint } = whole.runs[course]!;
  return {
    craft,
    joint,
    lead: clear[side] === 'butted' ? joint : 0,
    pieces: piecesFrom(whole, course, at, side, far),
    quoin: 2 * brick - Math.abs(at - whole[side === 'left' ? 'from' : 'to']),
    beware: [
      ...inward(beware[course]!, at, side, far),
      ...nextTo(what, course).flatMap((other) => patternAt(what, other, side, far)),
    ],
    lap: (brokenLap(craft) / BRICK) * brick,
    ease: easeOf(what, joint),
  };
}

/** Courses of the cycle that lie on one and under it. */
function nextTo({ whole }: CutOff, course: number): number[] {
  const cycle = whole.runs.length;
  return [...new Set([(course + 1) % cycle, (course + cycle - 1) % cycle])].filter(
    (c) => c !== course,
  );
}

/** Perpends of the pattern of one course, from an end inward, mm. */
function patternAt({ whole, clear }: CutOff, course: number, side: Side, far: number): number[] {
  const at = side === 'left' ? clear.from : clear.to;
  const { joint } = whole.runs[course]!;
  const pieces = piecesFrom(whole, course, at, side, far);
  return pieces.filter(({ from }) => from > joint).map(({ from }) => from - joint / 2);
}

/** What the joints of a course can take up at each of two ends, mm: a good deal less than would show in its laps. */
function easeOf({ craft, clear, limits }: CutOff, joint: number): Gap['ease'] {
  const { module: brick } = craft.grid;
  const joints = Math.max(0, Math.floor((clear.to - clear.from) / brick) - 1);
  const ease = (each: number) => Math.max(0, Math.min(MOST_EASE * brick, (each * joints) / 2));
  return { close: ease(joint - limits.least), open: ease(limits.most - joint) };
}

/** Places along the wall as distances from an end. */
export function inward(all: readonly number[], at: number, side: Side, far: number): number[] {
  const away = all.map((x) => (side === 'left' ? x - at : at - x));
  return away.filter((x) => x > -far && x < far).sort((a, b) => a - b);
}

/** Perpends of the pattern past what is filled in. */
export function after(
  pieces: readonly NearPiece[],
  { resume, off }: Fill,
  joint: number,
  far: number,
) {
  return pieces
    .map((piece) => piece.from)
    .filter((x) => x > resume + SAME && x < far)
    .map((x) => x + off - joint / 2);
}

interface Ending extends Candidate {
  readonly fill: Fill;
}

/** How each course is closed at one end, chosen together so that they lap each other and what lies above and below. */
export function endsChosen(what: CutOff, side: Side): Fill[] | null {
  const { craft, whole, clear, beware } = what;
  const { step, module: brick } = craft.grid;
  const at = side === 'left' ? clear.from : clear.to;
  const far = REACH * brick;
  const layers = whole.runs.map(({ joint }, course): Ending[] => {
    const { pieces, fills } = endOf(what, course, side);
    // What is put in at one end leaves room for the other.
    const other = ownEnds(clear, whole)[side === 'left' ? 'right' : 'left'];
    const most = (clear.to - clear.from) / (other ? 1 : 2);
    return fills
      .filter(({ resume }) => resume <= most)
      .map((fill) => ({
        fill,
        cells: [],
        cost: fill.cost,
        from: 0,
        to: 0,
        perpends: [...fill.perpends, ...after(pieces, fill, joint, far)].map((x) => x / step),
      }));
  });
  const near = beware.map((all) => inward(all, at, side, far).filter((x) => x > 0));
  const bewareOf = near.map((all) => all.map((x) => x / step));
  const chosen = chooseBonded(layers, brokenLap(craft), bewareOf, true) as Ending[] | null;
  return chosen?.map(({ fill }) => fill) ?? null;
}
