/** Openings of a wall: those that lie inside it and clear of each other. */
import { phrase } from '../../../../shared/phrase';
import type { Remark } from '../../findings/remark';
import { openingClipped, openingOutside, openingsClash, tooMany } from '../../findings/wall';
import { BlockFacts } from '../../resolve/env';
import { levelAt, type OpeningSpec } from '../../setting-out';
import type { Masonry } from '../masonry';
import type { Stepped } from './tops/steps';

export interface OpeningFacts {
  readonly facts: BlockFacts;
  readonly spec: OpeningSpec;
}

/** More than any wall has: every one is held against every other, and the work grows with the square. */
export const MOST_OPENINGS = 1000;

/** Openings that lie inside the wall and clear of each other; others are left out, with a remark. */
export function openingsOf(
  masonry: Masonry,
  length: number,
  stepped: Stepped,
  remarks: Remark[],
): OpeningFacts[] {
  const found: OpeningFacts[] = [];
  const lines = masonry.facts.lines('opening');
  if (lines.length > MOST_OPENINGS)
    remarks.push(tooMany(masonry.facts, phrase`openings`, MOST_OPENINGS));
  for (const line of lines.slice(0, MOST_OPENINGS)) {
    const facts = new BlockFacts(line.block, line.line, masonry.env);
    const spec = openingSpec(facts, length, stepped, remarks);
    if (!spec) continue;
    const other = found.find((o) => overlaps(o.spec, spec, stepped.courses));
    if (other) remarks.push(openingsClash(facts, other.facts));
    else found.push({ facts, spec });
  }
  return found;
}

function openingSpec(
  facts: BlockFacts,
  length: number,
  stepped: Stepped,
  remarks: Remark[],
): OpeningSpec | undefined {
  const from = facts.line('from');
  const distance = from?.number('distance');
  const width = facts.line('width')?.number('width');
  if (!from || distance === undefined || width === undefined) {
    remarks.push(
      openingOutside(
        facts,
        phrase`It is not known where it begins or how wide it is: it needs from and width.`,
      ),
    );
    return undefined;
  }
  const start = from.word('side') === 'right' ? length - distance - width : distance;
  if (start < 0 || start + width > length) {
    remarks.push(openingOutside(facts, phrase`It reaches beyond the wall.`));
    return undefined;
  }
  const sill = facts.line('sill')?.number('courses') ?? 0;
  const high = facts.line('height')?.number('courses');
  const { base, courses } = standingAt(start, stepped);
  const top = high === undefined || sill + high >= courses ? null : base + Math.floor(sill + high);
  if (sill >= courses) {
    remarks.push(openingOutside(facts, phrase`Its sill is above the top of the wall.`));
    return undefined;
  }
  if (high !== undefined && sill + high > courses)
    remarks.push(openingClipped(facts, courses, sill));
  return { name: facts.name, from: start, width, sill: base + Math.floor(sill), top };
}

/** Where the ground is at a place along the wall, and how many courses stand on it there. */
export function standingAt(x: number, { ground, top }: Pick<Stepped, 'ground' | 'top'>) {
  const base = levelAt(ground, x);
  return { base, courses: levelAt(top, x) - base };
}

function overlaps(a: OpeningSpec, b: OpeningSpec, courses: number): boolean {
  const across = a.from < b.from + b.width && b.from < a.from + a.width;
  return across && a.sill < (b.top ?? courses) && b.sill < (a.top ?? courses);
}
