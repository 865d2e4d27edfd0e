/** Things with names: where they are written, and who means them. */
import type { NamedKind } from '../../../grammar/lines/slots';
import type { ReadLine, Value } from '../../../grammar/read/values';
import type { Span } from '../../../shared/span';
import { isTrade } from '../labour/gang';
import { type Book, wordOf } from '../resolve/book';
import { type SourceBlock, type SourceFile, WORK } from '../workspace/source';
import type { Said } from './said';
import { type Spot, textOf } from './spot';

/** A file and what it can look up: a job, or as much of it as is asked about names. */
export interface Sight {
  readonly file: SourceFile;
  readonly book: Book;
}

/** A heading or line that gives a name. */
export interface Named {
  readonly kind: NamedKind;
  readonly block: SourceBlock;
  readonly line: ReadLine;
  readonly name: string;
  /** Where the name itself stands, in its block. */
  readonly span: Span;
}

/** Everything of these kinds that may be named at a place, nearest first. `block` is the one the place is in. */
export function namedThings(
  job: Sight,
  kinds: readonly NamedKind[],
  block: SourceBlock | undefined,
): Named[] {
  return kinds.flatMap((kind) => thingsOf(job, kind, block));
}

/** Those of one name. A firm’s file may say more of a brick that a library gives: so there can be several. */
export function thingsNamed(
  job: Sight,
  kinds: readonly NamedKind[],
  name: string,
  block: SourceBlock | undefined,
): Named[] {
  return namedThings(job, kinds, block).filter((thing) =>
    isCounted(thing.kind) ? isTrade(thing.name, name) : thing.name === name,
  );
}

/** Those that a value of a line means. A pier in a wall is known there, and where the wall is named beside it. */
export function thingsMeant(
  job: Sight,
  { slot, value, names }: Said,
  { block, read }: Pick<Spot, 'block' | 'read'>,
): Named[] {
  const name = textOf(value);
  if (name === undefined || !read) return [];
  const said = { block, line: read, key: 'key' in slot ? slot.key : '' };
  return thingsNamed(job, names, name, block).filter((thing) => isKnown(thing, said));
}

/** Where a name is used. */
export interface Use {
  readonly block: SourceBlock;
  readonly line: ReadLine;
  /** Under which its line has it. */
  readonly key: string;
}

/** Blocks that speak of openings and piers of any wall. */
const SPEAKS: ReadonlySet<string> = new Set(['option', 'template']);

/** Whether a name can mean the thing at a place: an opening in its own wall, a pier where its wall is named. */
export function isKnown(thing: Named, { block, line, key }: Use): boolean {
  if (SPEAKS.has(block.kind ?? '')) return true;
  if (thing.kind === 'opening') return block === thing.block;
  if (thing.kind !== 'pier') return true;
  if (!isInner(thing)) return key !== 'pier';
  return key === 'pier' && wordOf(line.values.wall) === thing.block.name;
}

/** Given by a line within a block, not by its heading. */
export function isInner({ block, line }: Named): boolean {
  return block.read.heading !== line;
}

function thingsOf(job: Sight, kind: NamedKind, block: SourceBlock | undefined): Named[] {
  if (kind === 'opening') return innerOf(kind, openingsFrom(job, block));
  if (kind === 'zone') return innerOf(kind, job.book.blocksOf('limit'));
  if (isCounted(kind)) return countedThings(job, kind);
  if (!WORK.has(kind)) return job.book.blocksOf(kind).flatMap((b) => asNamed(kind, b) ?? []);
  const own = job.file.blocks.filter((b) => b.kind === kind);
  const other = job.book.blocksOf(kind);
  const top = [...own, ...other].flatMap((b) => asNamed(kind, b) ?? []);
  return [...top, ...innerOf(kind, job.file.blocks)];
}

/** An opening is known in its own wall, and in an option or a template. */
function openingsFrom(job: Sight, block: SourceBlock | undefined): readonly SourceBlock[] {
  if (block?.kind === 'option' || block?.kind === 'template') return job.file.blocks;
  return block ? [block] : [];
}

function asNamed(kind: NamedKind, block: SourceBlock): Named | undefined {
  const line = block.read.heading;
  return line && given(kind, block, line);
}

function given(kind: NamedKind, block: SourceBlock, line: ReadLine): Named | undefined {
  const name: Value | undefined = line.values.name;
  if (name?.kind !== 'word') return undefined;
  return { kind, block, line, name: name.text, span: name.span };
}

/** Openings and piers of a wall, zones of a limit. */
function innerOf(kind: NamedKind, blocks: readonly SourceBlock[]): Named[] {
  return blocks.flatMap((block) =>
    (block.read.heading?.body ?? []).flatMap((line) =>
      line.kind.key === kind ? (given(kind, block, line) ?? []) : [],
    ),
  );
}

/** Trades and measures: their names stand where the word of a line does. */
export function isCounted(kind: NamedKind | undefined): kind is 'trade' | 'measure' {
  return kind === 'trade' || kind === 'measure';
}

function countedThings(job: Sight, kind: 'trade' | 'measure'): Named[] {
  const heading = kind === 'trade' ? 'labour' : 'measures';
  return job.book.all(heading, kind).map(({ block, line }) => named(kind, block, line));
}

function named(kind: NamedKind, block: SourceBlock, line: ReadLine): Named {
  const key = line.syntax.key!;
  return { kind, block, line, name: key.text, span: key.span };
}

export function titleOf(thing: Named): string {
  return wordOf(thing.line.values.title);
}

/** The name that a line gives at a position, as a thing. */
export function givenAt(spot: Spot): Named | undefined {
  const { read, block } = spot;
  if (!read) return undefined;
  const kind = read.kind.key as NamedKind;
  if (isCounted(kind) && read.kind.open) return named(kind, block, read);
  return read.kind.takes[0]?.slot === 'new-name' ? given(kind, block, read) : undefined;
}

/** A block's own file, in words: its last part. */
export function shortName(file: SourceFile): string {
  return file.name.split(/[\\/]/).at(-1)!;
}
