/**
 * The pieces of work of a job as they come out. After an edit only those are worked out again whose block, or what else they
 * were worked out from, is another object than before.
 */
import type { Needs } from '../brickwork/needs';
import { layingFor } from '../brickwork/wall';
import { besideOf } from '../brickwork/wall/meet/beside';
import { searchesFor } from '../brickwork/wall/meet/into-thick';
import { Neighbours } from '../brickwork/wall/meet/neighbours';
import type { Work } from '../brickwork/work';
import { withLost } from '../price/lost';
import { allFollowable, opened, rangesToPin } from '../ranges/again';
import { type BlockFacts, factsOf, plainlyRead } from '../resolve/env';
import { type Around, same } from './around';
import type { FilePart } from './file-part';
import { Groups, joined } from './groups';
import type { SourceBlock } from './source';
import { standsIn } from './stands';
import { Effort, type Trial, tried } from './tried';
import { type In, toldOf, workedOut } from './work-out';

interface Kept {
  readonly work: Work;
  /** Ranges it was laid out by; all others it says itself how it hangs on. */
  readonly plain: ReadonlySet<object>;
  /** What else it was worked out from: the wall a repair is in, the walls that a wall meets. When one changes, so may it. */
  readonly beside: readonly SourceBlock[];
}

const NO_RANGES: ReadonlySet<object> = new Set();

/** To look for how a wall is bonded into a thick one takes as long as to work out so many lines, or less. */
const SEARCH_IN_LINES = 100;

export class KeptWork {
  /** Blocks of the file that are done. */
  inForce: readonly SourceBlock[] = [];
  private kept = new Map<SourceBlock, Kept>();
  private lone = this.newLone();
  private neighbours!: Neighbours;
  private effort = new Effort();

  /** @param base with options taken: those of the job as its file has it */
  constructor(
    private readonly around: Around,
    private readonly base?: KeptWork,
  ) {}

  /** In the order of the file. `anew`: what all of them are worked out from has changed. */
  refresh(parts: readonly FilePart[], anew: boolean): readonly Work[] {
    if (anew) this.kept = new Map();
    this.inForce = joined(parts.map((part) => part.blocks));
    this.neighbours = new Neighbours(joined(parts.map((part) => part.walls)));
    // Where no piece of work looks at another, one that has not changed is not even asked about.
    if (anew || !parts.every((part) => part.alone)) this.lone = this.newLone();
    const works = joined(this.lone.of(joined(parts.map((part) => part.work))));
    this.forgetOthers(works);
    this.effort = new Effort();
    return works;
  }

  private newLone(): Groups<SourceBlock, readonly Work[]> {
    return new Groups((blocks) => blocks.flatMap((block) => this.workOf(block) ?? []));
  }

  private forgetOthers(works: readonly Work[]): void {
    if (this.kept.size <= works.length + 64) return;
    const live = new Set(works.map((w) => w.block));
    for (const block of this.kept.keys()) if (!live.has(block)) this.kept.delete(block);
  }

  /** As it is now. */
  at(block: SourceBlock | undefined): Work | undefined {
    return block && this.kept.get(block)?.work;
  }

  private workOf(block: SourceBlock): Work | undefined {
    const beside = this.besideOf(block);
    const known = this.kept.get(block) ?? this.ofBase(block);
    const now = known && same(known.beside, beside) ? known : this.anew(block, beside);
    if (now) this.kept.set(block, now);
    return now?.work;
  }

  private anew(block: SourceBlock, beside: readonly SourceBlock[]): Kept | undefined {
    const { neighbours } = this;
    const { made, plain: read } = plainlyRead(() =>
      workedOut(block, { beside, neighbours }, this.around),
    );
    if (!made) return undefined;
    const plain = new Set([...read, ...rangesToPin(made.needs)]);
    const isOpen = plain.size > 0 || !allFollowable(made.needs);
    const laid = isOpen ? { ...made, needs: opened(made.needs) } : made;
    return { work: tried(withLost(laid), this.trialOf(block, beside)), beside, plain };
  }

  private ofBase(block: SourceBlock): Kept | undefined {
    return this.around.asBase ? this.base!.kept.get(block) : undefined;
  }

  private trialOf(block: SourceBlock, beside: readonly SourceBlock[]): Trial {
    return {
      again: (other, code) => {
        const neighbours = this.neighbours.with(block, other);
        return toldOf(other, { beside, neighbours }, this.around, code);
      },
      alike: layingFor,
      takes: () =>
        block.lines.length + SEARCH_IN_LINES * searchesFor(block, this.neighbours, this.around.env),
      effort: () => this.effort,
    };
  }

  /** Who asks for a few ways out has all of them tried, whatever was asked before. */
  anewTried(): void {
    this.effort = new Effort();
  }

  private besideOf(block: SourceBlock): readonly SourceBlock[] {
    if (block.kind === 'wall') return besideOf(block, this.neighbours);
    const wall = block.kind === 'repair' ? this.wallOf(block) : undefined;
    return wall ? [wall] : [];
  }

  /** What a repair is in: a wall or a pier, where the job has it; for a pier of a wall, that wall. */
  wallOf(repair: SourceBlock): SourceBlock | undefined {
    const line = (factsOf(repair, this.around.env) as BlockFacts).line('in');
    return standsIn(line, this.inForce, this.around.book);
  }

  /** Ranges that a piece of work was laid out by. */
  plainOf(work: Work): ReadonlySet<object> {
    return this.kept.get(work.block)?.plain ?? NO_RANGES;
  }

  /** What a piece of work takes when its ranges are picked otherwise: the same engine run again. */
  needsAt({ block }: Work, at: In): Needs | undefined {
    const { beside } = this.kept.get(block)!;
    return workedOut(block, { beside, neighbours: this.neighbours }, at)?.needs;
  }
}
