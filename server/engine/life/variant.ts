/** The job with options taken: the same engine over the text that an option makes of it. */

import { clipped } from '../../../grammar/read/fault';
import { phrase } from '../../../shared/phrase';
import type { Gap, Origin } from '../working/term';
import type { Job } from '../workspace/job';
import { type Derived, Deriving } from './derive';
import { type Option, optionsIn } from './option';
import { type PricedOption, pricedOption } from './priced';
import { VariantFile } from './variant-block';

/** So many sets of options are kept from one state of a job to the next; more are worked out anew. */
const MOST_KEPT = 64;

/** So many options are priced side by side: each is the whole job once more. */
export const MOST_PRICED = 32;

/** A job with a set of options taken, kept from one state of the job to the next. */
class Variant {
  readonly job: Job;
  private readonly file: VariantFile;
  private readonly deriving = new Deriving();
  private derived: Derived | undefined;

  constructor(
    private readonly of: Job,
    readonly names: readonly string[],
  ) {
    this.file = new VariantFile(of.file);
    this.job = of.variantIn(this.file, new Set(names));
  }

  /** Nothing is worked out before somebody asks. */
  changed(): void {
    this.derived = undefined;
  }

  now(options: readonly Option[]): Derived {
    if (!this.derived) {
      const taken = options.filter(({ name }) => this.names.includes(name));
      this.derived = this.deriving.of(this.of.file.blocks, taken);
      this.file.take(this.derived.blocks, lostIn(taken, this.derived));
      this.job.refresh();
    }
    return this.derived;
  }
}

/** One is enough to leave a price incomplete, and nobody reads more. */
const MOST_LOST = 100;

/** A line of an option that cannot be read or names nothing: the price with it is not complete. */
function lostIn(taken: readonly Option[], { troubles }: Derived): Gap[] {
  const unread = taken.flatMap(({ block }) =>
    block.read.faults
      .filter((fault) => fault.severity === 'error')
      .map(({ span }) => ({ block, span })),
  );
  const idle = troubles.map(({ option, step }) => ({
    block: option.block,
    span: step.syntax.span,
  }));
  return [...unread, ...idle].slice(0, MOST_LOST).map((origin) => ({
    what: phrase`the line “${clipped(textAt(origin))}” is left out`,
    origin,
    told: true,
  }));
}

function textAt({ block, span }: Origin): string {
  return block.lines[span.line]!.trim();
}

export class Variants {
  private readonly kept = new Map<string, Variant>();
  private written: readonly Option[] | undefined;
  private byName: ReadonlyMap<string, Option> | undefined;
  private prices: readonly PricedOption[] | undefined;

  constructor(private readonly job: Job) {}

  /** The job has changed. */
  changed(): void {
    this.written = undefined;
    this.byName = undefined;
    this.prices = undefined;
    for (const variant of this.kept.values()) variant.changed();
  }

  /** In the order of the file. */
  get all(): readonly Option[] {
    this.written ??= optionsIn(this.job.optionsWritten);
    return this.written;
  }

  named(name: string): Option | undefined {
    this.byName ??= new Map(this.all.map((option) => [option.name, option]));
    return this.byName.get(name);
  }

  /** The job with these options taken; nothing when it has none of that name. With none it is the job itself. */
  with(names: readonly string[]): Job | undefined {
    if (!names.length) return this.job;
    if (!names.every((name) => this.named(name))) return undefined;
    const variant = this.variant(names);
    variant.now(this.all);
    return variant.job;
  }

  /** What an option does to the text, and which of its lines do nothing. */
  derived(name: string): Derived {
    return this.variant([name]).now(this.all);
  }

  private variant(names: readonly string[]): Variant {
    const sorted = [...new Set(names)].sort();
    const key = sorted.join(' ');
    const known = this.kept.get(key) ?? new Variant(this.job, sorted);
    if (this.kept.size >= MOST_KEPT && !this.kept.has(key)) this.kept.clear();
    this.kept.set(key, known);
    return known;
  }

  /** The first {@link MOST_PRICED} options, each alone, beside the job without any. */
  get priced(): readonly PricedOption[] {
    this.prices ??= this.all.slice(0, MOST_PRICED).map((option) => pricedOption(option, this.job));
    return this.prices;
  }
}
