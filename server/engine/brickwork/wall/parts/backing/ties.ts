/** Ties between two skins, by the spacing that the library gives. */
import { phrase } from '../../../../../../shared/phrase';
import { defaultLine, type Env } from '../../../../resolve/env';
import { counted, fact, type Term } from '../../../../working/term';
import type { PieceNeed } from '../../../needs';
import { coursesBefore } from '../../meet/ties';
import type { WallPlan } from '../../spec';

export interface Ties {
  readonly need: PieceNeed;
  readonly count: Term;
}

/**
 * One tie to each rectangle of the spacing over the face, a part of one taken for a whole; and up each
 * reveal of an opening, and each edge of a movement joint (NHBC Standards, 6.1.18 table 10, from memory), one to each of the
 * closer distance. Nothing where no library gives a spacing.
 * `area` is the face, mm².
 */
export function tiesFor(area: number, plan: WallPlan, env: Env): Ties | undefined {
  const line = defaultLine(env, 'wall-ties');
  const sides = line?.sides('spacing');
  if (!line || !sides) return undefined;
  const [along, up] = sides as [number, number];
  const close = line.number('reveals') ?? 0;
  const overFace = Math.ceil(area / (along * up) - 1e-9);
  const atReveals = close > 0 ? revealTies(plan, close) : 0;
  const atJoints = close > 0 ? jointTies(plan, close) : 0;
  const more = [
    ...(atReveals ? [phrase`${atReveals} more up the reveals`] : []),
    ...(atJoints ? [phrase`${atJoints} more up the edges of movement joints`] : []),
  ];
  const count = counted(phrase`Ties`, overFace + atReveals + atJoints, 'pieces', {
    note: [phrase`${overFace} over the face`, ...more].join(', '),
    args: [
      fact(phrase`apart along the wall`, along, 'mm', line.at('spacing')),
      fact(phrase`apart in height`, up, 'mm', line.at('spacing')),
      ...(close ? [line.term('reveals', phrase`apart up a reveal`)] : []),
    ],
  });
  const material = line.word('material');
  return { count, need: { material, count, origin: line.at('material') } };
}

function revealTies({ spec }: WallPlan, close: number): number {
  const gauge = spec.unit.height + spec.joints.bed;
  return spec.openings.reduce((sum, { sill, top }) => {
    const high = ((top ?? spec.courses) - sill) * gauge;
    return sum + 2 * Math.ceil(high / close - 1e-9);
  }, 0);
}

/** Skins are free to move at both edges of a joint, as they are at a reveal. */
function jointTies(plan: WallPlan, close: number): number {
  const gauge = plan.spec.unit.height + plan.spec.joints.bed;
  return plan.movement.reduce((sum, { from }) => {
    return sum + 2 * Math.ceil((coursesBefore(plan, from) * gauge) / close - 1e-9);
  }, 0);
}
