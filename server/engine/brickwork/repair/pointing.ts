/** Joints raked and pointed: how deep, and how much of a face is joint in the bond that it is laid in. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
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
function depthOf(line: LineFacts, { env, masonry }: Site): Term {
  if (line.values.depth) return line.term('depth', phrase`raked`);
  const times = defaultLine(env, 'rake-depth');
  const why = phrase`how deep the joints are raked is not known`;
  if (!times) return missing(phrase`raked`, 'mm', why, line.origin);
  return product(phrase`raked`, 'mm', [
    times.term('times', phrase`in widths of the joint`),
    named(phrase`joint`, masonry.jointTerms.perpend),
  ]);
}

/** Of a face: its area, the share of it that is joint, and how deep they are raked. */
export function inFace(area: Term, line: LineFacts, site: Site): Term {
  const { masonry, env } = site;
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const name = unitNames(env).volume;
  if (!unit || !joints)
    return missing(phrase`pointing`, name, phrase`the joints are not known`, line.origin);
  const bond = site.thickness && bondNamedIn(site.stands, site.thickness);
  const share = jointShare(unit, joints, bond);
  const part = counted(phrase`share of the face that is joint`, exact(share.toFixed(12)), '', {
    note: bond
      ? phrase`of a face in ${bond.name.replaceAll('-', ' ')}`
      : phrase`of a face of stretchers`,
    args: brickTerms(masonry),
  });
  const depth = inUnit(inMm(depthOf(line, site)), 'm');
  return inUnit(product(phrase`pointing`, 'm3', [inUnit(area, 'm2'), part, depth]), name);
}

/** Of so much length of joint, as wide as a bed. */
export function inJoints(length: Term, line: LineFacts, site: Site): Term {
  const { bed } = site.masonry.jointTerms;
  return slot(
    phrase`pointing`,
    [length, named(phrase`joint`, bed), inMm(depthOf(line, site))],
    site,
  );
}

/** 0 to 1, over the whole repeat of a bond; of stretchers alone where there is none. */
function jointShare(unit: UnitSize, joints: Joints, bond?: BondPattern): number {
  const courses: readonly CoursePattern[] = bond?.courses ?? [{ units: ['stretcher'] }];
  const bricks = courses.map(({ units }) => {
    const long = units.reduce((sum, u) => sum + (u === 'stretcher' ? unit.length : unit.width), 0);
    return long / (long + units.length * joints.perpend);
  });
  const along = bricks.reduce((sum, share) => sum + share, 0) / bricks.length;
  return 1 - (along * unit.height) / (unit.height + joints.bed);
}
