/** Ways out for a brick that does not keep a gauge: another brick, bricks cut to height, the joint as it comes. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { bedFor, isAccepted, type Standing } from '../../brickwork/standing/gauge';
import { type BlockFacts, type Env, factsNamed } from '../../resolve/env';
import type { JointLimits } from '../../setting-out';
import { lineAfter, type RemarkWay } from '../remark';
import { decide, lastOwnLine } from './decision';

/** A brick that would do, and the edit that takes it. */
export interface Other {
  readonly title: string;
  /** Bed joint that it needs, mm. */
  readonly joint: number;
  readonly way: Pick<RemarkWay, 'edits'>;
}

/** The line of the work that names the brick it is laid in. */
export interface Named {
  readonly facts: BlockFacts;
  readonly key: 'brick' | 'match';
  /** What stands beside it, where another length of brick would not line up: mm, joints in between. */
  readonly beside?: {
    readonly length: number;
    readonly joint: number;
    readonly limits: JointLimits;
  };
}

/** More bricks than this are not looked through, and more ways than these not offered. */
const MOST_BRICKS = 500;
const MOST_OFFERED = 3;

/** Bricks of the job and its libraries that keep the gauge at a joint anyone would accept, the best first. */
export function othersThatKeep(standing: Standing, named: Named, env: Env): Other[] {
  const { brick, course, limits } = standing;
  const names = env.book.names('brick').slice(0, MOST_BRICKS);
  const found = names.flatMap((name) => {
    const facts = name === brick.name ? undefined : factsNamed(env, 'brick', name);
    const [length, , height] = facts?.line('size')?.sides('size') ?? [];
    if (!facts || !length || !height || !linesUp(length, named)) return [];
    const joint = bedFor(course, height);
    if (!isAccepted(joint, limits)) return [];
    return [{ title: facts.title, joint, way: taking(name, named) }];
  });
  const off = ({ joint }: Other) => Math.abs(joint - limits.best);
  return found.sort((a, b) => off(a) - off(b)).slice(0, MOST_OFFERED);
}

/** Upright joints that keep the module of what stands beside it. */
function linesUp(length: number, { beside }: Named): boolean {
  return !beside || isAccepted(beside.length + beside.joint - length, beside.limits);
}

function taking(name: string, { facts, key }: Named): Other['way'] {
  const line = facts.line(key);
  if (line && line.block === facts.block) return { edits: [{ ...line.at('brick'), text: name }] };
  const indent = ' '.repeat(facts.heading.syntax.indent + 2);
  return { edits: [lineAfter(facts.block, lastOwnLine(facts), `${indent}${key} ${name}`)] };
}

export function gaugeWays(
  standing: Standing,
  home: BlockFacts,
  others: readonly Other[],
  env: Env,
): RemarkWay[] {
  const ways: RemarkWay[] = others.map(({ title, joint, way }) => ({
    ...way,
    title: phrase`${title} instead, bed joints of ${lengthText(env, joint)}`,
  }));
  ways.push(...cutToHeight(standing, home, env), ...asItComes(standing, home, env));
  return ways.map((way, i) => ({ ...way, preferred: i === 0 && !way.last }));
}

const RUN = 'gauge';

/** Bricks too high are sawn to what leaves the best joint, as long as more than half of them is left. */
function cutToHeight(
  { brick, course, joint, limits }: Standing,
  home: BlockFacts,
  env: Env,
): RemarkWay[] {
  const high = course - limits.best;
  const tooHigh = joint.value.toNumber() < limits.least;
  if (home.heading.kind.key !== 'repair' || !tooHigh || high <= brick.size!.height / 2) return [];
  const to = lengthText(env, high);
  const title = phrase`Cut each brick to ${to} high, bed joints of ${lengthText(env, limits.best)}`;
  return [decide({ name: RUN, home }, `cut ${to}`, title)];
}

function asItComes({ joint }: Standing, home: BlockFacts, env: Env): RemarkWay[] {
  const mm = joint.value.toNumber();
  if (mm <= 0) return [];
  const title = phrase`Keep the gauge with bed joints of ${lengthText(env, mm)}, wider or tighter than anyone would accept`;
  return [{ ...decide({ name: RUN, home }, 'joints', title), last: true }];
}
