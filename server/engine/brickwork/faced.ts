/** Bricks as area and as volume, for outputs that are said in those. */

import { exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { counted, product, type Term } from '../working/term';
import { brickTerms } from './count';
import { inUnit, unitNames } from './lengths';
import { jointsIn, type Masonry } from './masonry';

/**
 * The face that so many bricks make, each with one joint and one bed and as many behind it as the work is half bricks
 * thick; and that face as deep as the work. Nothing where the joints are not known.
 */
export function facedBy(bricks: Term, leaves: number, masonry: Masonry): readonly Term[] {
  const { size } = masonry.brick;
  const joints = jointsIn(masonry);
  if (bricks.unit !== 'bricks' || !size || !joints) return [];
  const face = ((size.length + joints.perpend) * (size.height + joints.bed)) / leaves;
  const depth = leaves * size.width + (leaves - 1) * joints.perpend;
  const { area, volume } = unitNames(masonry.env);
  return [
    made(phrase`face of the work`, area, bricks, oneOf(face / 1e6, 'm2', masonry)),
    made('brickwork', volume, bricks, oneOf((face * depth) / 1e6, 'l', masonry)),
  ];
}

function oneOf(amount: number, unit: string, masonry: Masonry): Term {
  const note = phrase`with its joint and its bed`;
  return counted(phrase`of one`, exact(amount.toFixed(12)), unit, {
    note,
    args: brickTerms(masonry),
  });
}

function made(label: string, unit: string, bricks: Term, each: Term): Term {
  return product(label, unit, [bricks, inUnit(each, unit)]);
}
