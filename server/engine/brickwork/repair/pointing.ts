/** Joints raked and pointed: how deep, and how much of a face is joint in the bond that it is laid in. */
import { exact } from '../../../../shared/exact';
import { defaultLine, type LineFacts } from '../../resolve/env';
import type { BondPattern, CoursePattern, Joints, UnitSize } from '../../setting-out';
import { counted, missing, named, product, type Term } from '../../working/term';
import { brickTerms } from '../count';
import { inMm, inUnit, unitNames } from '../lengths';
import { jointsIn } from '../masonry';
import { bondNamedIn } from '../wall/bond';
import { slot } from './mortar';
import type { Site } from './site';

/** As deep as the line says, else so many widths of the joint. */
export function depthOf(line: LineFacts, { env, masonry }: Site): Term {
  if (line.values.depth) return line.term('depth', 'raked');
  const times = defaultLine(env, 'rake-depth');
  const why = 'how deep the joints are raked is not known';
  if (!times) return missing('raked', 'mm', why, line.origin);
  return product('raked', 'mm', [
    times.term('times', 'in widths of the joint'),
    named('joint', masonry.jointTerms.perpend),
  ]);
}

/** Of a face: its area, the share of it that is joint, and how deep they are raked. */
export function inFace(area: Term, line: LineFacts, site: Site): Term {
  const { masonry, env } = site;
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const name = unitNames(env).volume;
  if (!unit || !joints) return missing('pointing', name, 'the joints are not known', line.origin);
  const bond = site.thickness && bondNamedIn(site.stands, site.thickness);
  const share = jointShare(unit, joints, bond);
  const part = counted('share of the face that is joint', exact(share.toFixed(12)), '', {
    note: bond ? `of a face in ${bond.name.replaceAll('-', ' ')}` : 'of a face of stretchers',
    args: brickTerms(masonry),
  });
  const depth = inUnit(inMm(depthOf(line, site)), 'm');
  return inUnit(product('pointing', 'm3', [inUnit(area, 'm2'), part, depth]), name);
}

/** Of so much length of joint, as wide as a bed. */
export function inJoints(length: Term, line: LineFacts, site: Site): Term {
  const { bed } = site.masonry.jointTerms;
  return slot('pointing', [length, named('joint', bed), inMm(depthOf(line, site))], site);
}

/** 0 to 1, over the whole repeat of a bond; of stretchers alone where there is none. */
export function jointShare(unit: UnitSize, joints: Joints, bond?: BondPattern): number {
  const courses: readonly CoursePattern[] = bond?.courses ?? [{ units: ['stretcher'] }];
  const bricks = courses.map(({ units }) => {
    const long = units.reduce((sum, u) => sum + (u === 'stretcher' ? unit.length : unit.width), 0);
    return long / (long + units.length * joints.perpend);
  });
  const along = bricks.reduce((sum, share) => sum + share, 0) / bricks.length;
  return 1 - (along * unit.height) / (unit.height + joints.bed);
}
