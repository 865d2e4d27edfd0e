/** What a wall is laid from where it meets others or is parted, each with its line. */

import { phrase } from '../../../../../shared/phrase';
import { endSaid } from '../../../kinds-said';
import { type Env, factsOf } from '../../../resolve/env';
import type { Term } from '../../../working/term';
import type { MovementJoint } from './movement';
import type { Quoin } from './quoins';

/** The thickness of each wall that it makes a corner with. */
export function cornerTerms(quoins: readonly Quoin[], env: Env): Term[] {
  return quoins.flatMap(({ other, way }) => {
    const line = way && factsOf(other, env)!.orDefault('thick');
    return line ? [line.term('thick', phrase`thickness of ${other.name}`)] : [];
  });
}

/** Where its movement joints are, as its lines say. */
export function movementTerms(joints: readonly MovementJoint[]): Term[] {
  const lines = [...new Set(joints.map((joint) => joint.line))];
  return lines.map((line) => {
    if (line.values.every) return line.term('every', phrase`a movement joint every`);
    return line.term('distance', phrase`movement joint, from the ${endSaid(line.word('side'))}`);
  });
}
