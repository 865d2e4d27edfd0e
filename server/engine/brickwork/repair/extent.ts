/** How much is taken down and built again: a length and courses of a wall, courses of a pier. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import { down, fact, least, nearest, quotient, sum, type Term } from '../../working/term';
import { brickTerms } from '../count';
import { inMm } from '../lengths';
import { jointsIn } from '../masonry';
import { heightIn } from '../wall/height';
import type { PierSite } from './pier-site';
import type { Site } from './site';

export interface Extent {
  /** Along a wall, mm. */
  readonly length?: Term;
  /** Whole courses. */
  readonly courses?: Term;
}

/** What the line leaves out is as long, or as high, as what the repair is in; of a pier no more than stands. */
export function extentOf(line: LineFacts, site: Site): Extent {
  if (site.pier) return { courses: noMore(coursesSaid(line, site), site.pier) };
  const high = line.values.courses || line.values.height;
  return {
    length: line.values.length ? lengthSaid(line) : wallLength(site),
    courses: high ? coursesSaid(line, site) : wallCourses(site),
  };
}

function lengthSaid(line: LineFacts): Term {
  return inMm(line.term('length', phrase`length rebuilt`));
}

/** In courses, or as a height that is then so many of them. */
export function coursesSaid(line: LineFacts, site: Site): Term | undefined {
  if (line.values.courses)
    return down(phrase`courses`, 'courses', line.term('courses', phrase`courses rebuilt`));
  const key = line.values.height ? 'height' : 'length';
  const [, , side, , bed] = known(site) ? brickTerms(site.masonry) : [];
  if (!line.values[key] || !side || !bed) return undefined;
  const course = sum(phrase`height of a course`, 'mm', [side, bed]);
  const high = inMm(line.term(key, phrase`height rebuilt`));
  const one = fact(phrase`one`, exact(1), 'courses', line.origin);
  return nearest(
    phrase`courses`,
    'courses',
    quotient(phrase`courses`, 'courses', high, course),
    one,
  );
}

function known({ masonry }: Site): boolean {
  return masonry.brick.size !== undefined && jointsIn(masonry) !== undefined;
}

function noMore(courses: Term | undefined, { high, facts }: PierSite): Term | undefined {
  if (!courses || high === undefined) return courses;
  const stand = fact(
    phrase`courses that stand`,
    exact(high),
    'courses',
    facts.line('height')?.origin ?? facts.origin,
  );
  return least(phrase`courses`, 'courses', courses, stand);
}

function wallLength({ stands }: Site): Term | undefined {
  const line = stands.line('length');
  return line && inMm(line.term('length', phrase`length of the wall`));
}

function wallCourses({ stands, masonry }: Site): Term | undefined {
  return stands.line('height') && heightIn(masonry, stands, [])?.term;
}
