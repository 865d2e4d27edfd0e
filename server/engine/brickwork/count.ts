/** Tallies as terms: bricks, mortar, and how they were counted, in words. */

import { exact, fromGeometry } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { showNumber } from '../../../shared/show';
import type { Env } from '../resolve/env';
import { type Bats, type BricksNeeded, bricksNeeded, sumTallies, type Tally } from '../setting-out';
import { counted, difference, fact, share, sum, type Term, withGaps } from '../working/term';
import { batTerms } from './cuts/bats';
import { piecesText } from './cuts/text';
import type { Brick } from './goods';
import { unitNames, volumeShown } from './lengths';
import { kerfOf, kerfTerm, type Masonry } from './masonry';

export interface Counted {
  /** Bricks that the laid pieces are cut from. */
  readonly bricks: Term;
  readonly needed: BricksNeeded;
  readonly tally: Tally;
  /** Bricks of it that are cut along their height. */
  readonly onEdge: number;
}

const THOUSANDS = 0;

/**
 * Bricks of one kind in some tallies. `inputs` are the facts they were laid from (length, courses, bond);
 * the brick’s own size and joints go with them. `how` says how the courses were laid; `cutOnEdge` of the
 * bricks are cut along their height, one from each. `bats` are at hand for what is cut.
 */
export function countBricks(
  label: string,
  tallies: readonly Tally[],
  masonry: Masonry,
  inputs: readonly Term[],
  how?: () => readonly string[],
  cutOnEdge = 0,
  bats: () => readonly Bats[] = noBats,
): Counted {
  const { env } = masonry;
  const tally = sumTallies(tallies);
  const joint = masonry.jointTerms.perpend.value.toNumber();
  const unit = masonry.brick.size!;
  const needed = once(() => bricksNeeded(tally, unit, joint, kerfOf(env), bats()));
  const detail = () => [
    ...(how?.() ?? []),
    ...piecesText(tally, needed(), env),
    ...onEdgeText(cutOnEdge),
  ];
  const bricks = once(() => {
    const from = laidFrom(masonry, inputs);
    const sawn = needed().cuttings.length ? [kerfTerm(env)] : [];
    const args = [...from, ...sawn, ...(bats().length ? batTerms(masonry) : [])];
    const note = phrase`counted by laying the courses`;
    return counted(label, needed().total, 'bricks', { detail, note, args });
  });
  return {
    tally,
    onEdge: cutOnEdge,
    get needed() {
      return needed();
    },
    get bricks() {
      return bricks();
    },
  };
}

const noBats = (): readonly Bats[] => [];

/** Nesting cuts into bricks costs more than all else that is counted, and where a way out is tried nobody asks for it. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** What was laid, and the brick and joints it was laid with; one list for all that is counted of it. */
export function laidFrom(masonry: Masonry, inputs: readonly Term[]): readonly Term[] {
  let terms = lists.get(inputs);
  if (!terms) {
    terms = [...inputs, ...brickTerms(masonry)];
    lists.set(inputs, terms);
  }
  return terms;
}

const lists = new WeakMap<readonly Term[], readonly Term[]>();

/** The courses of a height, and the bed when the height asks for another than the usual one. */
export function heightTerms(height: HeightLaid, { jointTerms }: Masonry): readonly Term[] {
  const { term, bed } = height;
  if (jointTerms.bed.value.eq(bed)) return [term];
  const note = phrase`opened or closed until whole courses make the height`;
  return [term, fact(phrase`bed joint, as laid`, fromGeometry(bed), 'mm', term.origin, note)];
}

/** A height as it is laid: courses, and the bed joint in mm. */
interface HeightLaid {
  readonly term: Term;
  readonly bed: number;
}

/** What a height of courses is made of. */
export function courseTerms(height: HeightLaid, masonry: Masonry): readonly Term[] {
  const [, , side, , bed] = brickTerms(masonry);
  const laid = heightTerms(height, masonry);
  return laid.length > 1 ? [...laid, side!] : [...laid, side!, bed!];
}

/** The brick’s length, width and height and its two joints, each with its line; made once for a piece of work. */
export function brickTerms(masonry: Masonry): readonly Term[] {
  let terms = made.get(masonry);
  if (!terms) {
    terms = newBrickTerms(masonry);
    made.set(masonry, terms);
  }
  return terms;
}

const made = new WeakMap<Masonry, readonly Term[]>();

function newBrickTerms({ brick, jointTerms }: Masonry): Term[] {
  const line = brick.facts?.line('size');
  const { length, width, height } = brick.size!;
  const side = (label: string, mm: number) => fact(label, exact(mm), 'mm', line?.at('size'));
  const sides = [
    side(phrase`brick, length`, length),
    side(phrase`brick, width`, width),
    side(phrase`brick, height`, height),
  ];
  return [
    ...sides,
    { ...jointTerms.perpend, label: phrase`upright joint` },
    { ...jointTerms.bed, label: phrase`bed joint` },
  ];
}

function onEdgeText(count: number): string[] {
  if (!count) return [];
  if (count === 1) return [phrase`1 of these is cut on edge`];
  return [phrase`${number(count)} of these are cut on edge`];
}

function number(n: number): string {
  return showNumber(exact(n), THOUSANDS);
}

/** Pieces of one brick. */
export interface Laid {
  readonly tally: Tally;
  readonly brick: Brick;
}

/**
 * Mortar as laid: the work’s own volume less the bricks’, and the frogs, which fill when bricks are
 * laid frog up. Each brick has its own frog: those of a damp course may have none. `from` is what it was laid from
 * and with: see {@link laidFrom}.
 */
export function mortarOf(
  label: string,
  laid: readonly Laid[],
  env: Env,
  from: readonly Term[],
): Term {
  const unit = unitNames(env).volume;
  const all = sumTallies(laid.map((l) => l.tally));
  const gross = volumeShown(env, phrase`volume of the work`, all.grossVolume, {
    note: phrase`length, height and thickness of all that is laid, joints with it`,
    args: from,
  });
  const solid = bricksVolume(phrase`volume of its bricks`, laid, env, from);
  const joints = jointsOf(all, gross, solid, env, from);
  const gaps = laid.flatMap((l) => l.brick.gaps);
  const frogs = laid.filter(hasFrogs).map((l) => frogsOf(l, env, from));
  const parts = [...joints, ...frogs];
  if (parts.length === 1) return withGaps({ ...parts[0]!, label }, gaps);
  return withGaps(sum(label, unit, parts), gaps);
}

/** Less than a drop, mm³: rounding of the arithmetic. */
const NOTHING = 1;

/**
 * What is not brick, by where it lies: beds and upright joints as they are laid, and the rest between leaves and rows,
 * in the collar joint. All as one where they cannot be told apart, as where an arch is cut in.
 */
function jointsOf(all: Tally, gross: Term, solid: Term, env: Env, from: readonly Term[]): Term[] {
  const { unit } = gross;
  const whole = difference(phrase`in the joints`, unit, gross, solid);
  const { bedVolume = 0, perpendVolume = 0 } = all;
  const rest = all.grossVolume - all.brickVolume - bedVolume - perpendVolume;
  if (!bedVolume || !perpendVolume || rest < -NOTHING) return [whole];
  const shown = (label: string, mm3: number, note: string) =>
    volumeShown(env, label, mm3, { note, args: from });
  const beds = shown(
    phrase`in the beds`,
    bedVolume,
    phrase`under every course, as thick as the bed joint`,
  );
  const note = phrase`between pieces and at joined ends, as high as a brick and as deep as the work`;
  if (rest <= NOTHING) return [beds, difference(phrase`in the perpends`, unit, whole, beds, note)];
  const perpends = shown(phrase`in the perpends`, perpendVolume, note);
  const those = sum(phrase`in beds and perpends`, unit, [beds, perpends]);
  const between = phrase`between leaves and rows, and in all that is not laid in courses`;
  return [beds, perpends, difference(phrase`in the collar joints`, unit, whole, those, between)];
}

/** A frog that is still to be measured is one that may be there. */
function hasFrogs({ brick }: Laid): boolean {
  return !brick.frog.value.isZero() || brick.frog.gaps.length > 0;
}

function bricksVolume(label: string, laid: readonly Laid[], env: Env, from: readonly Term[]): Term {
  const { brickVolume } = sumTallies(laid.map((l) => l.tally));
  return volumeShown(env, label, brickVolume, {
    note: phrase`every piece laid, by the size of the brick and what is cut off it`,
    args: from,
  });
}

function frogsOf(laid: Laid, env: Env, from: readonly Term[]): Term {
  const { brick } = laid;
  const solid = bricksVolume(phrase`volume of ${brick.title}`, [laid], env, from);
  const note = phrase`frogs are laid up and fill`;
  return share(phrase`in the frogs`, unitNames(env).volume, brick.frog, solid, note);
}
