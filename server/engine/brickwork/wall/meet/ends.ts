/** What the `left` and `right` lines of a wall say: how it ends, and which wall it meets there. */
import type { ReadLine } from '../../../../../grammar/read/values';
import { wordOf } from '../../../resolve/book';
import type { BlockFacts } from '../../../resolve/env';
import type { EndKind, Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';

export const SIDES: readonly Side[] = ['left', 'right'];

export const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/** A meeting with another wall, as one end of a wall says it. */
export interface Claim {
  readonly kind: 'quoin' | 'tee';
  /** The wall it names. */
  readonly wall: string;
  readonly side: Side;
  /** Set for a tee whose courses run into the other wall in turn. */
  readonly bonded: boolean;
}

const NONE: readonly Claim[] = [];
const known = new WeakMap<SourceBlock, readonly Claim[]>();

/** The walls that the ends of a wall say they meet. Nothing but its own lines is asked. */
export function claimsOf(block: SourceBlock): readonly Claim[] {
  let claims = known.get(block);
  if (!claims) {
    const found = SIDES.flatMap((side) => claimIn(endLine(block, side), side) ?? []);
    claims = found.length ? found : NONE;
    known.set(block, claims);
  }
  return claims;
}

function endLine(block: SourceBlock, side: Side): ReadLine | undefined {
  return block.read.heading?.body.find((line) => line.kind.key === side);
}

function claimIn(line: ReadLine | undefined, side: Side): Claim | undefined {
  const end = wordOf(line?.values.end);
  const wall = wordOf(line?.values.wall);
  if (!wall || (end !== 'quoin' && end !== 'tee')) return undefined;
  return { kind: end, wall, side, bonded: wordOf(line?.values.how) === 'bonded' };
}

/**
 * How the brickwork itself stops there. A quoin is laid as a free end, since its face looks like one; what runs
 * through and what gives way is settled between the two walls. Against the face of another wall stands a plain joint.
 */
export function endKind(facts: BlockFacts, side: Side): EndKind {
  const end = facts.orDefault(side)?.word('end') ?? '';
  if (end === 'toothed') return 'toothed';
  return end === 'butted' || end === 'tee' || end === 'block-bonded' ? 'butted' : 'stopped';
}
