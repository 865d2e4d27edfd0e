/** Openings and piers that cannot stand where the file puts them. */

import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import type { BlockFacts } from '../resolve/env';
import { coursesText, coursesTold } from './courses';
import type { Remark } from './remark';

export function openingOutside(facts: BlockFacts, why: string): Remark {
  const origin = facts.line('from')?.origin ?? facts.line('width')?.origin ?? facts.origin;
  const message = phrase`The opening${facts.name && ` ${facts.name}`} is left out. ${why}`;
  return { code: 'opening-outside', severity: 'error', origin, message };
}

export function openingClipped(facts: BlockFacts, courses: number, sill: number): Remark {
  const line = facts.line('height')!;
  const left = Math.max(1, Math.floor(courses - sill));
  const message = phrase`The wall is ${coursesTold(courses)} high, so that this opening ends at its top, ${coursesTold(left)} above the sill.`;
  const ways = [
    {
      title: phrase`Make it ${coursesTold(left)} high`,
      edits: [{ ...line.at('courses'), text: coursesText(left) }],
    },
  ];
  return { code: 'opening-clipped', severity: 'warning', origin: line.origin, message, ways };
}

export function openingsClash(facts: BlockFacts, other: BlockFacts): Remark {
  return {
    code: 'openings-clash',
    severity: 'error',
    origin: facts.line('from')?.origin ?? facts.origin,
    message: phrase`The opening ${facts.name} lies across the opening ${other.name} and is left out. Move one of them.`,
    related: [{ origin: other.origin, message: phrase`The opening ${other.name}` }],
  };
}

export function pierHomeless(facts: BlockFacts, openings: readonly string[]): Remark {
  const places = [
    phrase`at left`,
    phrase`at right`,
    ...openings.flatMap((o) => [phrase`at ${o} left`, phrase`at ${o} right`]),
  ];
  const line = facts.line('at');
  const why = line
    ? phrase`Where it should stand is no place in this wall, or there is no room for it there.`
    : phrase`It is not said where it stands.`;
  const message = phrase`The pier ${facts.name} is left out. ${why} It can be ${listed(places)}, or so far from an end: at left 2.4 m.`;
  return {
    code: 'pier-homeless',
    severity: 'error',
    origin: line?.origin ?? facts.origin,
    message,
  };
}

export function standInEachOther(facts: BlockFacts, a: string, b: string): Remark {
  const message = phrase`${a} and ${b} stand in each other’s place. The counts hold neither twice, but one of them has to move.`;
  return { code: 'place-taken', severity: 'error', origin: facts.origin, message };
}

export function tooMany(facts: BlockFacts, what: string, most: number): Remark {
  const message = phrase`No wall has more than ${most} ${what}; those after the first ${most} are left out.`;
  return { code: 'too-many', severity: 'error', origin: facts.origin, message };
}
