/** What a piece of work holds that a caution may be about: each with the line that brings it up, and why in words. */
import type { BROUGHT_UP_BY } from '../../../grammar/lines/caution';
import type { Work } from '../brickwork/work';
import { type Ends, isRange } from '../resolve/ends';
import type { BlockFacts, Env } from '../resolve/env';
import type { Origin } from '../working/term';

export type What = keyof typeof BROUGHT_UP_BY;

export type Than = 'over' | 'from' | 'under' | 'within';

/** A limit as a caution says it. */
export interface Limit {
  readonly than: Than;
  /** Base units: mm, kg, bricks. */
  readonly amount: number;
  /** As it is written there: `20 kg`. */
  readonly text: string;
}

export interface Held {
  readonly origin: Origin;
  /** What is measured, in base units, between what and what; nothing where it could not be worked out, so that it may be any. */
  readonly amount?: Ends;
  /** Why here: “the top leans 40 mm”. Nothing where the line says it all. */
  readonly why?: (limit?: Limit) => string;
  /** It is of goods that other work may take too: told once for all of it. */
  readonly goods?: boolean;
  /** It is of this very work, though it is not measured. */
  readonly own?: boolean;
  /** The reason says the limit itself. */
  readonly saysLimit?: boolean;
}

export interface Holding {
  /** By word: {@link BROUGHT_UP_BY}, and materials by their names. */
  readonly held: ReadonlyMap<string, readonly Held[]>;
  /** Words that a line answers, whether with yes or with no. */
  readonly said: ReadonlySet<string>;
}

/** A piece of work with what stands there: its own lines, then those of the wall that a repair is in. */
export interface Standing {
  readonly work: Work;
  readonly facts: BlockFacts;
  /** The wall that a repair is in, where the job has it. */
  readonly wall?: Work;
  readonly env: Env;
}

export class Gathered implements Holding {
  readonly held = new Map<string, Held[]>();
  readonly said = new Set<string>();

  /** @param home the name of the work: for what no line of its own brings up */
  constructor(readonly home: Origin) {}

  add(what: What, held: Held): void {
    this.named(what, held);
  }

  /** By any word: a material of the job, whatever it is called. */
  named(what: string, held: Held): void {
    this.said.add(what);
    const list = this.held.get(what);
    const here = { ...held, origin: this.here(held.origin) };
    if (list) list.push(here);
    else this.held.set(what, [here]);
  }

  /** A line of a library or a firm’s file is told of where the work is named that takes it. */
  private here(origin: Origin): Origin {
    return origin.block === this.home.block ? origin : this.home;
  }
}

/** The first line of one of these words, in the block itself or in a heading within it. */
export function lineIn(facts: BlockFacts, keys: readonly string[]): Origin | undefined {
  for (const key of keys) {
    const own = facts.line(key);
    if (own) return own.origin;
    for (const inner of facts.heading.body)
      for (const line of inner.body)
        if (line.kind.key === key) return { block: facts.block, span: line.syntax.span };
  }
  return undefined;
}

/** The end of a range that is to be feared where a limit is set: the high one of what may not be over it. */
export function worst({ least, most }: Ends, limit: Limit): number {
  return limit.than === 'over' || limit.than === 'from' ? most : least;
}

/** Words for one figure, or for the end of a range that stands for it. */
export interface Words {
  readonly one: (amount: number) => string;
  readonly most: (amount: number) => string;
  readonly least: (amount: number) => string;
}

export function inWords(ends: Ends, words: Words, limit?: Limit): string {
  if (!isRange(ends)) return words.one(ends.most);
  const low = limit !== undefined && worst(ends, limit) === ends.least;
  return low ? words.least(ends.least) : words.most(ends.most);
}
