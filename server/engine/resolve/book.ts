/**
 * What a job can look up: named things, and settings with the order in which files are asked. A work block
 * is worked out against a book; as long as the book is the same object, its result stands.
 */
import type { NamedKind } from '../../../grammar/lines/slots';
import type { ReadLine, Value } from '../../../grammar/read/values';
import type { Origin } from '../working/term';
import { type SourceBlock, type SourceFile, WORK } from '../workspace/source';
import type { Lent } from './partners';

/** Kinds of block that may stand only once in a file: the first holds, and a second is a finding. */
export const ONCE: ReadonlySet<string> = new Set([
  'perpend',
  'template',
  'job',
  'firm',
  'bill-to',
  'price',
  'travel',
  'record',
]);

/** A line found in some block of the scope. */
export interface Setting {
  readonly line: ReadLine;
  readonly block: SourceBlock;
}

type SettingKind =
  | 'job'
  | 'firm'
  | 'defaults'
  | 'labour'
  | 'output'
  | 'serving'
  | 'travel'
  | 'price'
  | 'currencies'
  | 'record';

export class Book {
  private readonly named = new Map<string, Map<string, SourceBlock[]>>();
  private readonly lines = new Map<string, readonly Setting[]>();
  private readonly nearest = new Map<string, Setting | null>();
  private readonly headings = new Map<string, SourceBlock[]>();

  /** `blocks` in scope order: the job's own first. `lent`: what partners’ files give for the work that they do. */
  constructor(
    readonly blocks: readonly SourceBlock[],
    readonly lent: readonly Lent[] = [],
  ) {
    for (const block of blocks) this.take(block);
  }

  private take(block: SourceBlock): void {
    const kind = block.kind;
    if (!kind) return;
    if (ONCE.has(kind) && this.blocksOf(kind).at(-1)?.file === block.file) return;
    push(this.headings, kind, block);
    if (block.name !== undefined) this.name(kind, block.name, block);
  }

  /** Only the first of a file: a second of the same name is a finding, not another fact. */
  private name(kind: string, name: string, block: SourceBlock): void {
    const names = this.named.get(kind) ?? new Map<string, SourceBlock[]>();
    this.named.set(kind, names);
    const same = names.get(name);
    if (!same) names.set(name, [block]);
    else if (same.at(-1)!.file !== block.file) same.push(block);
  }

  /** The nearest of that name. */
  find(kind: NamedKind, name: string): SourceBlock | undefined {
    return this.named.get(kind)?.get(name)?.[0];
  }

  /** All of that name, nearest first: a firm’s file may give the price of a brick that a library gives the size of. */
  findAll(kind: NamedKind, name: string): readonly SourceBlock[] {
    return this.named.get(kind)?.get(name) ?? [];
  }

  names(kind: NamedKind): readonly string[] {
    if (kind === 'trade') return this.all('labour', 'trade').map((s) => s.line.syntax.key!.text);
    if (kind === 'measure')
      return this.all('measures', 'measure').map((s) => s.line.syntax.key!.text);
    if (kind === 'zone') return this.all('limit', 'zone').map((s) => wordOf(s.line.values.name));
    return [...(this.named.get(kind)?.keys() ?? [])];
  }

  /** Every block of a kind, nearest first. */
  blocksOf(kind: string): readonly SourceBlock[] {
    return this.headings.get(kind) ?? [];
  }

  /** The nearest line of that kind. Blocks farther off are not even read. */
  setting(kind: SettingKind, key: string): Setting | undefined {
    const asked = `${kind} ${key}`;
    const known = this.nearest.get(asked);
    if (known !== undefined) return known ?? undefined;
    const home = this.blocksOf(kind).find((block) => linesOf(block, key).length > 0);
    const found = home && linesOf(home, key)[0];
    this.nearest.set(asked, found ?? null);
    return found;
  }

  /** All such lines of the nearest file that has any. */
  settings(kind: SettingKind, key: string): readonly Setting[] {
    const all = this.all(kind, key);
    return all.filter((s) => s.block.file === all[0]!.block.file);
  }

  /** All such lines of every file, nearest first. */
  all(kind: string, key: string): readonly Setting[] {
    const known = this.lines.get(`${kind} ${key}`);
    if (known) return known;
    const found = this.blocksOf(kind).flatMap((block) => linesOf(block, key));
    this.lines.set(`${kind} ${key}`, found);
    return found;
  }
}

function linesOf(block: SourceBlock, key: string): Setting[] {
  const lines = block.read.heading?.body ?? [];
  return lines.filter((line) => line.kind.key === key).map((line) => ({ line, block }));
}

function push<T>(map: Map<string, T[]>, key: string, item: T): void {
  const list = map.get(key);
  if (list) list.push(item);
  else map.set(key, [item]);
}

export function wordOf(value: Value | undefined): string {
  return value && 'text' in value ? value.text : '';
}

/** Where a value stands. */
export function originOf(block: SourceBlock, value: { readonly span: Origin['span'] }): Origin {
  return { block, span: value.span };
}

/** Where a whole line stands. */
export function lineOrigin(block: SourceBlock, line: ReadLine): Origin {
  return { block, span: line.syntax.span };
}

/** The blocks of a scope that are not work. */
export function bookBlocks(files: readonly SourceFile[]): SourceBlock[] {
  return files.flatMap((file, i) =>
    file.blocks.filter((b) => b.kind !== undefined && (i > 0 || !WORK.has(b.kind))),
  );
}
