/** Mortar of the smaller mending: round single bricks, in raked joints, under bricks on edge. */
import { exact } from '../../../../shared/exact';
import type { LineFacts } from '../../resolve/env';
import { counted, missing, product, type Term } from '../../working/term';
import { brickTerms } from '../count';
import { inMm, inUnit, unitNames } from '../lengths';
import { jointsIn, type Masonry } from '../masonry';

/** Mm³ as litres with digits enough for a single brick; the brick’s sizes and its joints are what it is made of. */
function litres(label: string, mm3: number, note: string, masonry: Masonry): Term {
  const args = brickTerms(masonry);
  return counted(label, exact((mm3 / 1e6).toFixed(6)), 'l', { note, args });
}

/** A brick replaced is bedded on one bed and one upright joint, its own depth into the wall. */
export function aroundBricks(bricks: Term, masonry: Masonry): Term {
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const name = unitNames(masonry.env).volume;
  if (!unit || !joints)
    return missing('around new bricks', name, 'the joints are not known', masonry.facts.origin);
  const bed = (unit.length + joints.perpend) * joints.bed * unit.width;
  const upright = joints.perpend * unit.height * unit.width;
  const each = litres('mortar around one', bed + upright, 'one bed and one upright joint', masonry);
  return product('around new bricks', name, [bricks, inUnit(each, name)]);
}

/** Joints of the face, raked to a depth: the share of the face that is joint, times area, times depth. */
export function pointing(area: Term, line: LineFacts, masonry: Masonry): Term {
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const name = unitNames(masonry.env).volume;
  if (!unit || !joints) return missing('pointing', name, 'the joints are not known', line.origin);
  const depth = line.values.depth
    ? line.term('depth', 'raked')
    : missing('raked', 'mm', 'how deep the joints are raked is not known', line.origin);
  const module = (unit.length + joints.perpend) * (unit.height + joints.bed);
  const share = exact((1 - (unit.length * unit.height) / module).toFixed(6));
  const part = counted('share of the face that is joint', share, '', {
    note: 'of a stretcher face',
    args: brickTerms(masonry),
  });
  const metric = product('pointing', 'm3', [inUnit(area, 'm2'), part, inUnit(inMm(depth), 'm')]);
  return inUnit(metric, name);
}

/** Under and beside bricks on edge: each has its bed and one joint. Nothing when the brick is not known. */
export function underCoping(bricks: Term, masonry: Masonry): Term | undefined {
  const unit = masonry.brick.size;
  if (!unit) return undefined;
  const joint = masonry.jointTerms.perpend.value.toNumber();
  const name = unitNames(masonry.env).volume;
  const each = unit.length * (unit.width + unit.height) * joint;
  const one = litres('mortar to one', each, 'one joint and its bed', masonry);
  return product('bricks on edge', name, [bricks, inUnit(one, name)]);
}
