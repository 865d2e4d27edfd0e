/**
 * One file worked out. After an edit only the blocks that changed are worked out again: the others are the
 * same objects, and as long as the book is too, so are their results.
 */

import type { ReadLine } from '../../../grammar/read/values';
import type { Finding } from '../../../shared/finding';
import type { Needs, Work } from '../brickwork/needs';
import { workPier } from '../brickwork/pier/pier';
import { workRepair } from '../brickwork/repair';
import { type ToldOf, toldOfWall, workWall } from '../brickwork/wall';
import { besideOf } from '../brickwork/wall/meet/beside';
import { claimsOf } from '../brickwork/wall/meet/ends';
import { searchesFor } from '../brickwork/wall/meet/into-thick';
import { Neighbours } from '../brickwork/wall/meet/neighbours';
import { findingsOf } from '../findings/all';
import { freeStanding } from '../findings/piers/free-standing';
import { type Gang, gangOf } from '../labour/gang';
import { Costs } from '../price/costs';
import { Losses, withLost } from '../price/lost';
import { NeedsPool } from '../price/pool';
import { sharesOf, type WorkShare } from '../price/shares';
import { type JobPrice, priceOf } from '../price/total';
import { allFollowable, opened } from '../ranges/again';
import { Runs, type Spread, spreadOf } from '../ranges/of-job';
import { Book, bookBlocks, wordOf } from '../resolve/book';
import { type BlockFacts, type Env, envOf, factsOf, plainlyRead } from '../resolve/env';
import { type FileStore, type Scope, scopeOf } from '../resolve/uses';
import type { Gap } from '../working/term';
import { Groups, joined } from './groups';
import { type SourceBlock, type SourceFile, WORK } from './source';
import { standsIn } from './stands';
import { Effort, type Trial, tried } from './tried';

interface Kept {
  readonly work: Work;
  /** Ranges it was laid out by; all others it says itself how it hangs on. */
  readonly plain: ReadonlySet<object>;
  /** What else it was worked out from: the wall a repair is in, the walls that a wall meets. When one changes, so may it. */
  readonly beside: readonly SourceBlock[];
}

export class Job {
  scope!: Scope;
  book!: Book;
  env!: Env;
  gang!: Gang;
  works: readonly Work[] = [];
  private seen: { generation: number; versions: readonly number[] } | undefined;
  private kept = new Map<SourceBlock, Kept>();
  private readonly parts = new Groups<SourceBlock, FilePart>(partOf);
  private lone = this.newLone();
  private neighbours!: Neighbours;
  private readonly pool = new NeedsPool();
  private readonly losses = new Losses();
  private readonly costs = new Costs();
  private priced: JobPrice | undefined;
  private shared: ((at: number) => WorkShare) | undefined;
  private found: readonly Finding[] | undefined;
  private spreadNow: Spread | null | undefined;
  private readonly runs = new Runs();
  private effort = new Effort();

  constructor(
    readonly file: SourceFile,
    private readonly store: FileStore,
  ) {}

  /** Brings everything up to the text as it stands now. */
  refresh(): void {
    if (!this.bookStands()) this.lookAround();
    const parts = this.parts.of(this.file.blocks);
    this.neighbours = new Neighbours(joined(parts.map((part) => part.walls)));
    const work = joined(parts.map((part) => part.work));
    // Where no piece of work looks at another, one that has not changed is not even asked about.
    if (!parts.every((part) => part.alone)) this.lone = this.newLone();
    this.works = joined(this.lone.of(work));
    this.forgetOthers();
    this.priced = undefined;
    this.shared = undefined;
    this.found = undefined;
    this.spreadNow = undefined;
    this.effort = new Effort();
  }

  private worksOf(blocks: readonly SourceBlock[]): Work[] {
    return blocks.flatMap((block) => this.workOf(block) ?? []);
  }

  /** Whether nothing but work has changed, here or in any file that this one uses. */
  private bookStands(): boolean {
    const { generation } = this.store;
    return (
      this.seen?.generation === generation &&
      this.seen.versions.every((version, i) => versionOf(this.scope.files[i]!, i) === version)
    );
  }

  private lookAround(): void {
    this.scope = scopeOf(this.file, this.store);
    const blocks = bookBlocks(this.scope.files);
    if (!this.book || !same(blocks, this.book.blocks)) this.newBook(blocks);
    const versions = this.scope.files.map(versionOf);
    this.seen = { generation: this.store.generation, versions };
  }

  /** Pieces of work stand as long as nothing has changed that they are worked out from. */
  private newBook(blocks: readonly SourceBlock[]): void {
    const before = this.book && { blocks: this.book.blocks, env: this.env };
    this.book = new Book(blocks);
    this.env = envOf(this.book, 'middle');
    if (before && sameEnv(before.env, this.env) && same(forWork(before.blocks), forWork(blocks)))
      return;
    this.gang = gangOf(this.env);
    this.kept = new Map();
    this.lone = this.newLone();
  }

  private forgetOthers(): void {
    if (this.kept.size <= this.works.length + 64) return;
    const live = new Set(this.works.map((w) => w.block));
    for (const block of this.kept.keys()) if (!live.has(block)) this.kept.delete(block);
  }

  private newLone(): Groups<SourceBlock, readonly Work[]> {
    return new Groups((blocks) => this.worksOf(blocks));
  }

  /** The piece of work of a block as it is now. */
  workAt(block: SourceBlock | undefined): Work | undefined {
    return block && this.kept.get(block)?.work;
  }

  private workOf(block: SourceBlock): Work | undefined {
    const beside = this.besideOf(block);
    const known = this.kept.get(block);
    if (known && same(known.beside, beside)) return known.work;
    const { made, plain } = plainlyRead(() => this.workedOut(block, beside, this.neighbours));
    const laid =
      made &&
      (plain.size || !allFollowable(made.needs) ? { ...made, needs: opened(made.needs) } : made);
    const work = laid && tried(withLost(laid), this.trialOf(block, beside));
    if (work) this.kept.set(block, { work, beside, plain });
    return work;
  }

  private trialOf(block: SourceBlock, beside: readonly SourceBlock[]): Trial {
    return {
      again: (other) => this.toldOf(other, beside, this.neighbours.with(block, other)),
      takes: () =>
        block.lines.length + SEARCH_IN_LINES * searchesFor(block, this.neighbours, this.env),
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

  private workedOut(
    block: SourceBlock,
    beside: readonly SourceBlock[],
    neighbours: Neighbours,
    { env, gang }: Pick<Job, 'env' | 'gang'> = this,
  ): Work | undefined {
    const facts = factsOf(block, env);
    if (!facts) return undefined;
    if (block.kind === 'wall') return looked(workWall(block, env, gang, neighbours), env);
    if (block.kind === 'pier') return workPier(facts, env, gang);
    return workRepair(facts, env, gang, beside[0]);
  }

  /** What there is to tell of a block when a way out is tried in it; a wall costs less so. */
  private toldOf(block: SourceBlock, beside: readonly SourceBlock[], neighbours: Neighbours) {
    if (block.kind !== 'wall' || !factsOf(block, this.env))
      return this.workedOut(block, beside, neighbours);
    return looked(toldOfWall(block, this.env, this.gang, neighbours), this.env);
  }

  /** What a repair is in: a wall or a pier, where the job has it; for a pier of a wall, that wall. */
  wallOf(repair: SourceBlock): SourceBlock | undefined {
    const line = (factsOf(repair, this.env) as BlockFacts).line('in');
    return standsIn(line, this.file.blocks, this.book);
  }

  get price(): JobPrice {
    this.priced ??= priceOf(this.pool.all(this.works), this.env, this.lost());
    return this.priced;
  }

  private lost(): readonly Gap[] {
    return this.losses.in(this.scope.files, this.scope.remarks, this.works);
  }

  /** What a piece of work costs, and its part of the price. */
  shareOf(work: Work): WorkShare {
    this.shared ??= sharesOf(this.works, this.price, this.env, this.costs);
    return this.shared(this.works.indexOf(work));
  }

  /** Between what and what the price lies, and on which ranges it hangs; nothing when none moves it. */
  get spread(): Spread | undefined {
    if (this.spreadNow === undefined) this.spreadNow = spreadOf(this, this.runs) ?? null;
    return this.spreadNow ?? undefined;
  }

  /** Ranges that a piece of work was laid out by. */
  plainOf(work: Work): ReadonlySet<object> {
    return this.kept.get(work.block)?.plain ?? NO_RANGES;
  }

  /** What a piece of work takes when its ranges are picked otherwise: the same engine run again. */
  needsAt(work: Work, at: Pick<Job, 'env' | 'gang'>): Needs | undefined {
    const { beside } = this.kept.get(work.block)!;
    return this.workedOut(work.block, beside, this.neighbours, at)?.needs;
  }

  /** What the whole job comes to from these needs, one for each piece of work. */
  priceAt(needs: readonly Needs[], env: Env): JobPrice {
    return priceOf(needs, env);
  }

  /** Names that a `use` line can give without quotation marks. */
  get libraries(): readonly string[] {
    return this.store.libraries;
  }

  /** The file or library that a `use` line of this file takes in. */
  usedBy(line: ReadLine): SourceFile | undefined {
    const library = wordOf(line.values.library);
    if (library) return this.store.library(library);
    const found = this.store.find(this.file, wordOf(line.values.file));
    return typeof found === 'string' ? undefined : found;
  }

  get findings(): readonly Finding[] {
    this.found ??= findingsOf(this);
    return this.found;
  }

  /** Whether the file is a job at all, and not a firm’s file or a library. */
  get isJob(): boolean {
    return this.file.blocks.some(
      (b) => b.kind === 'job' || (b.kind !== undefined && WORK.has(b.kind)),
    );
  }
}

/** Some blocks of a file, and those of them that are work. */
interface FilePart {
  readonly walls: readonly SourceBlock[];
  readonly work: readonly SourceBlock[];
  /** None of them is worked out from another piece of work. */
  readonly alone: boolean;
}

function partOf(blocks: readonly SourceBlock[]): FilePart {
  const walls = blocks.filter((b) => b.kind === 'wall');
  const work = blocks.filter((b) => b.kind !== undefined && WORK.has(b.kind));
  const alone = work.every((b) => b.kind !== 'repair') && !walls.some((b) => claimsOf(b).length);
  return { walls, work, alone };
}

/** To look for how a wall is bonded into a thick one takes as long as to work out so many lines, or less. */
const SEARCH_IN_LINES = 100;

const NO_RANGES: ReadonlySet<object> = new Set();

/** Work of the job’s own file is not in its book; work of a file it uses is. */
function versionOf(file: SourceFile, place: number): number {
  return place === 0 ? file.bookVersion : file.version;
}

/** A wall with what there is to say of its height. */
function looked<W extends ToldOf>(wall: W, env: Env): W {
  const remarks = freeStanding(wall, env);
  return remarks.length ? { ...wall, remarks: [...wall.remarks, ...remarks] } : wall;
}

/** Kinds of block that no piece of work is worked out from. */
const NOT_FOR_WORK: ReadonlySet<string> = new Set([
  'perpend',
  'job',
  'use',
  'firm',
  'travel',
  'cost',
  'price',
  'option',
  'record',
  'caution',
]);

function forWork(blocks: readonly SourceBlock[]): SourceBlock[] {
  return blocks.filter((b) => !NOT_FOR_WORK.has(b.kind!));
}

function sameEnv(a: Env, b: Env): boolean {
  return a.imperial === b.imperial && alike(a.money, b.money) && alike(a.style, b.style);
}

function alike(a: object, b: object): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function same(a: readonly SourceBlock[], b: readonly SourceBlock[]): boolean {
  return a.length === b.length && a.every((block, i) => block === b[i]);
}
