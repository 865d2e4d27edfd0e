/** Walls bonded into thick ones: how far their courses run in, chosen so that both walls lap whichever course each is begun with. */
import {
  begunWith,
  type Entry,
  entriesFor,
  GOOD_TIE,
  type Parity,
  type RunsOn,
  runOn,
  type SettingOut,
  type Side,
  setOut,
  type Tie,
  tieOf,
} from '../../../setting-out';
import type { LaidAlone } from './alone';
import type { TeeLevels } from './tee-levels';

/** The end of a wall that is to be bonded into a wall of a brick or more. */
export interface ThickTee {
  readonly side: Side;
  readonly with: LaidAlone;
  readonly distance: number;
  readonly levels: TeeLevels;
  /** The courses of its bond that the other wall may be begun with. */
  readonly begins: readonly Parity[];
}

export type Entries = Readonly<Partial<Record<Side, Entry>>>;

/** How far each of its ends runs in, and the course of its bond that it is begun with for their sake. */
export interface Bonding {
  readonly entries: Entries;
  readonly begun: Parity;
}

interface Wall {
  readonly alone: LaidAlone;
  /** How its other ends run on. */
  readonly on: RunsOn;
  /** Courses that it may be begun with: it has to bond with all of one of these, whichever is taken in the end. */
  readonly begins: readonly (readonly Parity[])[];
}

const NOTHING: Bonding = { entries: {}, begun: 0 };

/** For each of them how far it runs in; an end is left out where nothing bonds. Ends of one wall are set out together. */
export function bondingOf(tees: readonly ThickTee[], wall: Wall): Bonding {
  const both = best(tees, wall);
  if (both || tees.length < 2) return both ?? NOTHING;
  for (const tee of tees) {
    const one = best([tee], wall);
    if (one) return one;
  }
  return NOTHING;
}

/** What it costs to begin a wall with the second course of its bond. */
const BEGUN = 0.5;

function best(tees: readonly ThickTee[], wall: Wall): Bonding | undefined {
  let found: (Bonding & { cost: number }) | undefined;
  for (const begins of wall.begins)
    for (const entries of choices(tees)) {
      const cost = costOf(tees, entries, wall, begins, found?.cost);
      const begun = begins.length > 1 ? 0 : (begins[0] ?? 0);
      if (cost === undefined || (found && found.cost <= cost + begun * BEGUN)) continue;
      found = { entries, begun, cost: cost + begun * BEGUN };
      if (cost <= GOOD_TIE * tees.length) return found;
    }
  return found;
}

function choices(tees: readonly ThickTee[]): Entries[] {
  return tees.reduce<Entries[]>(
    (all, { side, with: { plan } }) =>
      entriesFor(plan.spec, plan.spec.thickness).flatMap((entry) =>
        all.map((entries) => ({ ...entries, [side]: entry })),
      ),
    [{}],
  );
}

/** The dearest of the ways that the walls may be begun; nothing where one of them does not bond. */
function costOf(
  tees: readonly ThickTee[],
  entries: Entries,
  wall: Wall,
  begins: readonly Parity[],
  most: number | undefined,
): number | undefined {
  const out = setOutOn(wall.alone, { ...wall.on, ...entries });
  let cost = 0;
  for (const tee of tees)
    for (const begun of begins)
      for (const other of tee.begins) {
        const tie = tieAt(tee, entries[tee.side]!, out, begun, other, most);
        if (!tie || (most !== undefined && tie.cost >= most)) return undefined;
        cost = Math.max(cost, tie.cost);
      }
  return cost;
}

/** The wall with courses that run on, kept for the last few ways. */
export function setOutOn(alone: LaidAlone, on: RunsOn): SettingOut {
  const key = JSON.stringify([on.left?.by, on.left?.end, on.right?.by, on.right?.end]);
  let known = laid.get(alone);
  if (!known || known.size >= MOST_KEPT) laid.set(alone, (known = new Map()));
  let out = known.get(key);
  if (!out) known.set(key, (out = setOut(runOn(alone.spec, on))));
  return out;
}

const laid = new WeakMap<LaidAlone, Map<string, SettingOut>>();
/** Ways to run in at either end, each with each. */
const MOST_KEPT = 40;

/** How a wall set out so is bonded in, begun with one course of its bond where the other is begun with another. */
export function tieAt(
  { side, with: { out: main }, distance, levels }: ThickTee,
  entry: Entry,
  cross: SettingOut,
  begun: Parity,
  other: Parity,
  most?: number,
): Tie | undefined {
  const { lift, courses } = levels;
  const key = [
    side,
    distance,
    entry.quarters,
    begun,
    other,
    lift,
    courses.from,
    courses.to,
    most,
  ].join(' ');
  let known = ties.get(cross);
  if (!known) ties.set(cross, (known = new Map()));
  const kept = known.get(key);
  if (kept?.main === main) return kept.tie;
  const walls = { main: begunWith(main, other), cross: begunWith(cross, begun) };
  const tie = tieOf({ ...walls, side, entry, at: distance, lift, courses, most });
  known.set(key, { main, tie });
  return tie;
}

const ties = new WeakMap<SettingOut, Map<string, { main: SettingOut; tie: Tie | undefined }>>();
