/** Walls that run into the face of another. */
import { type Env, factsOf, type LineFacts } from '../../../resolve/env';
import type { Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { type LaidAlone, wallAlone } from './alone';
import { claimsOf } from './ends';
import { levelCourses } from './level';
import type { Neighbours } from './neighbours';

export interface Tee {
  readonly side: Side;
  readonly line: LineFacts;
  readonly other: SourceBlock;
  /** The other wall, as it would be laid alone. */
  readonly with: LaidAlone;
  /** Mm from the other wall's left end to the near side of this one. */
  readonly distance: number;
  /** Its courses run into the other wall in turn; else it is tied. */
  readonly bonded: boolean;
  /** What is wrong with where it is put, in a sentence. */
  readonly off?: string;
  /** What is wrong is that it meets that wall elsewhere too: no other place would do. */
  readonly twice?: boolean;
  /** Why it is not bonded though its line says so, in a sentence. */
  readonly unbonded?: string;
}

export function teesOf(
  block: SourceBlock,
  alone: LaidAlone,
  neighbours: Neighbours,
  env: Env,
): Tee[] {
  return claimsOf(block).flatMap(({ kind, side, wall, bonded }) => {
    const other = kind === 'tee' ? neighbours.named(wall) : undefined;
    const line = factsOf(block, env)!.line(side)!;
    if (!other) return [];
    const laid = wallAlone(other, env).laid;
    if (!laid) return [];
    const distance = line.number('distance') ?? 0;
    const twice = other === block ? undefined : metAlready(block, other, side);
    const off =
      twice ??
      (other === block ? 'A wall does not run into itself.' : offPlace(distance, alone, laid));
    const unbonded = bonded && !off ? whyNot(alone, laid) : undefined;
    const tee = { side, line, other, with: laid, distance };
    return [
      {
        ...tee,
        bonded: bonded && !off && !unbonded,
        ...(off ? { off, twice: twice !== undefined } : {}),
        ...(unbonded ? { unbonded } : {}),
      },
    ];
  });
}

/** Straight walls at right angles meet once: one end of one, or a corner of both. */
function metAlready(block: SourceBlock, other: SourceBlock, side: Side): string | undefined {
  if (claimsOf(other).some((c) => c.kind === 'tee' && c.wall === block.name))
    return `The wall ${other.name} is said to run into this one.`;
  const mine = claimsOf(block).find((c) => c.side !== side && c.wall === other.name);
  // Of two like lines the first holds.
  if (!mine || (mine.kind === 'tee' && side === 'left')) return undefined;
  return `The ${mine.side} end of this wall meets ${other.name} already.`;
}

/** It has to come against brickwork, all of its thickness. */
function offPlace(distance: number, { out }: LaidAlone, { plan }: LaidAlone): string | undefined {
  const to = distance + out.thickness;
  if (!(distance >= 0 && to <= plan.spec.length + 0.5)) return 'There is no wall there.';
  const meets = (gap: { from: number; width: number }) =>
    distance < gap.from + gap.width && gap.from < to;
  const opening = plan.spec.openings.find(meets);
  if (opening) return `The opening ${opening.name} is there.`;
  return plan.movement.some(meets) ? 'A movement joint is there.' : undefined;
}

function whyNot({ out }: LaidAlone, { plan, out: other }: LaidAlone): string | undefined {
  if (plan.spec.thickness !== 1) return 'Courses are run only into a half-brick wall.';
  if (!levelCourses(out, other)) return 'The courses of the two are not level.';
  if (out.spec.courses > plan.spec.courses) return 'This wall is the higher one.';
  return plan.spec.piers.length ? 'The other wall has piers.' : undefined;
}
