/** How the courses of a pier are laid, in words for a working. */
import { phrase } from '../../../../shared/phrase';
import type { CoreFill, PieceCount, PierLaid, PierPlan } from '../../setting-out';
import { pieceNamed } from '../pieces';
import { countsOf } from './core';
import type { Plan } from './plan';

/** Course by course, then what no face shows of them. */
export function planText(spec: PierPlan, { laid, core }: Plan): string[] {
  return [...coursesText(spec), ...coreText(laid, core)];
}

export function coursesText({ plans }: PierPlan): string[] {
  return plans.map(
    (plan, i) => phrase`Course ${String.fromCharCode(65 + (i % 26))}: ${piecesText(plan)}`,
  );
}

function piecesText(plan: readonly PieceCount[]): string {
  return plan.map((p) => `${p.count} ${pieceNamed(p.piece, p.count)}`).join(', ');
}

/** Halves and offcuts go where no face shows them before a brick is cut for them. */
function coreText(laid: PierLaid | undefined, core: CoreFill | undefined): string[] {
  if (!laid) return [];
  if (core === 'hollow') return [phrase`Inside: left hollow, no bricks`];
  if (core === 'concrete') return [phrase`Inside: concrete, no bricks`];
  const hidden = countsOf({ ...laid.courses[0]!, pieces: laid.courses[0]!.hidden });
  if (!hidden.length) return [];
  if (core === 'bats') return [phrase`Inside: bats to hand for ${piecesText(hidden)}, not counted`];
  const { coreHalves } = laid;
  const room = coreHalves
    ? phrase`: halves go there first, up to ${coreHalves} in each course`
    : '';
  return [phrase`No face shows ${piecesText(hidden)} of each course${room}`];
}
