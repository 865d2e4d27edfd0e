/** Partner firms: their own rates and outputs, for work that a line gives to them and for nothing else. */

import { phrase } from '../../../shared/phrase';
import type { Gap } from '../working/term';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { Book, lineOrigin, wordOf } from './book';
import type { Env } from './env';

/** What a job takes of a partner’s file. */
export interface Lent {
  /** The `partner` block. */
  readonly block: SourceBlock;
  /** Its file and those that it uses, nearest first, without libraries. */
  readonly files: readonly SourceFile[];
  /** Of those, the blocks that count. */
  readonly blocks: readonly SourceBlock[];
}

export interface Partner {
  readonly name: string;
  readonly title: string;
  /** Its own labour, outputs and servings, and behind them all that the job has. */
  readonly book: Book;
}

/** Its bricks, materials and mixes are not the job’s: whoever lays them, the job buys. */
const LENT: ReadonlySet<string> = new Set(['labour', 'output', 'serving']);

export function lentBlocks(files: readonly SourceFile[]): SourceBlock[] {
  return files.flatMap((file) => file.blocks.filter((b) => LENT.has(b.kind ?? '')));
}

/** All that a change of would change the work of partners. */
export function allLent(lent: readonly Lent[]): readonly SourceBlock[] {
  return lent.flatMap(({ block, blocks }) => [block, ...blocks]);
}

const known = new WeakMap<Book, Map<string, Partner>>();

/** The nearest of that name; nothing where no block gives it, or its file is not there: then a finding says so. */
function partnerNamed(book: Book, name: string): Partner | undefined {
  const block = book.find('partner', name);
  const lent = block && book.lent.find((each) => each.block === block);
  if (!lent) return undefined;
  const partners = known.get(book) ?? new Map<string, Partner>();
  known.set(book, partners);
  const partner = partners.get(name) ?? {
    name,
    title: wordOf(block.read.heading?.values.title) || name,
    book: new Book([...lent.blocks, ...book.blocks]),
  };
  partners.set(name, partner);
  return partner;
}

/** Who does a piece of work; nothing where the firm itself does. */
export function partnerOf(block: SourceBlock, book: Book): Partner | undefined {
  if (!book.lent.length) return undefined;
  const name = partnerSaid(block);
  return name ? partnerNamed(book, name) : undefined;
}

/** A partner that no file gives: then nobody knows the hours of the work. */
export function partnerLost(block: SourceBlock, book: Book): Gap[] {
  const name = partnerSaid(block);
  if (!name || book.find('partner', name)) return [];
  const line = block.read.heading!.body.find((l) => l.kind.key === 'by')!;
  return [
    { what: phrase`no partner is called “${name}”`, origin: lineOrigin(block, line), told: true },
  ];
}

/** The name that a piece of work gives; empty where it gives none. */
export function partnerSaid(block: SourceBlock): string {
  const line = block.read.heading?.body.find((l) => l.kind.key === 'by');
  return wordOf(line?.values.partner);
}

const envs = new WeakMap<Env, Map<Partner, Env>>();

/** The same environment with the partner’s book: one for each, as facts are kept by it. */
export function envBy(partner: Partner, env: Env): Env {
  const all = envs.get(env) ?? new Map<Partner, Env>();
  envs.set(env, all);
  const own = all.get(partner) ?? { ...env, book: partner.book };
  all.set(partner, own);
  return own;
}
