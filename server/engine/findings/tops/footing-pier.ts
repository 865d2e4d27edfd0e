/** A strip that piers of its wall stand out over, or that ends flush with one at an end of it. */

import { phrase } from '../../../../shared/phrase';
import { lengthText, sizeText } from '../../brickwork/lengths';
import type { PierFacts } from '../../brickwork/wall/piers/placed';
import type { WallPlan } from '../../brickwork/wall/spec';
import { endSaid } from '../../kinds-said';
import type { Env, LineFacts } from '../../resolve/env';
import { type Remark, rewrite } from '../remark';

/** Footings are dug to the next 25 mm. */
const TO = 25;
/** Lengths nearer than this are the same, mm. */
const SAME = 0.5;

interface Strip {
  readonly line: LineFacts;
  readonly env: Env;
  /** Of the strip, and through all skins of the wall on it, mm. */
  readonly width: number;
  readonly depth: number;
  readonly wall: number;
}

/** `meets` are the ends at which the strip goes on under another wall. */
export function footingPiers(
  strip: Strip,
  { piers, spec }: WallPlan,
  meets: readonly ('left' | 'right')[],
): Remark[] {
  const ends = (['left', 'right'] as const).filter((end) => !meets.includes(end));
  const out = piers.flatMap((pier) => {
    const over = overOf(pier, spec, strip);
    return over > SAME ? [standsOut(pier, over, strip)] : [];
  });
  if (out.length) return out;
  return ends.flatMap((end) => {
    const pier = piers.find((p) => atEnd(p, spec, end));
    return pier ? (endsFlush(pier, end, strip) ?? []) : [];
  });
}

function atEnd({ spec }: PierFacts, { length }: WallPlan['spec'], end: 'left' | 'right'): boolean {
  return end === 'left' ? spec.from < SAME : spec.from + spec.width > length - SAME;
}

/** How far it stands out over the strip on the side that it does so most, mm. */
function overOf(
  { spec, attached }: PierFacts,
  { unit, joints }: WallPlan['spec'],
  strip: Strip,
): number {
  const half = (unit.length + joints.perpend) / 2;
  const front = attached ? attached.front * half : (spec.depth - strip.wall) / 2;
  const back = spec.depth - strip.wall - front;
  return Math.max(front, back) - (strip.width - strip.wall) / 2;
}

function standsOut({ facts }: PierFacts, over: number, { line, env, width, depth }: Strip): Remark {
  const enough = Math.ceil((width + 2 * over) / TO) * TO;
  const size = sizeText(env, [enough, depth]);
  const message = phrase`The pier ${facts.name} stands ${lengthText(env, over)} out over this footing. It has to carry the whole of it, and to spread its load: how wide it must be there goes with the ground and the load, and is for the drawings, the local code or an engineer to say.`;
  return {
    code: 'footing-pier',
    about: facts.name,
    severity: 'warning',
    origin: line.at('size'),
    message,
    ways: [
      {
        title: phrase`At least ${size}, all along the wall`,
        edits: [rewrite(line.at('size'), size)],
      },
    ],
  };
}

/** Nothing where the strip stands out nowhere. */
function endsFlush(
  { facts, spec }: PierFacts,
  end: string,
  { line, env, width, depth, wall }: Strip,
): Remark | undefined {
  const out = (width - wall) / 2;
  if (out < SAME) return undefined;
  const by = lengthText(env, out);
  const more = sizeText(env, [out, Math.max(width, spec.depth + 2 * out), depth]);
  return {
    code: 'footing-pier',
    about: facts.name,
    severity: 'information',
    origin: line.at('size'),
    message: phrase`This footing is as long as the wall, and so ends flush with the pier ${facts.name} at its ${endSaid(end)}, where before the faces of the wall it stands out ${by}. Carry it as far past the pier (common practice): ${more} more, which is not counted.`,
  };
}
