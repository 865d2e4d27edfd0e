/** How attached piers ought to stand, and how high a pier may be that stands alone: by lines of the library, with their sources. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { PierFacts } from '../../brickwork/wall/piers/placed';
import type { WallPlan } from '../../brickwork/wall/spec';
import { type BlockFacts, defaultLine, type Env, type LineFacts } from '../../resolve/env';
import { levelAt } from '../../setting-out';
import { coursesText, coursesTold } from '../courses';
import type { Remark } from '../remark';

/** Lengths nearer than this are the same, mm. */
const SAME = 0.5;

function sourceIn(line: LineFacts): string {
  const text = line.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  return text && ` (${text})`;
}

/** Stands out less than an attached pier has to. */
export function pierSlight(
  { facts, spec }: PierFacts,
  plan: WallPlan,
  env: Env,
): Remark | undefined {
  const line = defaultLine(env, 'pier-projection');
  const least = line?.number('length');
  if (!line || !least) return undefined;
  const both = facts.line('projects')?.word('side') === 'both' ? 2 : 1;
  const { unit, joints, thickness } = plan.spec;
  const wall = (thickness * (unit.length + joints.perpend)) / 2 - joints.perpend;
  const out = (spec.depth - wall) / both;
  if (out > least - SAME) return undefined;
  const message = phrase`The pier ${facts.name} stands ${lengthText(env, out)} out of its wall; ${lengthText(env, least)} is the least that strengthens it${sourceIn(line)}. Make it a brick deeper or more.`;
  return {
    code: 'pier-projection',
    severity: 'warning',
    origin: facts.line('size')!.origin,
    message,
    related: [{ origin: line.origin, message: phrase`How far it should stand out` }],
  };
}

/** Stops too far under the top of its wall. */
export function pierLow(
  { facts, spec }: PierFacts,
  { spec: wall, top }: WallPlan,
  env: Env,
): Remark | undefined {
  const line = defaultLine(env, 'pier-below');
  const times = line?.number('times');
  const height = facts.line('height');
  if (!line || !times || !height) return undefined;
  const gauge = wall.unit.height + wall.joints.bed;
  const thick =
    (wall.thickness * (wall.unit.length + wall.joints.perpend)) / 2 - wall.joints.perpend;
  const base = spec.base ?? 0;
  const high = levelAt(top, spec.from + spec.width / 2);
  const below = (high - base - spec.courses) * gauge;
  const most = times * thick;
  if (below < most + SAME) return undefined;
  const courses = high - base - Math.floor(most / gauge);
  const text = coursesText(courses);
  const message = phrase`The pier ${facts.name} stops ${lengthText(env, below)} under the top of its wall; ${lengthText(env, most)}, ${times} times the wall’s thickness, is the most${sourceIn(line)}.`;
  const key = height.values.courses ? 'courses' : 'height';
  return {
    code: 'pier-low',
    severity: 'warning',
    origin: height.origin,
    message,
    related: [{ origin: line.origin, message: phrase`How far below it may stop` }],
    ways: [
      {
        title: phrase`Build it ${coursesTold(courses)} high`,
        edits: [{ ...height.at(key), text }],
      },
    ],
  };
}

/** Attached piers of a wall half a brick thick, or its ends, further apart than they ought to be. */
export function piersApart(
  facts: BlockFacts,
  piers: readonly PierFacts[],
  { spec }: WallPlan,
  env: Env,
): Remark | undefined {
  const line = defaultLine(env, 'pier-spacing');
  const most = line?.number('length');
  if (!line || !most || !piers.length || spec.thickness !== 1) return undefined;
  const middles = piers.map((p) => p.spec.from + p.spec.width / 2);
  const stops = [0, ...middles.sort((a, b) => a - b), spec.length];
  const gaps = stops.slice(1).map((to, i) => to - stops[i]!);
  const widest = Math.max(...gaps);
  if (widest < most + SAME) return undefined;
  const at = gaps.indexOf(widest);
  const where =
    at === 0 || at === gaps.length - 1
      ? phrase`from an end of the wall to its pier`
      : phrase`between two piers`;
  const message = phrase`It is ${lengthText(env, widest)} ${where}; piers of a wall half a brick thick stand at most ${lengthText(env, most)} apart and from its ends${sourceIn(line)}. Add a pier there.`;
  return {
    code: 'pier-spacing',
    severity: 'warning',
    origin: facts.line('length')?.origin ?? facts.origin,
    message,
    related: [{ origin: line.origin, message: phrase`How far apart they may stand` }],
  };
}

/** A pier that stands alone, so many mm over all, `more` where its height is a range, and `least` mm on its narrower side. */
export function pierSlender(
  facts: BlockFacts,
  { laid, more }: { readonly laid: number; readonly more: number },
  least: number,
  env: Env,
): Remark | undefined {
  const line = defaultLine(env, 'pier-slender');
  const times = line?.number('times');
  const height = laid + more;
  if (!line || !times || height < times * least + SAME) return undefined;
  const high = lengthText(env, height);
  const message = phrase`${more > 0 ? phrase`It may be up to ${high}, which` : high} is more than ${times} times the ${lengthText(env, least)} of its narrower side, the most for a pier that stands alone${sourceIn(line)}. Make it wider or lower, or have a structural engineer design it.`;
  return {
    code: 'pier-slender',
    severity: 'warning',
    origin: facts.line('height')?.origin ?? facts.origin,
    message,
    related: [{ origin: line.origin, message: phrase`How high it may be` }],
  };
}
