/**
 * One file worked out. After an edit only the blocks that changed are worked out again: the others are the
 * same objects, and as long as the book is too, so are their results.
 */

import type { ReadLine } from '../../../grammar/read/values';
import type { Finding } from '../../../shared/finding';
import type { Needs } from '../brickwork/needs';
import type { Work } from '../brickwork/work';
import { findingsOf } from '../findings/all';
import type { MeasuredOutput } from '../firm/outputs';
import type { Gang } from '../labour/gang';
import { optionsOf } from '../life/in-option';
import { Variants } from '../life/variant';
import type { VariantFile } from '../life/variant-block';
import { Costs } from '../price/costs';
import { Losses, lostIn } from '../price/lost';
import { NeedsPool } from '../price/pool';
import { type ItemShare, type PriceShares, sharesOf, type WorkShare } from '../price/shares';
import { TaxLines } from '../price/tax/own';
import { type JobPrice, priceOf } from '../price/total';
import { Runs, type Spread, spreadOf } from '../ranges/of-job';
import { type Book, wordOf } from '../resolve/book';
import type { Env } from '../resolve/env';
import type { FileStore, Scope } from '../resolve/uses';
import type { Gap } from '../working/term';
import { Around } from './around';
import { type FilePart, partOf } from './file-part';
import { Groups, joined } from './groups';
import { KeptWork } from './kept-work';
import { type SourceBlock, SourceFile, WORK } from './source';
import type { In } from './work-out';

/** What is made of the job as it stands when somebody first asks for it. */
interface Made {
  price?: JobPrice;
  shares?: PriceShares;
  findings?: readonly Finding[];
  /** `null`: no range moves the price. */
  spread?: Spread | null;
}

const NONE_TAKEN: ReadonlySet<string> = new Set();

export class Job {
  works: readonly Work[] = [];
  private readonly around: Around;
  private readonly kept: KeptWork;
  private readonly parts = new Groups<SourceBlock, FilePart>((of) => partOf(of, this.taken));
  private readonly pool = new NeedsPool();
  private readonly losses = new Losses();
  private readonly costs = new Costs();
  private readonly taxLines = new TaxLines();
  private readonly runs = new Runs();
  private made: Made = {};
  private optionBlocks: readonly SourceBlock[] = [];
  private variants: Variants | undefined;

  constructor(
    readonly file: SourceFile,
    private readonly store: FileStore,
    /** With options taken: the job as its file has it, and which they are. */
    private readonly base?: Job,
    readonly taken: ReadonlySet<string> = NONE_TAKEN,
  ) {
    this.around = new Around(file, store, taken, base?.around);
    this.kept = new KeptWork(this.around, base?.kept);
  }

  /** Brings everything up to the text as it stands now. */
  refresh(): void {
    const anew = this.around.refresh();
    const parts = this.parts.of(this.file.blocks);
    this.optionBlocks = joined(parts.map((part) => part.options));
    this.variants?.changed();
    this.made = {};
    this.works = this.kept.refresh(parts, anew);
  }

  get scope(): Scope {
    return this.around.scope;
  }

  get book(): Book {
    return this.around.book;
  }

  get env(): Env {
    return this.around.env;
  }

  get gang(): Gang {
    return this.around.gang;
  }

  /** The piece of work of a block as it is now. */
  workAt(block: SourceBlock | undefined): Work | undefined {
    return this.kept.at(block);
  }

  /** Who asks for a few ways out has all of them tried, whatever was asked before. */
  anewTried(): void {
    this.kept.anewTried();
  }

  /** What a repair is in: a wall or a pier, where the job has it; for a pier of a wall, that wall. */
  wallOf(repair: SourceBlock): SourceBlock | undefined {
    return this.kept.wallOf(repair);
  }

  get price(): JobPrice {
    this.made.price ??= priceOf(this.pool.all(this.works), this.env, this.lost(), this.pieces);
    return this.made.price;
  }

  private get pieces() {
    return { works: this.works, taxes: this.taxLines.of(this.works), costs: this.costs };
  }

  private lost(): readonly Gap[] {
    const { files, remarks, lent } = this.scope;
    const ofOptions = this.base ? (this.file as VariantFile).lost : [];
    const ofPartners = lostIn(lent.flatMap((each) => each.blocks));
    return [
      ...this.losses.in(files, remarks, this.works, this.kept.inForce),
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
    this.made.shares ??= sharesOf(this.works, this.price, this.env, this.costs);
    return this.made.shares;
  }

  /** Between what and what the price lies, and on which ranges it hangs; nothing when none moves it. */
  get spread(): Spread | undefined {
    if (this.made.spread === undefined) this.made.spread = spreadOf(this, this.runs) ?? null;
    return this.made.spread ?? undefined;
  }

  /** Ranges that a piece of work was laid out by. */
  plainOf(work: Work): ReadonlySet<object> {
    return this.kept.plainOf(work);
  }

  /** What a piece of work takes when its ranges are picked otherwise: the same engine run again. */
  needsAt(work: Work, at: In): Needs | undefined {
    return this.kept.needsAt(work, at);
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
    this.made.findings ??= findingsOf(this);
    return this.made.findings;
  }

  /** Whether the file is a job at all, and not a firm’s file or a library. */
  get isJob(): boolean {
    return this.file.blocks.some(
      (b) => b.kind === 'job' || (b.kind !== undefined && WORK.has(b.kind)),
    );
  }
}
