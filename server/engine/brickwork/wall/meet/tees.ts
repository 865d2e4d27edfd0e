/** Walls that run into the face of another. */

import { phrase } from '../../../../../shared/phrase';
import { endSaid } from '../../../kinds-said';
import { type Env, factsOf, type LineFacts } from '../../../resolve/env';
import type { Entry, Parity, Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { type LaidAlone, wallAlone } from './alone';
import { type Claim, claimsOf } from './ends';
import { bondingInto } from './into-thick';
import type { Neighbours } from './neighbours';
import { noWay } from './no-way';
import { type TeeLevels, teeLevels } from './tee-levels';
import { type Among, whyNot } from './unbonded';

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
  /** Where the other is a brick thick or more: how far its courses run in. */
  readonly entry?: Entry;
  /** With it, where the wall makes no corner: the course of its bond that it is begun with. */
  readonly begun?: Parity;
  readonly levels: TeeLevels;
  /** What is wrong with where it is put, in a sentence. */
  readonly off?: string;
  /** What is wrong is that it meets that wall elsewhere too: no other place would do. */
  readonly twice?: boolean;
  /** Why it is not bonded though its line says so, in a sentence. */
  readonly unbonded?: string;
  /** The nearest place at which it could be, mm; it costs something to find. */
  readonly elsewhere?: () => number | undefined;
}

export function teesOf(
  block: SourceBlock,
  alone: LaidAlone,
  neighbours: Neighbours,
  env: Env,
): Tee[] {
  const claims = claimsOf(block).filter(({ kind }) => kind === 'tee');
  if (!claims.length) return [];
  const tees = claims.flatMap((claim) => teeAt(claim, block, alone, neighbours, env) ?? []);
  const thick = tees.filter((t) => t.bonded && t.with.plan.spec.thickness > 1);
  if (!thick.length) return tees;
  const at = { block, alone, neighbours, env };
  const { entries, begun } = bondingInto(thick, tees, at);
  return tees.map((tee): Tee => {
    if (!thick.includes(tee)) return tee;
    const entry = entries[tee.side];
    if (entry) return { ...tee, entry, begun };
    return {
      ...tee,
      bonded: false,
      unbonded: noWay(tee, alone),
      elsewhere: () => nearestTo(tee, tees, at),
    };
  });
}

/** Quarter bricks to either side of where it is put that are looked at. */
const NEAR = 4;

/** Where the bricks of the other wall would let it be bonded. */
function nearestTo(tee: Tee, all: readonly Tee[], at: Among): number | undefined {
  const { side, with: other, distance } = tee;
  const quarter = (other.out.spec.unit.length + other.out.spec.joints.perpend) / 4;
  const start = other.out.spec.left === 'stopped' ? 0 : other.out.spec.joints.perpend;
  const nearest = Math.round((distance - start) / quarter);
  const places = [0, ...Array.from({ length: NEAR }, (_, i) => [i + 1, -i - 1]).flat()];
  return places
    .map((n) => start + (nearest + n) * quarter)
    .find((to) => {
      if (offPlace(to, at.alone, other)) return false;
      const levels = teeLevels(at.alone.plan, side, other.plan, to, at.alone.out.thickness);
      const moved = { ...tee, distance: to, levels };
      const others = all.filter((t) => t !== tee);
      return !whyNot(moved, at) && bondingInto([moved], others, at).entries[side] !== undefined;
    });
}

function teeAt(
  { side, wall, bonded }: Claim,
  block: SourceBlock,
  alone: LaidAlone,
  neighbours: Neighbours,
  env: Env,
): Tee | undefined {
  const other = neighbours.named(wall);
  const laid = other && wallAlone(other, env).laid;
  if (!other || !laid) return undefined;
  const line = factsOf(block, env)!.line(side)!;
  const distance = line.number('distance') ?? 0;
  const twice = other === block ? undefined : metAlready(block, other, side);
  const off =
    twice ??
    (other === block ? phrase`A wall does not run into itself.` : offPlace(distance, alone, laid));
  const levels = teeLevels(alone.plan, side, laid.plan, distance, alone.out.thickness);
  const tee = { side, line, other, with: laid, distance, levels };
  const unbonded = bonded && !off ? whyNot(tee, { block, alone, neighbours, env }) : undefined;
  return {
    ...tee,
    bonded: bonded && !off && !unbonded,
    ...(off ? { off, twice: twice !== undefined } : {}),
    ...(unbonded ? { unbonded } : {}),
  };
}

/** Straight walls at right angles meet once: one end of one, or a corner of both. */
function metAlready(block: SourceBlock, other: SourceBlock, side: Side): string | undefined {
  if (claimsOf(other).some((c) => c.kind === 'tee' && c.wall === block.name))
    return phrase`The wall ${other.name} is said to run into this one.`;
  const mine = claimsOf(block).find((c) => c.side !== side && c.wall === other.name);
  // Of two like lines the first holds.
  if (!mine || (mine.kind === 'tee' && side === 'left')) return undefined;
  return phrase`The ${endSaid(mine.side)} of this wall meets ${other.name} already.`;
}

/** It has to come against brickwork, all of its thickness. */
function offPlace(distance: number, { out }: LaidAlone, { plan }: LaidAlone): string | undefined {
  const to = distance + out.thickness;
  if (!(distance >= 0 && to <= plan.spec.length + 0.5)) return phrase`There is no wall there.`;
  const meets = (gap: { from: number; width: number }) =>
    distance < gap.from + gap.width && gap.from < to;
  const opening = plan.spec.openings.find(meets);
  if (opening) return phrase`The opening ${opening.name} is there.`;
  return plan.movement.some(meets) ? phrase`A movement joint is there.` : undefined;
}
