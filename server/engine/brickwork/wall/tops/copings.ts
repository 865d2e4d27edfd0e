/** Where the coping of a wall runs: along its top, between whatever interrupts it. */

import type { LineFacts } from '../../../resolve/env';
import { ownMix } from '../../apart';
import type { Masonry } from '../../masonry';
import type { CopingRun } from '../../tops/coping';
import { bricksMade, type CopingMade, precastMade } from '../../tops/coping-made';
import { type Creasing, creasingHeight, creasingOf } from '../../tops/creasing';
import type { PierFacts } from '../piers/placed';
import type { WallPlan } from '../spec';
import type { CopingCorners } from './coping-corners';
import { overAll } from './top-faces';

/** What the wall’s coping line lays along its top. */
export function madeFor(
  line: LineFacts,
  masonry: Masonry,
  { spec }: WallPlan,
): CopingMade | undefined {
  switch (line.word('kind')) {
    case 'brick-on-edge':
    case 'tiles':
      return bricksMade(line, spec.thickness, masonry, 'edge');
    case 'brick-on-end':
      return bricksMade(line, spec.thickness, masonry, 'end');
    case 'precast':
      return precastMade(line);
    default:
      return undefined;
  }
}

/** The tiles under the coping of a wall, where it has them. */
export function creasingIn(masonry: Masonry, plan: WallPlan): Creasing | undefined {
  const line = masonry.facts.line('coping');
  if (line?.word('kind') !== 'tiles') return undefined;
  return creasingOf(line, overAll(masonry, plan), masonry);
}

/** The wall’s own runs: at each level of its top, between what interrupts it there. */
export function wallRuns(
  masonry: Masonry,
  plan: WallPlan,
  corners: CopingCorners = {},
): CopingRun[] {
  const line = masonry.facts.line('coping');
  const made = line && madeFor(line, masonry, plan);
  if (!line || !made) return [];
  const creasing = creasingIn(masonry, plan);
  const over = creasing && creasingHeight(creasing, plan.spec.joints.bed);
  const stretches = plan.top.flatMap((_, i) => stretchesAt(i, plan, corners));
  return stretches.map(({ from, to, joints, level }, i) => ({
    from,
    to,
    endJoints: Math.min(2, joints) as 0 | 1 | 2,
    on: level,
    ...(over ? { over } : {}),
    made,
    mix: ownMix(line, masonry),
    origin: line.origin,
    text: {
      name: stretches.length > 1 ? `coping-${i + 1}` : 'coping',
      home: masonry.facts,
      pieces: made.pieces,
    },
  }));
}

interface Stretch {
  from: number;
  to: number;
  /** Joints at its two ends together. */
  joints: number;
  level: number;
}

/**
 * Along one level of the top, piers interrupt the coping, unless they are as high and have no top of their own, and so do
 * movement joints, which go through everything that could hold both sides together (BDA, Designing for movement in brickwork).
 */
function stretchesAt(index: number, plan: WallPlan, corners: CopingCorners): Stretch[] {
  const { level } = plan.top[index]!;
  const stretches: Stretch[] = [];
  const left = endAt(index, -1, plan, corners);
  const right = endAt(index, 1, plan, corners);
  const to = right.at;
  let { at, joint } = left;
  for (const stop of [...stopsAt(level, plan), { from: to, to, joint: right.joint }]) {
    const end = Math.min(stop.from, to);
    if (end > at) stretches.push({ from: at, to: end, joints: joint + stop.joint, level });
    if (stop.to > at) {
      at = stop.to;
      joint = stop.joint;
    }
    if (at >= to) break;
  }
  return stretches;
}

/**
 * Where a level’s coping ends, and whether with a joint: it butts against a higher part of the wall, against what the
 * wall butts against, or at a corner against the other wall or its coping; none at a free end.
 */
function endAt(index: number, side: -1 | 1, { top, spec }: WallPlan, corners: CopingCorners) {
  const { from, to, level } = top[index]!;
  const end = side < 0 ? from : to;
  const next = top[index + side];
  if (next) return { at: end, joint: next.level > level ? 1 : 0 };
  const corner = corners[side < 0 ? 'left' : 'right'];
  if (corner) return { at: end - side * corner.inset, joint: corner.joint };
  const kind = side < 0 ? spec.left : spec.right;
  return { at: end, joint: kind === 'stopped' ? 0 : 1 };
}

function stopsAt(level: number, { spec, piers, movement }: WallPlan) {
  const gaps = spec.openings
    .filter((o) => o.top === null || o.top >= level)
    .map((o) => ({ from: o.from, to: o.from + o.width, joint: 0 }));
  const posts = piers
    .filter((p) => interrupts(p, level))
    .map((p) => ({ from: p.spec.from, to: p.spec.from + p.spec.width, joint: 1 }));
  const joints = movement.map(({ from, width }) => ({ from, to: from + width, joint: 0 }));
  return [...gaps, ...posts, ...joints].sort((a, b) => a.from - b.from);
}

function interrupts({ facts, spec }: PierFacts, level: number): boolean {
  const over = (spec.base ?? 0) + spec.courses - level;
  const ownTop = facts.line('cap') ?? facts.line('coping');
  return over > 0 || (over === 0 && ownTop !== undefined);
}
