/** A pier whose size is no number of half bricks on plan. */

import { phrase } from '../../../../shared/phrase';
import { lengthText, sizeText } from '../../brickwork/lengths';
import { type BlockFacts, defaultLine, type Env } from '../../resolve/env';
import type { Remark } from '../remark';

/** Sizes in bricks: only halves are laid. */
export function pierNotHalves(facts: BlockFacts): Remark {
  const origin = facts.line('size')!.origin;
  const message = phrase`A pier is so many half bricks each way: 1, 1.5, 2 bricks. This one is left out.`;
  return { code: 'pier-size', severity: 'error', origin, message };
}

/** Lengths nearer than this are the same, mm. */
const SAME = 0.05;

/** Sizes in lengths: `is` what the bricks make, in mm, `bricks` how many. Nothing where they agree. */
export function pierSize(
  facts: BlockFacts,
  said: readonly number[],
  is: readonly number[],
  bricks: readonly number[],
  env: Env,
): Remark | undefined {
  const off = Math.max(...said.map((side, i) => Math.abs(side - is[i]!)));
  if (off < SAME) return undefined;
  const line = facts.line('size')!;
  const message = phrase`${bricks.join(' x ')} bricks make ${sizeText(env, is)}; this is up to ${lengthText(env, off)} off, and its courses are counted as ${bricks.join(' x ')} bricks.`;
  const ways = [
    {
      title: phrase`Make it ${bricks.join(' x ')} bricks`,
      edits: [{ ...line.at('size'), text: `${bricks.join(' x ')} bricks` }],
    },
  ];
  const nominal = defaultLine(env, 'pier-nominal')?.number('length') ?? 0;
  const severity = off <= nominal + SAME ? 'hint' : 'warning';
  return { code: 'pier-size', severity, origin: line.at('size'), message, ways };
}
