/** Perpends that stand over one another, or all but: where stretches of a wall meet, or beside what spans an opening. */
import { phrase } from '../../../shared/phrase';
import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import type { Head } from '../brickwork/wall/heads/head';
import type { Tee } from '../brickwork/wall/meet/tees';
import type { BlockFacts } from '../resolve/env';
import { carvedLap, type PoorLap, type SettingOut } from '../setting-out';
import { otherBearing } from './heads/other-bearing';
import { nameOrigin, type Remark } from './remark';

/** As many as anyone would read. */
const MOST_TOLD = 3;

export function perpendsAligned(
  out: SettingOut,
  { facts, env }: Masonry,
  heads: readonly Head[] = [],
): Remark[] {
  const shown = (mm: number) => lengthText(env, mm);
  const front = out.poorLaps.filter(({ back }) => !back);
  const told = front.filter(({ carved, beside }) => !carved && beside === undefined);
  const met = laidPoorly(out, told, shown);
  const wall: Remark[] = met
    ? [
        {
          code: 'perpends-aligned',
          severity: 'information',
          origin: nameOrigin(facts.block),
          message: phrase`${met.what} where a stretch begins or ends over another: ${met.places}. No way was found to lay those stretches that laps there, cut at the reveals or not; one that a fit line speaks of is laid as that says. Keep them plumb by hand there, opening a joint here and closing one there; or bring the openings and piers to brickwork sizes.`,
        },
      ]
    : [];
  const carved = front.filter((lap) => lap.carved);
  const beside = heads.flatMap((head) => besideHead(head, out, carved, shown) ?? []);
  return [...wall, ...beside, ...inBack(out, front, facts, shown)];
}

/** What stands so in the back alone: nobody has to be told twice of one place. */
function inBack(
  out: SettingOut,
  front: readonly PoorLap[],
  { block }: BlockFacts,
  shown: (mm: number) => string,
): Remark[] {
  const brick = out.spec.unit.length + out.spec.joints.perpend;
  const seen = (lap: PoorLap) =>
    front.some((f) => f.course === lap.course && Math.abs(f.at - lap.at) < brick);
  const alone = out.poorLaps.filter((lap) => lap.back && !seen(lap));
  const poor = laidPoorly(out, alone, shown, true);
  if (!poor) return [];
  return [
    {
      code: 'perpends-aligned',
      about: 'back',
      severity: 'information',
      origin: nameOrigin(block),
      message: phrase`${poor.what}, where a stretch begins or ends over another or beside what spans an opening: ${poor.places}. The front laps there. No way was found to lay the back so that it does. Cut the bricks of the back there by eye, none of them over a joint; or bring the openings and piers to brickwork sizes.`,
    },
  ];
}

/** Beside a wall that is bonded into this one and runs right through it. */
export function besideArm(
  out: SettingOut,
  { block, env }: BlockFacts,
  tee: Tee,
): Remark | undefined {
  const laps = out.poorLaps.filter(({ beside }) => beside === tee.distance);
  const poor = laidPoorly(out, laps, (mm) => lengthText(env, mm));
  if (!poor) return undefined;
  const arm = tee.line.block.name ?? '';
  return {
    code: 'perpends-aligned',
    about: arm,
    severity: 'information',
    origin: nameOrigin(block),
    message: phrase`${poor.what} beside the wall ${arm}, which is bonded into this one: ${poor.places}. No way was found to lay this wall beside it that laps there. Move it along by a few centimetres, or tie it.`,
    related: [{ origin: tee.line.origin, message: phrase`The wall ${arm} runs in` }],
  };
}

function besideHead(
  head: Head,
  out: SettingOut,
  laps: readonly PoorLap[],
  shown: (mm: number) => string,
): Remark | undefined {
  const { facts } = head.opening;
  const zone = (head.lintel ?? head.row ?? head.arch)?.zone;
  const high = Math.max(...[head.lintel, head.row, head.arch].map((each) => each?.zone.high ?? 0));
  // How far a lintel bears may still be measured.
  const bearing = facts.line('bearing');
  if (!zone || (bearing && bearing.number('bearing') === undefined)) return undefined;
  const reach = 1.5 * (out.spec.unit.length + out.spec.joints.perpend);
  const mine = laps.filter(
    ({ course, at }) =>
      course >= zone.low && course <= high && at > zone.from - reach && at < zone.to + reach,
  );
  const poor = laidPoorly(out, mine, shown);
  if (!poor) return undefined;
  const line = facts.line('head') ?? facts.line('lintel');
  const message = phrase`${poor.what} beside what spans the opening ${facts.name}: ${poor.places}. No way was found to cut the bricks beside it that laps there. ${head.lintel ? phrase`Another bearing` : phrase`Another width`}, or a course more or less under it, may.`;
  return {
    code: 'perpends-aligned',
    about: facts.name,
    severity: 'information',
    origin: line?.origin ?? nameOrigin(facts.block),
    message,
    ways: () => otherBearing(head, out),
  };
}

/** Those that stand over one another, else those that lap less than rules call a lap. */
function laidPoorly(
  out: SettingOut,
  laps: readonly PoorLap[],
  shown: (mm: number) => string,
  back = false,
) {
  const { perpend } = out.spec.joints;
  const aligned = laps.filter(({ lap }) => lap < perpend);
  const least = carvedLap(out.spec);
  const short = aligned.length ? aligned : laps.filter(({ lap }) => lap < least);
  if (!short.length) return undefined;
  const brick = out.spec.unit.length + perpend;
  const groups = grouped(short, brick);
  const told = groups.slice(0, MOST_TOLD).map((group) => placeOf(group, shown));
  const more = groups.length - told.length;
  const places = `${told.join('; ')}${more > 0 ? phrase`; and at ${more} more ${more === 1 ? phrase`place` : phrase`places`}` : ''}`;
  const what = back
    ? backSaid(aligned.length > 0, shown(least))
    : poorSaid(aligned.length > 0, shown(least));
  return { what, places };
}

function poorSaid(aligned: boolean, least: string): string {
  return aligned
    ? phrase`Perpends stand over one another`
    : phrase`Perpends lap less than ${least}`;
}

function backSaid(aligned: boolean, least: string): string {
  return aligned
    ? phrase`In the back perpends stand over one another`
    : phrase`In the back perpends lap less than ${least}`;
}

/** Those of neighbouring courses that stand together are one place. */
function grouped(laps: readonly PoorLap[], brick: number): PoorLap[][] {
  const groups: PoorLap[][] = [];
  for (const lap of laps) {
    const near = (other: PoorLap) =>
      Math.abs(other.at - lap.at) < brick / 2 && lap.course - other.course <= 1;
    const group = groups.find((each) => each.some(near));
    if (group) group.push(lap);
    else groups.push([lap]);
  }
  return groups;
}

function placeOf(group: readonly PoorLap[], shown: (mm: number) => string): string {
  const first = group[0]!.course;
  const last = Math.max(...group.map(({ course }) => course)) + 1;
  return phrase`between courses ${first} and ${last}, ${shown(group[0]!.at)} from the left end`;
}
