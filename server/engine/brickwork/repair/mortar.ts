/** Mortar of mending, from the sizes of the brick and its joints. All in the unit of volume of the job. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { bricksNeeded, tallyPier, type UnitSize } from '../../setting-out';
import { counted, missing, product, quotient, share, sum, type Term } from '../../working/term';
import { brickTerms } from '../count';
import { inUnit, unitNames } from '../lengths';
import { jointsIn, kerfOf, type Masonry, thicknessOf } from '../masonry';
import type { Site } from './site';

/** Mm³ as litres with digits enough for a single brick; the brick’s sizes and its joints are what it is made of. */
function litres(label: string, mm3: number, note: string, masonry: Masonry): Term {
  const args = brickTerms(masonry);
  return counted(label, exact((mm3 / 1e6).toFixed(12)), 'l', { note, args });
}

/** So much to each brick; what is not known of the joints is a gap. */
function toEach(
  label: string,
  bricks: Term,
  site: Site,
  of: (unit: UnitSize, bed: number, perpend: number) => number,
  note: string,
): Term {
  const { masonry, env } = site;
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const name = unitNames(env).volume;
  if (!unit || !joints)
    return missing(label, name, phrase`the joints are not known`, masonry.facts.origin);
  const each = litres(phrase`mortar to one`, of(unit, joints.bed, joints.perpend), note, masonry);
  return product(label, name, [bricks, inUnit(each, name)]);
}

/** Bricks laid anywhere in the work: their part of its joints, and their frogs, which fill. */
export function bedded(label: string, bricks: Term, site: Site): Term {
  const { masonry, env } = site;
  const note = phrase`its part of all the joints of the work`;
  const joints = toEach(
    label,
    bricks,
    site,
    (unit, bed, perpend) => partOf(site, unit, bed, perpend),
    note,
  );
  const { frog, size } = masonry.brick;
  if (!size || (frog.value.isZero() && !frog.gaps.length)) return joints;
  const name = unitNames(env).volume;
  const solid = litres(
    phrase`volume of a brick`,
    size.length * size.width * size.height,
    phrase`its outside`,
    masonry,
  );
  const frogs = share(
    phrase`in the frogs`,
    name,
    frog,
    product(phrase`bricks`, name, [bricks, inUnit(solid, name)]),
  );
  return sum(label, name, [joints, frogs]);
}

/** Mm³ of joints to a brick: of a pier over its whole plan, of a wall through its thickness. */
function partOf(
  { masonry, pier, thickness = 1 }: Site,
  unit: UnitSize,
  bed: number,
  perpend: number,
): number {
  if (!pier) {
    const through = thicknessOf(thickness, unit, perpend) / thickness;
    return (unit.length + perpend) * (unit.height + bed) * through - volumeOf(unit);
  }
  const range = { from: 0, to: pier.spec.plans.length };
  const all = tallyPier(pier.spec, unit, { bed, perpend }, range);
  const { total } = bricksNeeded(all, unit, perpend, kerfOf(masonry.env));
  return total ? (all.grossVolume - all.brickVolume) / total : 0;
}

export function volumeOf({ length, width, height }: UnitSize): number {
  return length * width * height;
}

/** A brick replaced is bedded on all sides, its own depth into the wall, and against what stands behind it. */
export function aroundBricks(bricks: Term, site: Site): Term {
  const behind = (site.thickness ?? 1) > 1 || site.pier;
  const note = phrase`all four joints of its face${behind ? phrase`, and the one behind it` : ''}`;
  const around = ({ length, width, height }: UnitSize, bed: number, perpend: number) =>
    ((length + 2 * perpend) * (height + 2 * bed) - length * height) * width +
    (behind ? length * height * perpend : 0);
  return toEach(phrase`around new bricks`, bricks, site, around, note);
}

/** Under and beside bricks on edge: each has its bed and one joint. */
export function underCoping(bricks: Term, site: Site): Term {
  const each = ({ length, width, height }: UnitSize, _: number, joint: number) =>
    length * (width + height) * joint;
  return toEach(phrase`bricks on edge`, bricks, site, each, phrase`one joint and its bed`);
}

/** A length times a width and a depth, each said in any unit of length. */
export function slot(label: string, sides: readonly Term[], { env }: Site): Term {
  const metric = product(
    label,
    'm3',
    sides.map((side) => inUnit(side, 'm')),
  );
  return inUnit(metric, unitNames(env).volume);
}

/** How many of a length go into another. */
export function into(label: string, unit: string, length: Term, each: Term): Term {
  return quotient(label, unit, inUnit(length, 'mm'), inUnit(each, 'mm'));
}
