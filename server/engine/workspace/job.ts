/**
 * One file worked out. After an edit only the blocks that changed are worked out again: the others are the
 * same objects, and as long as the book is too, so are their results.
 */

import type { ReadLine } from '../../../grammar/read/values';
import type { Finding } from '../../../shared/finding';
import type { Needs, Work } from '../brickwork/needs';
import { workPier } from '../brickwork/pier/pier';
import { workRepair } from '../brickwork/repair';
import { layingFor, type ToldOf, toldOfWall, workWall } from '../brickwork/wall';
import { besideOf } from '../brickwork/wall/meet/beside';
import { claimsOf } from '../brickwork/wall/meet/ends';
import { searchesFor } from '../brickwork/wall/meet/into-thick';
import { Neighbours } from '../brickwork/wall/meet/neighbours';
import { findingsOf } from '../findings/all';
import { freeStanding } from '../findings/piers/free-standing';
import type { MeasuredOutput } from '../firm/outputs';
import { type Gang, gangBy, gangOf } from '../labour/gang';
import { isIn, optionsOf } from '../life/in-option';
import { Variants } from '../life/variant';
import type { VariantFile } from '../life/variant-block';
import { Costs } from '../price/costs';
import { Losses, lostIn, withLost } from '../price/lost';
import { NeedsPool } from '../price/pool';
import { type ItemShare, type PriceShares, sharesOf, type WorkShare } from '../price/shares';
import { TaxLines } from '../price/tax/own';
import { type JobPrice, priceOf } from '../price/total';
import { allFollowable, opened, rangesToPin } from '../ranges/again';
import { Runs, type Spread, spreadOf } from '../ranges/of-job';
import { Book, bookBlocks, wordOf } from '../resolve/book';
import { type BlockFacts, type Env, envOf, factsOf, plainlyRead } from '../resolve/env';
import { allLent, type Partner, partnerLost, partnerOf } from '../resolve/partners';
import { allFiles, type FileStore, type Scope, scopeOf } from '../resolve/uses';
import { type Gap, withGaps } from '../working/term';
import { Groups, joined } from './groups';
import { type SourceBlock, SourceFile, WORK } from './source';
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
  private seen:
    | { generation: number; files: readonly SourceFile[]; versions: readonly number[] }
    | undefined;
  private kept = new Map<SourceBlock, Kept>();
  private readonly parts = new Groups<SourceBlock, FilePart>((of) => partOf(of, this.taken));
  private lone = this.newLone();
  private neighbours!: Neighbours;
  private readonly pool = new NeedsPool();
  private readonly losses = new Losses();
  private readonly costs = new Costs();
  private readonly taxLines = new TaxLines();
  private priced: JobPrice | undefined;
  private shared: PriceShares | undefined;
  private found: readonly Finding[] | undefined;
  private spreadNow: Spread | null | undefined;
  private readonly runs = new Runs();
  private effort = new Effort();
  private inForce: readonly SourceBlock[] = [];
  private optionBlocks: readonly SourceBlock[] = [];
  private variants: Variants | undefined;
  /** Whether a piece of work comes out here as it does in the job without options. */
  private asBase = false;

  constructor(
    readonly file: SourceFile,
    private readonly store: FileStore,
    /** With options taken: the job as its file has it, and which they are. */
    private readonly base?: Job,
    readonly taken: ReadonlySet<string> = NONE_TAKEN,
  ) {}

  /** Brings everything up to the text as it stands now. */
  refresh(): void {
    if (!this.bookStands()) this.lookAround();
    const parts = this.parts.of(this.file.blocks);
    this.inForce = joined(parts.map((part) => part.blocks));
    this.optionBlocks = joined(parts.map((part) => part.options));
    this.variants?.changed();
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
      this.seen.files.every((file, i) => versionOf(file, i) === this.seen!.versions[i])
    );
  }

  private lookAround(): void {
    this.scope = this.scopeNow();
    const blocks = bookBlocks(this.scope.files).filter((b) => isIn(b, this.taken));
    if (!this.book || !same(blocks, this.book.blocks) || !this.lentAlike(this.book))
      this.newBook(blocks);
    const files = allFiles(this.scope);
    this.seen = { generation: this.store.generation, files, versions: files.map(versionOf) };
  }

  private lentAlike(book: Book): boolean {
    return same(allLent(book.lent), allLent(this.scope.lent));
  }

  /** The files that the job without options uses, whatever they say of its own. */
  private scopeNow(): Scope {
    if (!this.base) return scopeOf(this.file, this.store);
    const { scope } = this.base;
    return { ...scope, files: [this.file, ...scope.files.slice(1)] };
  }

  /** Pieces of work stand as long as nothing has changed that they are worked out from. */
  private newBook(blocks: readonly SourceBlock[]): void {
    const before = this.book && { book: this.book, env: this.env };
    const shared = this.base && same(blocks, this.base.book.blocks) ? this.base : undefined;
    this.book = shared?.book ?? new Book(blocks, this.scope.lent);
    this.env = shared?.env ?? envOf(this.book, 'middle');
    this.asBase =
      this.base !== undefined &&
      sameEnv(this.base.env, this.env) &&
      same(forWork(this.base.book.blocks), forWork(blocks));
    if (
      before &&
      this.lentAlike(before.book) &&
      sameEnv(before.env, this.env) &&
      same(forWork(before.book.blocks), forWork(blocks))
    )
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
    const known = this.kept.get(block) ?? this.ofBase(block);
    if (known && same(known.beside, beside)) {
      this.kept.set(block, known);
      return known.work;
    }
    const { made, plain: read } = plainlyRead(() => this.workedOut(block, beside, this.neighbours));
    const plain = made ? new Set([...read, ...rangesToPin(made.needs)]) : read;
    const laid =
      made &&
      (plain.size || !allFollowable(made.needs) ? { ...made, needs: opened(made.needs) } : made);
    const work = laid && tried(withLost(laid), this.trialOf(block, beside));
    if (work) this.kept.set(block, { work, beside, plain });
    return work;
  }

  private ofBase(block: SourceBlock): Kept | undefined {
    return this.asBase ? this.base!.kept.get(block) : undefined;
  }

  private trialOf(block: SourceBlock, beside: readonly SourceBlock[]): Trial {
    return {
      again: (other, code) => this.toldOf(other, beside, this.neighbours.with(block, other), code),
      alike: layingFor,
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
    { env, gang: own }: Pick<Job, 'env' | 'gang'> = this,
  ): Work | undefined {
    if (!factsOf(block, env)) return undefined;
    const partner = partnerOf(block, env.book);
    const gang = partner ? gangBy(partner, env) : own;
    const work = this.laidBy(gang, block, beside, neighbours, env);
    return partner ? doneBy(partner, work) : lacking(work, partnerLost(block, env.book));
  }

  private gangFor(block: SourceBlock): Gang {
    const partner = partnerOf(block, this.book);
    return partner ? gangBy(partner, this.env) : this.gang;
  }

  private laidBy(
    gang: Gang,
    block: SourceBlock,
    beside: readonly SourceBlock[],
    neighbours: Neighbours,
    env: Env,
  ): Work {
    const facts = factsOf(block, env)!;
    if (block.kind === 'wall') return looked(workWall(block, env, gang, neighbours), env);
    if (block.kind === 'pier') return workPier(facts, env, gang);
    return workRepair(facts, env, gang, beside[0]);
  }

  /** What there is to tell of a block when a way out is tried in it; a wall costs less so. */
  private toldOf(
    block: SourceBlock,
    beside: readonly SourceBlock[],
    neighbours: Neighbours,
    code: string,
  ) {
    if (block.kind !== 'wall' || !factsOf(block, this.env))
      return this.workedOut(block, beside, neighbours);
    return looked(toldOfWall(block, this.env, this.gangFor(block), neighbours, code), this.env);
  }

  /** What a repair is in: a wall or a pier, where the job has it; for a pier of a wall, that wall. */
  wallOf(repair: SourceBlock): SourceBlock | undefined {
    const line = (factsOf(repair, this.env) as BlockFacts).line('in');
    return standsIn(line, this.inForce, this.book);
  }

  get price(): JobPrice {
    this.priced ??= priceOf(this.pool.all(this.works), this.env, this.lost(), {
      works: this.works,
      taxes: this.taxLines.of(this.works),
      costs: this.costs,
    });
    return this.priced;
  }

  private lost(): readonly Gap[] {
    const { files, remarks, lent } = this.scope;
    const ofOptions = this.base ? (this.file as VariantFile).lost : [];
    const ofPartners = lostIn(lent.flatMap((each) => each.blocks));
    return [
      ...this.losses.in(files, remarks, this.works, this.inForce),
      ...ofPartners,
      ...ofOptions,
    ];
  }

  /** Options of its file: each priced beside the job, and the job with some of them taken. */
  get options(): Variants {
    this.variants ??= new Variants(this);
    return this.variants;
  }

  /** Blocks of its file that give an option. */
  get optionsWritten(): readonly SourceBlock[] {
    return this.optionBlocks;
  }

  /** The same job worked out afresh, nothing of it shared: in another language, say. */
  anew(): Job {
    const job = new Job(this.file, this.store, this.base, this.taken);
    job.refresh();
    return job;
  }

  /** The same job over another text of its file. */
  variantIn(file: VariantFile, taken: ReadonlySet<string>): Job {
    return new Job(file, this.store, this, taken);
  }

  /** The same file with another text, worked out by itself: what an edit would make of it. */
  withText(text: string): Job {
    const job = new Job(new SourceFile(this.file.name, text), this.store);
    job.refresh();
    return job;
  }

  /** The job that a block is worked out in: where it is done only with an option, the job with that option. */
  homeOf(block: SourceBlock): Job {
    const [option] = optionsOf(block);
    return option === undefined || this.base ? this : (this.options.with([option]) ?? this);
  }

  /** What a piece of work costs, and its part of the price. */
  shareOf(work: Work): WorkShare {
    return this.shares.ofWork(this.works.indexOf(work));
  }

  /** Costs that are taxed by themselves, and their parts of the price. */
  get itemShares(): readonly ItemShare[] {
    return this.shares.ofItems();
  }

  private get shares(): PriceShares {
    this.shared ??= sharesOf(this.works, this.price, this.env, this.costs);
    return this.shared;
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
    const works = this.works.map(({ block }, i) => ({ block, needs: needs[i]! }));
    const taxes = this.taxLines.of(this.works);
    return priceOf(needs, env, [], { works, taxes, costs: new Costs() });
  }

  /** What the past jobs that use this file show, where somebody has looked through them. */
  get pastOutputs(): readonly MeasuredOutput[] {
    const { store, file } = this;
    // A library that ships is nobody’s own, and is not written into.
    if (store.libraries.some((name) => store.library(name) === file)) return [];
    return store.pastOutputs?.(file.name) ?? [];
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
    // With options taken nothing else is told: what they bring up is among the findings of the file.
    if (this.base) return this.base.findings;
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
  /** Those that are done: without an option, or with one that is taken. */
  readonly blocks: readonly SourceBlock[];
  readonly options: readonly SourceBlock[];
  readonly walls: readonly SourceBlock[];
  readonly work: readonly SourceBlock[];
  /** None of them is worked out from another piece of work. */
  readonly alone: boolean;
}

function partOf(all: readonly SourceBlock[], taken: ReadonlySet<string>): FilePart {
  const blocks = all.filter((b) => isIn(b, taken));
  const options = all.filter((b) => b.kind === 'option');
  const walls = blocks.filter((b) => b.kind === 'wall');
  const work = blocks.filter((b) => b.kind !== undefined && WORK.has(b.kind));
  const alone = work.every((b) => b.kind !== 'repair') && !walls.some((b) => claimsOf(b).length);
  return { blocks, options, walls, work, alone };
}

/** To look for how a wall is bonded into a thick one takes as long as to work out so many lines, or less. */
const SEARCH_IN_LINES = 100;

const NONE_TAKEN: ReadonlySet<string> = new Set();

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
  'template',
  'job',
  'use',
  'firm',
  'bill-to',
  'travel',
  'cost',
  'price',
  'option',
  'record',
  'caution',
]);

/** Hours that are not known, as nobody knows who works them. */
function lacking(work: Work, gaps: readonly Gap[]): Work {
  if (!gaps.length) return work;
  const tasks = work.needs.tasks.map((t) => ({ ...t, hours: withGaps(t.hours, gaps) }));
  return { ...work, needs: { ...work.needs, tasks } };
}

/** Neither its hours are the firm’s own, nor the days that its height takes. */
function doneBy(by: Partner, work: Work): Work {
  const tasks = work.needs.tasks.map((task) => ({ ...task, by }));
  return { ...work, needs: { ...work.needs, tasks, leastDays: undefined } };
}

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
