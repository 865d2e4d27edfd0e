/** examples/arched-gate: a one-brick wall in Flemish bond, 4.94 m x 32 courses, with an arch over a gate and soldiers over a hatch. */
import { cents, nearest, priceUp, sum, up } from './arithmetic';
import { materialsOf, purchase, spentOn } from './buying';
import { CLOSER, DAY, DRIVE, FROG, GANG, mortarMix, mortarUse, SOLD, TERMS, WHOLE } from './uk';

interface Piece {
  readonly letter: string;
  readonly from: number;
  readonly to: number;
}

const LONG: Readonly<Record<string, number>> = { S: 215, H: 102.5, c: 46.25 };

/** A course read off its face from `from` mm, joints of 10 mm. */
function laid(face: string, from: number): Piece[] {
  let x = from;
  return [...face].map((letter) => {
    const piece = { letter, from: x, to: x + LONG[letter]! };
    x = piece.to + 10;
    return piece;
  });
}

// Half bricks: 8 left of the gate, 10 in it, 8 to the hatch, 10 in it, 8 on. Flemish closes on 8, on 26 and on 44.
const PAIR = {
  8: ['SHSHS', 'HcSHScH'],
  26: [`${'SH'.repeat(8)}S`, `Hc${'SH'.repeat(7)}ScH`],
  44: [`${'SH'.repeat(14)}S`, `Hc${'SH'.repeat(13)}ScH`],
} as const;
const GATE = { from: 890, to: 2025 };
const HATCH = { from: 2915, to: 4050 };

/** The stretches of a course as the bond has them, before anything is let in. Courses are counted from nought. */
function course(i: number): Piece[] {
  const turn = i % 2;
  const stretch = (halves: 8 | 26 | 44, from: number) => laid(PAIR[halves][turn]!, from);
  if (i >= 24) return stretch(44, 0);
  const left = stretch(8, 0);
  if (i >= 12 && i < 20) return [...left, ...stretch(8, GATE.to), ...stretch(8, HATCH.to)];
  return [...left, ...stretch(26, GATE.to)];
}

// The arch: span 1135, rise 150, two rings of 102.5 mm and a joint between them.
const RADIUS = (567.5 ** 2 + 150 ** 2) / 300;
const LEAN = Math.asin(567.5 / RADIUS);
const BACK = RADIUS + 102.5 + 10 + 102.5;
/** The skewback ends so high over the springing. */
const SKEWBACK = 215 * Math.cos(LEAN);

/** Half the width of opening and arch at a height over the springing. */
function half(height: number): number {
  if (height < SKEWBACK) return 567.5 + height * Math.tan(LEAN);
  return Math.sqrt(Math.max(0, BACK ** 2 - (RADIUS - 150 + height) ** 2));
}

/** Where no brick is left: from the top of a course's bed to the top of its bricks a brick is as long as its longest side. */
function gap(i: number): { from: number; to: number } | undefined {
  // Soldiers on the angle, 150 mm past the hatch on both sides, three courses high.
  if (i >= 20 && i < 23) return { from: HATCH.from - 150, to: HATCH.to + 150 };
  if (i < 24 || i > 28) return undefined;
  const up = (i - 24) * 75;
  const least = Math.min(half(up + 10), half(up + 75));
  return least > 0 ? { from: 1457.5 - least, to: 1457.5 + least } : undefined;
}

/**
 * What is left of the pieces on one side, `room` mm before the gap. The last is cut, and with the one beside it if under
 * 50 mm. Beside the upright end of the soldiers the one beside it gives way wherever one cut fills both places: the bond
 * would have a header there and a slip of 55, and one of 167.5 laps what is above and below by the same 56 mm. That cuts
 * under half a brick are avoided is common practice. Where one does not, a header and what is left fill them.
 */
function upTo(pieces: readonly Piece[], edge: number, upright: boolean): Piece[] {
  const whole = pieces.filter((p) => p.to <= edge + 1e-9);
  const last = whole.at(-1)!;
  const before = whole.slice(0, -1);
  const rest = edge - last.to - 10;
  const both = edge - last.from;
  if (edge + 10 - last.to <= 13) return whole;
  if (rest >= 50 && !(upright && both <= 212))
    return [...whole, { letter: '-', from: last.to + 10, to: edge }];
  if (both <= 215) return [...before, { ...last, letter: '-', to: edge }];
  if (upright)
    return [
      ...before,
      { letter: 'H', from: last.from, to: last.from + 102.5 },
      { letter: '-', from: last.from + 112.5, to: edge },
    ];
  const each = (both - 10) / 2;
  return [
    ...before,
    { letter: '-', from: last.from, to: last.from + each },
    { letter: '-', from: edge - each, to: edge },
  ];
}

const flipped = (pieces: readonly Piece[]): Piece[] =>
  pieces.map((p) => ({ ...p, from: -p.to, to: -p.from })).reverse();

function cut(i: number): Piece[] {
  const pieces = course(i);
  const out = gap(i);
  if (!out) return pieces;
  // Left of the gate stands nothing that the hatch's soldiers reach.
  const apart = i < 24 ? pieces.filter((p) => p.to <= GATE.from) : [];
  const rest = pieces.filter((p) => !apart.includes(p));
  const left = upTo(rest, out.from - 10, i < 24);
  const right = flipped(upTo(flipped(rest), -(out.to + 10), i < 24));
  return [...apart, ...left, ...right];
}

const PIECES = Array.from({ length: 32 }, (_, i) => cut(i)).flat();
const count = (letter: string) => PIECES.filter((p) => p.letter === letter).length;
const CUTS = PIECES.filter((p) => p.letter === '-').map((p) => p.to - p.from);
// Stretchers lie two behind one another, and so do cuts.
const wall = { wholes: 2 * count('S') + count('H'), closers: count('c') };

/** How many cuts in the face are about so long. */
const about = (mm: number) => 2 * CUTS.filter((each) => Math.abs(each - mm) < 0.05).length;

/**
 * Bricks for what is cut. Over 107 mm a cut takes a brick: 199.3, 187.8, 170.7 and 167.5. One of 111.3 and one of 100.4 are
 * 214.7 with the saw. The closers come two from a brick split lengthwise.
 */
function forCuts(): number {
  const long = about(199.3) + about(187.8) + about(170.7) + about(167.5);
  const beside = about(111.25);
  if (beside !== about(100.4) || long + beside + about(100.4) !== 2 * CUTS.length)
    throw new Error('other cuts');
  return sum(long, beside, up(wall.closers / 2));
}

const inWall = wall.wholes + forCuts();
/** An odd number of bricks round, at 5 mm or more at the soffit. */
function round(radius: number): number {
  const most = Math.floor((2 * LEAN * radius - 5) / 70);
  return most % 2 ? most : most - 1;
}
const RINGS = [RADIUS, RADIUS + 112.5].map((inner) => ({ inner, count: round(inner) }));
const inArch = sum(...RINGS.map((r) => r.count));
// 1435 mm are 19 x 75 and a joint; 1135 are 15 x 75 and one. Soldiers stand two deep. On top 4940 = 66 x 75 - 10.
const soldiers = 2 * 19;
const sill = 15;
const onEdge = 66;
const red = inWall + inArch + soldiers + sill + onEdge;

/** Faces, mm²: the segment under the soffit, the two rings with the joint between. */
const SEGMENT = (RADIUS ** 2 * (2 * LEAN - Math.sin(2 * LEAN))) / 2;
const RING = LEAN * (BACK ** 2 - RADIUS ** 2);
const FACE = 4940 * 2400 - 1135 * 1800 - 1135 * 600 - 1435 * 225 - SEGMENT - RING;

/** Litres. What the arch cuts off bricks is taken off by their share of a face. */
function mortar(): number {
  const gaps = [24, 25, 26, 27, 28].map(gap).filter((g) => g !== undefined);
  const wedges = SEGMENT + RING - sum(...gaps.map((g) => (g.to - g.from) * 75));
  const share = (215 * 65) / (225 * 75);
  const cuts = (2 * sum(...CUTS) * 102.5 * 65) / 1e6;
  const bricks = wall.wholes * WHOLE + wall.closers * CLOSER + cuts - (wedges * 215 * share) / 1e6;
  const others = (inArch + soldiers + sill + onEdge) * WHOLE;
  const gross = (FACE + RING + 1435 * 225 + 1135 * 112.5 + 4940 * 112.5) * 215;
  return gross / 1e6 - (bricks + others) + FROG * (bricks + others);
}

function hours(): number {
  // Two angles side by side, two an hour; one centre, one an hour.
  return sum(inWall / 55, soldiers / 25, inArch / 12, sill / 25, onEdge / 35, 2 / 2, 1);
}

/** The widest joint at the back: of the ring whose bricks leave most. */
function backJoint(): number {
  const joints = RINGS.map(({ inner, count }) => {
    return (2 * LEAN * (inner + 102.5) - count * 65) / (count + 1);
  });
  return Math.max(...joints);
}

function materials(): Record<string, number> {
  const mixes = { general: mortarMix(mortar(), { cement: 1, lime: 1, sand: 6 }) };
  const bricks = up(red * 1.05);
  const { ballast: _, ...sold } = SOLD;
  return {
    // The hour of the centre lays nothing.
    ...materialsOf(mixes, sold, { general: mortarUse(hours() - 1, red) }),
    ...purchase('harwick-red', red, bricks, bricks * 0.92),
    ...purchase('lintel-angle', 2, 2, 2 * 38),
    'job.bricks': bricks,
  };
}

/**
 * Bricks of the face that the arch cuts: those that reach nearer than a joint to its widest in their course. Read off
 * the drawing, one on each side in three courses beside the skewbacks and in the fourth, and five under the crown.
 */
function cutToArch(): number {
  const inCourses = [24, 25, 26, 27, 28].map((i) => {
    const up = (i - 24) * 75;
    const inside = up + 10 < SKEWBACK && SKEWBACK < up + 75 ? half(SKEWBACK) : 0;
    const reach = Math.max(half(up + 10), half(up + 75), inside) + 9;
    return cut(i).filter((p) => p.to > 1457.5 - reach && p.from < 1457.5 + reach).length;
  });
  if (inCourses.join() !== '2,2,2,2,5') throw new Error('other bricks are cut to the arch');
  return sum(...inCourses);
}

export function archedGate(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const labour = cents(hours() * GANG);
  const days = up(hours() / DAY, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const price = priceUp(cents(spent + labour + travel), TERMS);
  return {
    'yard.bricks': red,
    'yard.rule': (FACE / 1e6) * 60 * 2,
    'yard.area': FACE / 1e6,
    'yard.courses': 32,
    'yard.height': 2.4,
    'yard.mortar': mortar(),
    'yard.hours': hours(),
    'yard.gate.voussoirs': inArch,
    'yard.gate.radius': RADIUS,
    'yard.gate.joint': backJoint(),
    'yard.gate.cuts': cutToArch(),
    'yard.hatch.head': 19,
    'yard.hatch.subsill': 15,
    'yard.cost': cents(spent + labour),
    'yard.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 0,
    ...price,
  };
}
