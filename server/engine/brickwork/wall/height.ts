/** A height said in courses, or as a length that is tried in whole courses. */

import { phrase } from '../../../../shared/phrase';
import { decisionFor } from '../../findings/fit/decision';
import { heightUnfit } from '../../findings/fit/fit-height';
import type { Decidable } from '../../findings/fit/fit-idle';
import type { Remark } from '../../findings/remark';
import type { BlockFacts } from '../../resolve/env';
import { type Fit, fitHeight, type JointWay } from '../../setting-out';
import { fact, type Term } from '../../working/term';
import { jointsIn, limitsOf, type Masonry, waysIn } from '../masonry';

export interface Height {
  readonly courses: number;
  readonly term: Term;
  /** When it was said as a length: whether it works in courses. */
  readonly fit?: Fit;
  /** The bed that makes it work, mm: the usual one unless the height asks for another. */
  readonly bed: number;
}

/** How high it is: courses, and the bed joint that makes them, mm; nothing where it is not known, or is no course. */
export function heightIn(
  masonry: Masonry,
  facts: BlockFacts,
  remarks: Remark[],
): Height | undefined {
  const line = facts.line('height');
  const joints = jointsIn(masonry);
  const unit = masonry.brick.size;
  if (!line || !joints || !unit) return undefined;
  const said = line.number('courses');
  if (said !== undefined) {
    const courses = Math.floor(said);
    const term = fact(phrase`courses`, courses, 'courses', line.at('courses'));
    return courses >= 1 ? { courses, term, bed: joints.bed } : undefined;
  }
  const high = line.number('height');
  if (high === undefined) return undefined;
  const fit = fitHeight(
    high,
    unit.height,
    limitsOf(masonry.env, 'beds-accepted', masonry.jointTerms.bed),
    waysIn(masonry.env, 'ways'),
  );
  const chosen = decidedJoint(fit, facts);
  const courses = chosen?.wholes ?? fit.pieces.wholes;
  if (courses < 1) return undefined;
  const remark = fit.works === 'exactly' ? undefined : heightUnfit(facts, line, fit, masonry);
  if (remark) remarks.push(remark);
  const note =
    fit.works === 'no'
      ? phrase`the nearest whole number of courses`
      : phrase`whole courses in the height`;
  const term = fact(phrase`courses`, courses, 'courses', line.at('height'), note);
  const bed = chosen?.joint ?? (fit.works === 'joints' ? fit.joint! : joints.bed);
  return { courses, term, fit, bed };
}

/** Beds opened or closed because a `fit height joints` line says so. */
function decidedJoint(fit: Fit, facts: BlockFacts) {
  if (decisionFor(facts, 'height')?.how !== 'joints') return undefined;
  return fit.ways.find((w): w is JointWay => w.kind === 'joints');
}

/** A height as a run that a `fit` line may decide for: only one said as a length has anything to decide. */
export function heightRun({ fit }: Height): Decidable {
  return { name: 'height', open: fit !== undefined && fit.works !== 'exactly' };
}
