/** How high a piece of work is, how thick, how far out of plumb, and what it stands near: as lines say or as it was laid. */

import { phrase } from '../../../shared/phrase';
import { lengthSaid, sizeSaid } from '../brickwork/said';
import { higherAtMost } from '../brickwork/wall/highest';
import type { WorkFacts } from '../brickwork/work';
import { type Ends, endsOf, isRange, only } from '../resolve/ends';
import { type Gathered, inWords, type Limit, lineIn, type Standing, type What } from './holding';

export function place(standing: Standing, into: Gathered): void {
  height(standing, into);
  thick(standing, into);
  leaning(standing, into);
  near('boundary', { name: phrase`the boundary`, at: phrase`on the boundary` }, standing, into);
  near('road', { name: phrase`a road`, at: phrase`beside a road` }, standing, into);
}

function leaning({ facts, env }: Standing, into: Gathered): void {
  const line = facts.line('leans');
  const out = endsOf(line, 'leans');
  if (!line || !out) return;
  const words = {
    one: (mm: number) => phrase`it leans ${sizeSaid(mm, env)}`,
    most: (mm: number) => phrase`it may lean up to ${sizeSaid(mm, env)}`,
    least: (mm: number) => phrase`it may lean as little as ${sizeSaid(mm, env)}`,
  };
  const why = (limit?: Limit) => inWords(out, words, limit);
  into.add('leans', { origin: line.origin, amount: out, why });
}

function itIs(perhaps: boolean, at: string, within: string): string {
  return perhaps ? phrase`it may be ${at}${within}` : phrase`it is ${at}${within}`;
}

interface Near {
  readonly name: string;
  /** With nothing between. */
  readonly at: string;
}

/** Over all, coping included. Of a repair, the wall’s that it is in; where no line has it, what is built again. */
function height(standing: Standing, into: Gathered): void {
  const { facts, env } = standing;
  const high = highOf(standing);
  if (!high || !Number.isFinite(high.most)) return;
  const origin = lineIn(facts, ['height', 'rebuild']) ?? into.home;
  const words = {
    one: (mm: number) => phrase`it is ${lengthSaid(mm, env)} high`,
    most: (mm: number) => phrase`it may be up to ${lengthSaid(mm, env)} high`,
    least: (mm: number) => phrase`it may be as low as ${lengthSaid(mm, env)}`,
  };
  into.add('height', { origin, amount: high, why: (limit) => inWords(high, words, limit) });
}

/** As it is laid, the middle of a range, and as high as it may come: no caution is of what is low. */
function highOf({ work, wall, facts }: Standing): Ends | undefined {
  const built = [work, wall].find((w) => w?.facts.height !== undefined);
  if (!built) return rebuiltHigh({ work, facts });
  const laid = built.facts.height!;
  const gauge = gaugeOf(built.facts);
  return { least: laid, most: laid + higherAtMost(facts.line('height'), gauge) };
}

/** Height of a course, mm. */
function gaugeOf({ settingOut, pier }: Pick<WorkFacts, 'settingOut' | 'pier'>): number {
  if (pier) return pier.unit.height + pier.joints.bed;
  return settingOut?.gauge ?? 0;
}

/** Mm of a wall or a pier that is built again. */
function rebuiltHigh({ work, facts }: Pick<Standing, 'work' | 'facts'>): Ends | undefined {
  const { rebuilt } = work.facts;
  if (!rebuilt?.settingOut && !rebuilt?.pier) return undefined;
  const { settingOut, pier } = rebuilt;
  const gauge = gaugeOf(rebuilt);
  const bands = settingOut?.bands ?? [];
  const courses = pier?.plan.courses ?? bands.reduce((high, band) => Math.max(high, band.to), 0);
  const lengths = pier ? ['height', 'length'] : ['height'];
  const more = higherAtMost(facts.line('rebuild'), gauge, lengths);
  return { least: gauge * courses, most: gauge * courses + more };
}

function thick({ work, facts }: Standing, into: Gathered): void {
  const laid = work.facts.settingOut ?? work.facts.rebuilt?.settingOut;
  const line = facts.orDefault('thick');
  const bricks = laid ? only(laid.spec.thickness / 2) : endsOf(line, 'thick');
  if (bricks === undefined || work.kind === 'pier') return;
  into.add('thick', { origin: line?.origin ?? into.home, amount: bricks });
}

interface Near {
  readonly name: string;
  /** With nothing between. */
  readonly at: string;
}

function near(what: What, where: Near, { facts, env }: Standing, into: Gathered): void {
  const line = facts.line(what);
  const away = endsOf(line, 'distance');
  if (!line || !away) return;
  const there = { origin: line.origin, amount: away };
  const far = (mm: number) => lengthSaid(mm, env);
  const words = {
    one: (mm: number) => phrase`${where.name} is ${far(mm)} away`,
    most: (mm: number) => phrase`${where.name} may be as far as ${far(mm)}`,
    least: (mm: number) => phrase`${where.name} may be as near as ${far(mm)}`,
  };
  if (away.least > 0) into.add(what, { ...there, why: (limit) => inWords(away, words, limit) });
  // Within nought of it says no more than that it is there.
  else
    into.add(what, {
      ...there,
      why: (limit) =>
        itIs(isRange(away), where.at, limit?.amount ? phrase`, within ${limit.text}` : ''),
      saysLimit: true,
    });
}
