/** What a mix is laid as: bricks and hours, from which follow how fast it goes and what more of it would lay. */

import { phrase } from '../../../shared/phrase';
import { brickTerms } from '../brickwork/count';
import { inUnit, unitNames } from '../brickwork/lengths';
import { jointsIn, type Masonry } from '../brickwork/masonry';
import type { Lays, MixNeed, Pace, TaskNeed } from '../brickwork/needs';
import { defaultLine, defaultTerm } from '../resolve/env';
import { difference, product, quotient, sum, type Term } from '../working/term';

/** Work of a wall or pier that takes no mortar of its own mix, or a mix of its own. */
const NO_MORTAR: ReadonlySet<string> = new Set(['footing', 'core', 'centre', 'take-down', 'clean']);

/** Whether a task lays mortar of the work’s own mix. */
export function laysMortar({ task }: Pick<TaskNeed, 'task'>): boolean {
  return !NO_MORTAR.has(task);
}

/**
 * Of the mortar of a wall or pier: `litres` of it, as laid, are what the bricks take and the hours lay, but for those
 * that are laid `apart`, in a mix of their own.
 */
export function laidIn(
  litres: Term,
  bricks: readonly Term[],
  tasks: readonly TaskNeed[],
  masonry: Masonry,
  apart: readonly Pick<MixNeed, 'lays'>[] = [],
): Lays {
  const laying = tasks.filter(laysMortar).map((t) => t.hours);
  return {
    litres,
    bricks: but(phrase`bricks laid in it`, bricks, apart, (lays) => lays.bricks),
    hours: but(phrase`hours of laying`, laying, apart, (lays) => lays.hours),
    pointing: pointingOf(masonry),
    joints: jointsOf(masonry),
  };
}

/** All of them together, but for what is laid apart. */
function but(
  label: string,
  all: readonly Term[],
  apart: readonly Pick<MixNeed, 'lays'>[],
  of: (lays: Lays) => Term | undefined,
): Term | undefined {
  const [first] = all;
  if (!first) return undefined;
  const others = apart.flatMap(({ lays }) => (lays && of(lays)) ?? []);
  const whole = sum(label, first.unit, all);
  if (!others.length) return whole;
  const away = sum(phrase`laid in another mix`, first.unit, others);
  return difference(label, first.unit, whole, away);
}

/** All of several as one. What pointing takes is that of the first: it goes by the brick. */
export function laysOf(all: readonly (Lays | undefined)[]): Lays | undefined {
  const some = all.filter((lays) => lays !== undefined);
  if (some.length < 2) return some[0];
  const added = (label: string, of: (lays: Lays) => Term | undefined) => {
    const terms = some.flatMap((lays) => of(lays) ?? []);
    return terms.length ? sum(label, terms[0]!.unit, terms) : undefined;
  };
  return {
    litres: sum(
      phrase`laid`,
      some[0]!.litres.unit,
      some.map((lays) => lays.litres),
    ),
    bricks: added(phrase`bricks laid in it`, (l) => l.bricks),
    hours: added(phrase`hours of laying`, (l) => l.hours),
    paces: some.flatMap(pacesOf),
    pointing: some.find((l) => l.pointing)?.pointing,
    joints: some.find((l) => l.joints)?.joints,
  };
}

/** All at one pace where nothing else is said. */
export function pacesOf({ paces, litres, hours }: Lays): readonly Pace[] {
  return paces ?? (hours ? [{ litres, hours }] : []);
}

/** A square metre (or foot) of face of this brick pointed, raked as deep as the defaults have it. */
function pointingOf(masonry: Masonry): Term | undefined {
  const { env, brick } = masonry;
  if (!brick.size || !jointsIn(masonry) || !defaultLine(env, 'rake-depth')) return undefined;
  const times = defaultTerm(env, 'rake-depth', 'times', phrase`raked, in joints`);
  const raked = product(phrase`raked`, 'mm', [times, masonry.jointTerms.bed]);
  const deep = inUnit(raked, env.imperial ? 'ft' : 'm');
  // A metre or foot wide and high, and so deep.
  const volume = product(phrase`pointing of a square`, env.imperial ? 'ft3' : 'm3', [
    faceOfJoints(masonry),
    deep,
  ]);
  return inUnit(volume, unitNames(env).volume);
}

/** How long the joints are of a square metre (or foot): to each brick of a stretcher face a bed and an upright joint. */
function jointsOf(masonry: Masonry): Term | undefined {
  if (!masonry.brick.size || !jointsIn(masonry)) return undefined;
  const { along, up, height } = roomOf(masonry);
  const unit = masonry.env.imperial ? 'ft' : 'm';
  const run = sum(phrase`joint to a brick`, unit, [inUnit(along, unit), inUnit(height, unit)]);
  const room = product(phrase`face with joints`, `${unit}2`, [
    inUnit(along, unit),
    inUnit(up, unit),
  ]);
  return quotient(phrase`joints of a square`, unit, run, room);
}

/** The share of a stretcher face that is joint: what a brick leaves of the room it has with its joints. */
function faceOfJoints(masonry: Masonry): Term {
  const { along, up, length, height } = roomOf(masonry);
  const face = product(phrase`face of a brick`, '', [length, height]);
  const room = product(phrase`face with joints`, '', [along, up]);
  const joint = difference(phrase`joint beside and under it`, '', room, face);
  return quotient(phrase`share of the face that is joint`, '', joint, room);
}

/** A brick of a stretcher face, and with a joint beside and under it. */
function roomOf(masonry: Masonry) {
  const [length, , height, perpend, bed] = brickTerms(masonry) as [Term, Term, Term, Term, Term];
  const along = sum(phrase`length and joint`, 'mm', [length, perpend]);
  return { length, height, along, up: sum(phrase`height and joint`, 'mm', [height, bed]) };
}
