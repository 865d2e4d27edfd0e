/** Whether a brick keeps the gauge of standing work: the bed joint it needs, at its own size and at the ends of its tolerance. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { Env, LineFacts } from '../../resolve/env';
import { gaugeJoint, type JointLimits } from '../../setting-out';
import { difference, fact, product, quotient, sum, type Term } from '../../working/term';
import { type Brick, type Mix, usualBed } from '../goods';
import { inMm, inRule } from '../lengths';
import type { Figure } from '../needs';
import { type Tolerance, toleranceOf } from './tolerance';

export interface Standing {
  /** The gauge line that was measured. */
  readonly line: LineFacts;
  readonly brick: Brick;
  /** Height of a course as it stands, mm. */
  readonly course: number;
  /** Bed joint that the brick needs, mm. */
  readonly joint: Term;
  /** The same for the largest and the smallest that its tolerance allows. */
  readonly within?: { readonly tolerance: Tolerance; readonly least: Term; readonly most: Term };
  /** Mm that so many courses at its usual bed stand over the standing ones; less than nothing is under. */
  readonly drift?: { readonly courses: number; readonly term: Term; readonly bed: Term };
  readonly limits: JointLimits;
}

/** `courses` that are built beside the standing ones. Nothing when the size of the brick is not known. */
export function standingBeside(
  line: LineFacts,
  brick: Brick,
  mix: Mix,
  courses: Term | undefined,
  limits: JointLimits,
  env: Env,
): Standing | undefined {
  if (!brick.size) return undefined;
  const course = measuredCourse(line);
  const beds = bedsOf(course, brick, brick.size.height, usualBed(brick, mix), courses, env);
  return { line, brick, course: course.value.toNumber(), limits, ...beds };
}

/** Height of a course by a gauge that was measured, mm. */
export function measuredCourse(line: LineFacts): Term {
  const over = inMm(line.term('height', phrase`height of the courses`));
  return quotient(phrase`height of a course`, 'mm', over, line.term('courses', phrase`courses`));
}

/** What a brick so high comes to beside courses so high; `usual` is the bed it is laid at elsewhere. */
export function bedsOf(
  course: Term,
  brick: Brick,
  height: number,
  usual: Term | undefined,
  courses: Term | undefined,
  env: Env,
): Pick<Standing, 'joint' | 'within' | 'drift'> {
  const high = fact(
    phrase`height of the brick`,
    exact(height),
    'mm',
    brick.facts?.line('size')?.at('size'),
  );
  const joint = difference(phrase`Bed joint the new brick needs`, 'mm', course, high);
  const tolerance = toleranceOf(brick, env);
  const within = tolerance && {
    tolerance,
    least: difference(
      phrase`Bed joint of the largest bricks`,
      'mm',
      course,
      sum(phrase`largest height`, 'mm', [high, tolerance.height]),
    ),
    most: difference(
      phrase`Bed joint of the smallest bricks`,
      'mm',
      course,
      difference(phrase`smallest height`, 'mm', high, tolerance.height),
    ),
  };
  const drift = courses && driftOf(course, high, usual, courses);
  return { joint, within, drift };
}

function driftOf(course: Term, high: Term, bed: Term | undefined, courses: Term) {
  if (!bed || bed.gaps.length || courses.gaps.length) return undefined;
  const own = sum(phrase`a course of the new brick`, 'mm', [high, bed]);
  const each = difference(phrase`out in a course`, 'mm', own, course);
  const term = product(
    phrase`Out of the standing courses`,
    'mm',
    [each, courses],
    phrase`at its usual bed`,
  );
  return { courses: courses.value.toNumber(), term, bed };
}

/** What a reader may ask for. */
export function standingFigures({ line, joint, within, drift }: Standing): Figure[] {
  const figures = [
    { key: 'joint-needed', term: joint },
    ...(within
      ? [
          { key: 'joint-least', term: within.least },
          { key: 'joint-most', term: within.most },
        ]
      : []),
    ...(drift ? [{ key: 'drift', term: drift.term }] : []),
  ];
  return figures.map(({ key, term }) => ({ key, term: inRule(line.env, term) }));
}

/** Whether a bed joint of so many mm is one that anyone would accept. */
export function isAccepted(mm: number, { least, most }: JointLimits): boolean {
  return mm >= least - 1e-6 && mm <= most + 1e-6;
}

/** The bed joint that a brick so high needs for a course so high, mm. */
export function bedFor(course: number, height: number): number {
  return gaugeJoint(1, course, height)!;
}
