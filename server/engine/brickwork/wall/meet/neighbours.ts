/** The walls of a job, as they find one another by name. */
import type { Side } from '../../../setting-out';
import type { SourceBlock } from '../../../workspace/source';
import { type Claim, claimsOf, otherSide } from './ends';

/** One end of a wall. */
export interface WallEnd {
  readonly block: SourceBlock;
  readonly side: Side;
}

/** Walls that make corners with one another, end to end. Each is come into by one end and left by the other. */
export interface Chain {
  readonly walls: readonly WallEnd[];
  /** The last of them meets the first: they enclose something. */
  readonly closed: boolean;
}

const NOBODY: readonly SourceBlock[] = [];

export class Neighbours {
  private byName: Map<string, SourceBlock> | undefined;
  private tees: Map<string, SourceBlock[]> | undefined;
  private readonly chains = new Map<SourceBlock, Chain>();
  private readonly around = new Map<SourceBlock, readonly SourceBlock[]>();

  /** @param walls of the job’s own file, in order */
  constructor(private readonly walls: readonly SourceBlock[]) {}

  /** The same walls, one of them read otherwise. */
  with(old: SourceBlock, fresh: SourceBlock): Neighbours {
    return new Neighbours(this.walls.map((wall) => (wall === old ? fresh : wall)));
  }

  /** The first wall of that name. */
  named(name: string): SourceBlock | undefined {
    if (!this.byName) {
      this.byName = new Map();
      for (const wall of this.walls)
        if (wall.name && !this.byName.has(wall.name)) this.byName.set(wall.name, wall);
    }
    return this.byName.get(name);
  }

  /** Walls that run into the face of this one. */
  into(block: SourceBlock): readonly SourceBlock[] {
    if (!this.tees) {
      this.tees = new Map();
      for (const wall of this.walls) for (const claim of claimsOf(wall)) this.addTee(wall, claim);
    }
    if (!this.tees.size || !block.name || this.named(block.name) !== block) return NOBODY;
    return this.tees.get(block.name) ?? NOBODY;
  }

  private addTee(wall: SourceBlock, { kind, wall: name }: Claim): void {
    if (kind !== 'tee') return;
    const list = this.tees!.get(name);
    if (list) list.push(wall);
    else this.tees!.set(name, [wall]);
  }

  /** The end that answers a quoin: of the wall it names, the one that names this wall; where both do, the one on the other hand. */
  answering({ block, side }: WallEnd): WallEnd | undefined {
    const end = this.claimed({ block, side });
    const back = end && this.claimed(end);
    return back && back.block === block && back.side === side ? end : undefined;
  }

  private claimed({ block, side }: WallEnd): WallEnd | undefined {
    const claim = claimsOf(block).find((c) => c.side === side);
    const other = claim?.kind === 'quoin' ? this.named(claim.wall) : undefined;
    if (!other || other === block) return undefined;
    const back = claimsOf(other).filter((c) => c.kind === 'quoin' && c.wall === block.name);
    const end = back.find((c) => c.side !== side) ?? back[0];
    return end && { block: other, side: end.side };
  }

  /** The walls that make corners with this one and with each other, from the one of them that stands first in the file or at an end. */
  chainOf(block: SourceBlock): Chain | undefined {
    const known = this.chains.get(block);
    if (known) return known;
    const chain = this.newChain(block);
    for (const wall of chain?.walls ?? []) this.chains.set(wall.block, chain!);
    return chain;
  }

  private newChain(block: SourceBlock): Chain | undefined {
    const rightward = this.walk({ block, side: 'left' });
    if (rightward.closed) return this.fromFirst(rightward);
    const start = rightward.walls.at(-1)!;
    const { walls } = this.walk({ block: start.block, side: otherSide(start.side) });
    return walls.length > 1 ? this.fromEarlier(walls) : undefined;
  }

  /** What is found once for all walls of the chain that a wall is of, or for it alone. */
  kept(
    block: SourceBlock,
    find: (walls: readonly SourceBlock[]) => readonly SourceBlock[],
  ): readonly SourceBlock[] {
    const walls = this.chainOf(block)?.walls.map((w) => w.block) ?? [block];
    const first = walls[0]!;
    let found = this.around.get(first);
    if (!found) {
      found = find(walls);
      this.around.set(first, found);
    }
    return found;
  }

  /** From a wall that is come into by that end, as far as corners go. */
  private walk(from: WallEnd): Chain {
    const walls = [from];
    const seen = new Set([from.block]);
    for (let at = from; ; ) {
      const next = this.answering({ block: at.block, side: otherSide(at.side) });
      if (!next) return { walls, closed: false };
      if (seen.has(next.block)) return { walls, closed: next.block === from.block };
      seen.add(next.block);
      walls.push(next);
      at = next;
    }
  }

  /** Whichever wall asks, the chain is told alike: round from the wall that stands first in the file. */
  private fromFirst({ walls }: Chain): Chain {
    const first = this.earliest(walls);
    return this.walk({ block: first, side: 'left' });
  }

  private fromEarlier(walls: readonly WallEnd[]): Chain {
    const [a, b] = [walls[0]!, walls.at(-1)!];
    if (this.earliest([a, b]) === a.block) return { walls, closed: false };
    return this.walk({ block: b.block, side: otherSide(b.side) });
  }

  private earliest(walls: readonly WallEnd[]): SourceBlock {
    const blocks = new Set(walls.map((w) => w.block));
    return this.walls.find((wall) => blocks.has(wall))!;
  }
}
