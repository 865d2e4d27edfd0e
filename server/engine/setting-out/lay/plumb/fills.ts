/** Ways to close a course against a reveal that stands where the pattern has no perpend of its own. */
import type { FacePiece, PieceRun } from '../../types';
import type { Craft } from '../craft';
import type { NearPiece } from './near-end';

/** Pieces from the end inward, then the pattern from its brick that begins at `resume`, mm from the end. */
export interface Fill {
  readonly pieces: readonly PieceRun[];
  readonly resume: number;
  /** Mm by which they are longer than their place (negative: shorter), for the joints of the whole course to take up. */
  readonly off: number;
  readonly cost: number;
  /** Middles of the joints behind each of them, mm from the end. */
  readonly perpends: readonly number[];
}

/** What a course has at an end. */
export interface Gap {
  readonly craft: Craft;
  readonly joint: number;
  /** Mm from the end to the first piece: a joint where the end butts, else nothing. */
  readonly lead: number;
  readonly pieces: readonly NearPiece[];
  /** Mm from the end up to which the quoin of the longer stretch reaches, where that ends close by; else less than nothing. */
  readonly quoin: number;
  /** Perpends above and below, those of its own pattern too, from the end inward, mm. */
  readonly beware: readonly number[];
  /** Mm that a perpend keeps from those. */
  readonly lap: number;
  /** Mm that its joints can take up for the sake of this end: closing, and opening. */
  readonly ease: { readonly close: number; readonly open: number };
}

/** Bricks of the pattern that may give way to what is cut. */
const MOST_TAKEN = 3;
/** Lengths nearer than this are one length, mm. */
const SAME = 1e-6;
/*
 * What is liked less costs more: each piece that is put in, each cut, the shorter the dearer, each brick of the
 * pattern that it takes, and each mm that joints have to take up. As in `compose.ts`, only their order matters.
 */
const EACH = 0.5;
const CUT = 2;
const CUT_SHORT = 3;
const TAKEN = 1;
const OFF = 0.1;

/** Of a quarter lap: 42 mm of 56, where there is no room for it all. DIN EN 1996-2 asks 45 mm, Dutch practice 40 (steen010.nl). */
const LESS = 3 / 4;

/** Every way to close one course, in no order; the brick that runs on past the end is cut or replaced. */
export function fillsOf(gap: Gap): Fill[] {
  const { pieces, lead, ease } = gap;
  const starts = pieces.flatMap(({ from }, i) => (from > lead - ease.close - SAME ? [i] : []));
  // A queen closer stands beside its own header at the end of the wall, or not at all.
  const past = pieces.findLastIndex(({ piece, from }) => piece === 'closer' && from < gap.quoin);
  const free = starts.filter((i) => i > past);
  return free.slice(0, MOST_TAKEN).flatMap((i, taken) => {
    const { from } = pieces[i]!;
    return waysInto(from - lead, gap).map((lengths) => fillOf(gap, lengths, from, taken));
  });
}

/** Every way to close a short course from end to end, with one piece or two; the last of their perpends is no perpend. */
export function acrossFills(gap: Gap, length: number, leadAfter: number): Fill[] {
  const resume = length - leadAfter + gap.joint;
  const fills = waysInto(resume - gap.lead, gap).map((each) => fillOf(gap, each, resume, 0));
  return fills.filter(({ pieces }) => pieces.length > 0 && pieces.at(-1)!.piece !== 'closer');
}

/** Lengths that with a joint behind each take up `room` mm: none, one, two, or three where they have to be. */
function waysInto(room: number, gap: Gap): number[][] {
  return [...wholesInto(room, gap), ...cutsInto(room, gap)];
}

/** Without a cut, joints taking up what is over. */
function wholesInto(room: number, { craft, joint, ease }: Gap): number[][] {
  const { stretcher, closer, 'three-quarter': long } = craft.grid.face;
  const short = shortOf(craft);
  const named = [stretcher, short, long];
  const pairs = named.flatMap((a) => named.map((b) => [a, b]));
  const quoin = craft.grid.thickness > 1 ? [[short, closer]] : [];
  return [[], ...named.map((a) => [a]), ...pairs, ...quoin].filter((lengths) => {
    const off = lengths.reduce((sum, length) => sum + length + joint, 0) - room;
    return off <= ease.close + SAME && off >= -ease.open - SAME;
  });
}

const shortOf = ({ grid }: Craft) => (grid.thickness === 1 ? grid.face.half : grid.face.header);

/** With a cut or two that fill it just so, or a cut beside two pieces. */
function cutsInto(room: number, gap: Gap): number[][] {
  const { craft, joint } = gap;
  const { stretcher } = craft.grid.face;
  const most = Math.min(craft.mostCut + SAME, stretcher - SAME);
  const isCut = (length: number) => length >= craft.leastCut - SAME && length <= most;
  const good = (length: number) => isCut(length) || isBat(length, craft);
  const one = isCut(room - joint) ? [[room - joint]] : [];
  const two = room - 2 * joint;
  if (two > 2 * stretcher) return threes(room - 3 * joint, craft).filter((all) => all.every(good));
  if (two < 2 * craft.leastCut) return one;
  const pairs = firsts(two, gap).map((first) => [first, two - first]);
  return [...one, ...pairs.filter((pair) => pair.every(good))];
}

/** Two whole pieces or bats and a cut, where two pieces are too short. */
function threes(all: number, craft: Craft): number[][] {
  const named = [shortOf(craft), craft.grid.face['three-quarter'], craft.grid.face.stretcher];
  const pairs = named.flatMap((a) => named.map((b) => [a, b, all - a - b] as const));
  return pairs.flatMap(([a, b, c]) => [
    [a, b, c],
    [a, c, b],
    [c, a, b],
  ]);
}

/** Lengths worth trying for the first of two pieces that are `two` mm together. */
function firsts(two: number, { craft, joint, lead, beware, lap }: Gap): number[] {
  const { stretcher, 'three-quarter': long } = craft.grid.face;
  const named = [stretcher, shortOf(craft), long];
  const laps = [-lap, -LESS * lap, LESS * lap, lap];
  const clear = beware.flatMap((at) => laps.map((by) => at + by - joint / 2 - lead));
  const least = [craft.leastCut, two - craft.leastCut];
  const all = [...named, ...named.map((length) => two - length), two / 2, ...least, ...clear];
  const between = all.filter((length) => length > 0 && length < two).sort((a, b) => a - b);
  return between.filter((length, i) => i === 0 || length - between[i - 1]! > 0.01);
}

function isBat(length: number, craft: Craft): boolean {
  const name = nameOf(length, craft);
  return name !== 'cut' && name !== 'closer';
}

/** What a piece of this length is in the face. */
function nameOf(length: number, craft: Craft): FacePiece {
  const { stretcher, closer, 'three-quarter': long } = craft.grid.face;
  const near = (a: number) => Math.abs(length - a) < SAME;
  if (near(stretcher)) return 'stretcher';
  if (near(shortOf(craft))) return craft.grid.thickness === 1 ? 'half' : 'header';
  if (near(long)) return 'three-quarter';
  return craft.grid.thickness > 1 && near(closer) ? 'closer' : 'cut';
}

function fillOf(
  { craft, joint, lead }: Gap,
  lengths: readonly number[],
  resume: number,
  taken: number,
): Fill {
  let at = lead;
  let cost = taken * TAKEN;
  const perpends: number[] = [];
  const pieces = lengths.map((length): PieceRun => {
    const piece = nameOf(length, craft);
    at += length + joint;
    perpends.push(at - joint / 2);
    cost += EACH;
    if (piece === 'cut') cost += CUT + CUT_SHORT * (1 - length / craft.grid.face.stretcher);
    return { piece, length, count: 1 };
  });
  const off = Math.abs(at - resume) < SAME ? 0 : at - resume;
  return { pieces, resume, off, cost: cost + OFF * Math.abs(off), perpends };
}
