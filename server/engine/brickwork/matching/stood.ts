/** What stands where a repair is, as a brick is compared with it: its size, a course of it, its joints. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import { fact, type Origin, sum, type Term } from '../../working/term';
import { limitsOf } from '../masonry';
import { extentOf } from '../repair/extent';
import type { Site } from '../repair/site';
import { measuredCourse } from '../standing/gauge';
import type { Sides, Stood } from './types';

/** What stands at a repair: by what was measured, else by the brick it is said to be. */
export function stoodIn(site: Site): Stood {
  const { facts, masonry, env } = site;
  const { brick, jointTerms } = masonry;
  const line = facts.line('measured');
  const measured = line?.sides('size') !== undefined;
  const size = measured ? sizeOf(line!, 'measured') : workSize(site);
  const course = courseOf(site, size);
  return {
    title: brick.title,
    origin: (measured ? line : brick.facts?.line('size'))?.at('size') ?? facts.origin,
    measured,
    sample: line?.values.of && line.term('of', phrase`bricks measured`),
    size,
    course,
    gauged: gaugeOf(site) !== undefined,
    perpend: jointTerms.perpend,
    beds: limitsOf(env, 'beds-accepted', jointTerms.perpend),
    perpends: limitsOf(env, 'joints-accepted', jointTerms.perpend),
    ...builtAgain(site),
  };
}

/** A brick that no line names is a guess: nothing is compared with it. */
function workSize({ stands, masonry }: Site): Sides<Term> | undefined {
  return stands.line('brick') && sizeOf(masonry.brick.facts?.line('size'), phrase`work size`);
}

function sizeOf(line: LineFacts | undefined, what: string): Sides<Term> | undefined {
  const [length, width, height] = line?.sides('size') ?? [];
  return length && width && height
    ? sidesAt({ length, width, height }, line!.at('size'), what)
    : undefined;
}

/** Sides in mm as facts of one line. */
export function sidesAt(
  { length, width, height }: Sides<number>,
  origin: Origin | undefined,
  note: string,
): Sides<Term> {
  const side = (label: string, mm: number) => fact(label, exact(mm), 'mm', origin, note);
  return {
    length: side(phrase`length of the brick`, length),
    width: side(phrase`width of the brick`, width),
    height: side(phrase`height of the brick`, height),
  };
}

/** As joints are found: by a gauge of the repair or of the wall, else of its brick, else its height and the joint. */
function courseOf(site: Site, size: Sides<Term> | undefined): Term | undefined {
  const own = site.stands.line('brick') && site.masonry.brick.facts?.line('gauge');
  const gauge = gaugeOf(site) ?? own;
  if (gauge) return measuredCourse(gauge);
  return (
    size && sum(phrase`height of a course`, 'mm', [size.height, site.masonry.jointTerms.perpend])
  );
}

function gaugeOf({ stands }: Site): LineFacts | undefined {
  return stands.line('gauge');
}

/** Nothing of so many bricks anywhere: they have no length and no height. */
function builtAgain(site: Site): Pick<Stood, 'courses' | 'length'> {
  const line = site.facts.line('rebuild');
  if (!line || line.values.bricks) return {};
  const { courses, length } = extentOf(line, site);
  return { courses, length };
}
