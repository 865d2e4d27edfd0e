/** A bond at a thickness that its own lines do not give it. */

import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import { halvesOf } from '../brickwork/masonry';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../resolve/env';
import type { Remark, RemarkWay } from './remark';

/** Nothing for a bond that says no thickness, or this one. */
export function bondThick(facts: BlockFacts, halves: number, env: Env): Remark | undefined {
  const line = facts.orDefault('bond');
  const bond = line && factsNamed(env, 'bond', line.word('bond'));
  if (!line || !bond || suits(bond, halves) || !bond.line('thick')) return undefined;
  const thicknesses = bond.lines('thick').map((l) => said(l.number('thick') ?? 0));
  const others = env.book
    .names('bond')
    .filter((name) => suits(factsNamed(env, 'bond', name)!, halves));
  const collar =
    halves === 2
      ? phrase` Its leaves are parted by one upright joint from end to end, and need ties.`
      : '';
  const message = phrase`${bond.title} is given for ${listed(thicknesses)}, and this wall is ${said(halves / 2)} thick.${collar} ${others.length ? forThis(others) : ''}`;
  const own = facts.line('bond');
  const ways: RemarkWay[] = others.map((name) => wayTo(name, own, facts));
  return {
    code: 'bond-thick',
    severity: 'warning',
    origin: (own ?? facts.line('thick'))?.origin ?? facts.origin,
    message: message.trim(),
    ways,
  };
}

function suits(bond: BlockFacts, halves: number): boolean {
  return bond.lines('thick').some((l) => halvesOf(l.number('thick') ?? 0) === halves);
}

function forThis(bonds: readonly string[]): string {
  const all = listed(bonds, 'and');
  return bonds.length > 1
    ? phrase`For this thickness there are ${all}.`
    : phrase`For this thickness there is ${all}.`;
}

function said(bricks: number): string {
  if (bricks === 0.5) return phrase`half a brick`;
  return bricks === 1 ? phrase`one brick` : phrase`${bricks} bricks`;
}

function wayTo(name: string, own: LineFacts | undefined, facts: BlockFacts): RemarkWay {
  const title = phrase`Build it in ${name}`;
  if (own)
    return {
      title,
      edits: [{ block: own.block, span: own.line.syntax.span, text: `bond ${name}` }],
    };
  const line = facts.heading.syntax.span.line;
  const end = facts.block.lines[line]!.length;
  return {
    title,
    edits: [{ block: facts.block, span: { line, start: end, end }, text: `\n  bond ${name}` }],
  };
}
