/**
 * One file worked out. After an edit only the blocks that changed are worked out again: the others are the
 * same objects, and as long as the book is too, so are their results.
 */

import type { ReadLine } from '../../../grammar/read/values';
import type { Finding } from '../../../shared/finding';
import type { Work } from '../brickwork/needs';
import { workPier } from '../brickwork/pier/pier';
import { workRepair } from '../brickwork/repair';
import { type ToldOf, toldOfWall, workWall } from '../brickwork/wall';
import { besideOf } from '../brickwork/wall/meet/beside';
import { Neighbours } from '../brickwork/wall/meet/neighbours';
import { findingsOf } from '../findings/all';
import { freeStanding } from '../findings/piers/free-standing';
import type { Remark } from '../findings/remark';
import { type Gang, gangOf } from '../labour/gang';
import { lostIn, withLost } from '../price/lost';
import { NeedsPool } from '../price/pool';
import { sharesOf, type WorkShare } from '../price/shares';
import { type JobPrice, priceOf } from '../price/total';
import { Book, bookBlocks, wordOf } from '../resolve/book';
import { type BlockFacts, type Env, envOf, factsOf, type Pick } from '../resolve/env';
import { type FileStore, type Scope, scopeOf } from '../resolve/uses';
import type { Gap } from '../working/term';
import { type SourceBlock, type SourceFile, WORK } from './source';
import { tried } from './tried';

interface Kept {
  readonly work: Work;
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
  private neighbours!: Neighbours;
  private readonly pool = new NeedsPool();
  private priced: JobPrice | undefined;
  private shared: ((at: number) => WorkShare) | undefined;
  private found: readonly Finding[] | undefined;
  private ends: { low: Job; high: Job } | undefined;

  constructor(
    readonly file: SourceFile,
    private readonly store: FileStore,
    private readonly pick: Pick = 'middle',
  ) {}

  /** Brings everything up to the text as it stands now. */
  refresh(): void {
    if (!this.bookStands()) this.lookAround();
    this.neighbours = new Neighbours(this.file.blocks.filter((b) => b.kind === 'wall'));
    this.works = this.workBlocks().flatMap((block) => this.workOf(block) ?? []);
    this.forgetOthers();
    this.priced = undefined;
    this.shared = undefined;
    this.found = undefined;
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
    this.env = envOf(this.book, this.pick);
    if (before && sameEnv(before.env, this.env) && same(forWork(before.blocks), forWork(blocks)))
      return;
    this.gang = gangOf(this.env);
    this.kept = new Map();
  }

  private workBlocks(): SourceBlock[] {
    return this.file.blocks.filter((b) => b.kind !== undefined && WORK.has(b.kind));
  }

  private forgetOthers(): void {
    if (this.kept.size <= this.works.length + 64) return;
    const live = new Set(this.works.map((w) => w.block));
    for (const block of this.kept.keys()) if (!live.has(block)) this.kept.delete(block);
  }

  private workOf(block: SourceBlock): Work | undefined {
    const beside = this.besideOf(block);
    const known = this.kept.get(block);
    if (known && same(known.beside, beside)) return known.work;
    const laid = this.workedOut(block, beside, this.neighbours);
    const again = (other: SourceBlock) =>
      this.toldOf(other, beside, this.neighbours.with(block, other));
    const work = laid && tried(withLost(laid), again);
    if (work) this.kept.set(block, { work, beside });
    return work;
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
  ): Work | undefined {
    const facts = factsOf(block, this.env);
    if (!facts) return undefined;
    if (block.kind === 'wall')
      return looked(workWall(block, this.env, this.gang, neighbours), this.env);
    if (block.kind === 'pier') return workPier(facts, this.env, this.gang);
    return workRepair(facts, this.env, this.gang, beside[0]);
  }

  /** What there is to tell of a block when a way out is tried in it; a wall costs less so. */
  private toldOf(block: SourceBlock, beside: readonly SourceBlock[], neighbours: Neighbours) {
    if (block.kind !== 'wall' || !factsOf(block, this.env))
      return this.workedOut(block, beside, neighbours);
    return looked(toldOfWall(block, this.env, this.gang, neighbours), this.env);
  }

  private wallOf(repair: SourceBlock): SourceBlock | undefined {
    const name = (factsOf(repair, this.env) as BlockFacts).line('in')?.word('wall');
    if (!name) return undefined;
    const here = this.file.blocks.find((b) => b.kind === 'wall' && b.name === name);
    return here ?? this.book.find('wall', name);
  }

  get price(): JobPrice {
    this.priced ??= priceOf(this.pool.all(this.works.map((w) => w.needs)), this.env, this.lost());
    return this.priced;
  }

  private lost(): readonly Gap[] {
    return lostIn(this.scope.files, this.remarkLists());
  }

  private *remarkLists(): Iterable<readonly Remark[]> {
    yield this.scope.remarks;
    for (const work of this.works) if (work.remarks.length) yield work.remarks;
  }

  /** What a piece of work costs, and its part of the price. */
  shareOf(work: Work): WorkShare {
    this.shared ??= sharesOf(
      this.works.map((w) => w.needs),
      this.price,
      this.env,
    );
    return this.shared(this.works.indexOf(work));
  }

  /** The price with every range at one end, and at the other: the same engine run again. */
  get priceEnds(): { low: JobPrice; high: JobPrice } {
    if (!this.hasRanges) return { low: this.price, high: this.price };
    this.ends ??= { low: this.at('low'), high: this.at('high') };
    const { low, high } = this.ends;
    low.refresh();
    high.refresh();
    return { low: low.price, high: high.price };
  }

  private at(pick: Pick): Job {
    return new Job(this.file, this.store, pick);
  }

  /** Whether a piece of work holds a range, so that the price has two ends. */
  get hasRanges(): boolean {
    return this.works.some(({ block }) => block.hasRanges);
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
