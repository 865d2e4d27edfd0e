/** Nesting cuts into bricks, beside cutting them as they come, one by one. */
import { bricksNeeded } from '../../server/engine/setting-out';
import { type Paired, paired, timed } from './stats';

const BRICK = 215;
const KERF = 3;

/** So many lengths from 50 to 140 mm, scattered; each round has others by a hair, so that none is answered from memory. */
function lengthsOf(count: number, round = 0): number[] {
  return Array.from({ length: count }, (_, i) => 50 + ((i * 7919) % 91) + round / 1e6);
}

function inOrder(lengths: readonly number[]): number {
  const left: number[] = [];
  for (const length of lengths) {
    const at = left.findIndex((room) => room >= length);
    if (at >= 0) left[at] = left[at]! - length - KERF;
    else left.push(BRICK - length - KERF);
  }
  return left.length;
}

function nested(lengths: readonly number[]): number {
  const count = new Map<number, number>();
  for (const length of lengths) count.set(length, (count.get(length) ?? 0) + 1);
  const cuts = [...count].map(([length, n]) => ({ length, count: n }));
  const none = { wholes: 0, halves: 0, threeQuarters: 0, closers: 0 };
  const tally = { ...none, cuts, brickVolume: 0, grossVolume: 0 };
  return bricksNeeded(tally, { length: BRICK, width: 102.5, height: 65 }, 10, KERF).total;
}

export interface Nesting {
  readonly bricks: number;
  readonly inOrder: number;
  readonly pair: Paired;
}

export async function nesting(pieces: number, rounds: number): Promise<Nesting> {
  const lengths = lengthsOf(pieces);
  let round = 0;
  const ours = () => {
    const others = lengthsOf(pieces, ++round);
    return timed(() => nested(others));
  };
  for (let i = 0; i < 20; i++) await ours();
  const pair = await paired(rounds, ours, () => timed(() => inOrder(lengths)));
  return { bricks: nested(lengths), inOrder: inOrder(lengths), pair };
}
