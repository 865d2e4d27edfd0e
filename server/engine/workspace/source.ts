/** A file as lines and blocks. An edit re-reads the blocks it touches; the others keep their identity, and so all that was worked out from them. */
import { cutBlocks, splitLines } from '../../../grammar/blocks';
import { headingNamed } from '../../../grammar/lines';
import { read } from '../../../grammar/read/read';
import type { ReadBlock } from '../../../grammar/read/values';
import { type Place, placeOf, type Span } from '../../../shared/span';
import { isUtf16 } from './encoding';

/** A file larger than this is not read: no job is near it, and every part of the work costs by size. */
export const MOST_CHARACTERS = 4 * 1024 * 1024;

/** One block where it stands. `firstLine` moves when lines above it come or go; nothing else ever changes. */
export class SourceBlock {
  private known: ReadBlock | undefined;
  private words: readonly [kind?: string, name?: string] | undefined;

  constructor(
    readonly file: SourceFile,
    public firstLine: number,
    readonly lines: readonly string[],
  ) {
    if (!file.lazily) this.known = read(lines);
  }

  /** What its lines say. A block of a library that ships is read when it is first asked for, and so is one of a file that is only looked through. */
  get read(): ReadBlock {
    this.known ??= read(this.lines);
    return this.known;
  }

  get kind(): string | undefined {
    return this.heading[0];
  }

  /** The name its heading gives, if it gives one. */
  get name(): string | undefined {
    return this.heading[1];
  }

  /** Found once: every block of a file is asked at every keystroke. */
  private get heading(): readonly [kind?: string, name?: string] {
    this.words ??= this.known ? wordsOf(this.known) : headingWords(this.lines);
    return this.words;
  }

  place(span: Span): Place {
    return placeOf(this.file.name, this.firstLine, span);
  }

  /** The heading's own place, or the first line's. */
  get headPlace(): Place {
    const heading = this.read.syntax.heading;
    return this.place(heading?.span ?? { line: 0, start: 0, end: this.lines[0]?.length ?? 0 });
  }
}

/**
 * Kind and name of a heading, without reading the block. Only for libraries that ship, whose every block is
 * tested to say the same when it is read.
 */
export function headingWords(lines: readonly string[]): [kind?: string, name?: string] {
  const line = lines.find((text) => /^[^\s#]/.test(text)) ?? '';
  const [, kind, name] = /^(\S+)(?:\s+(\p{L}\S*))?/u.exec(line) ?? [];
  const heading = kind === undefined ? undefined : headingNamed(kind);
  if (!heading) return [];
  return [kind, heading.takes[0]?.slot === 'new-name' ? name : undefined];
}

function wordsOf({ heading }: ReadBlock): readonly [kind?: string, name?: string] {
  const name = heading?.values.name;
  return [heading?.kind.key, name?.kind === 'word' ? name.text : undefined];
}

/** Kinds of block that hold work; all others make up the book that work looks things up in. */
export const WORK: ReadonlySet<string> = new Set(['wall', 'pier', 'repair']);

function isWork({ kind }: SourceBlock): boolean {
  return kind !== undefined && WORK.has(kind);
}

/** A replacement of text between two positions, as an editor sends it. */
export interface TextChange {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly text: string;
}

/** Why a text is not read at all. */
export type Refusal = 'too-large' | 'utf-16';

function refusalOf(characters: number, text: string): Refusal | undefined {
  if (characters > MOST_CHARACTERS) return 'too-large';
  return isUtf16(text) ? 'utf-16' : undefined;
}

export class SourceFile {
  lines: string[] = [];
  blocks: SourceBlock[] = [];
  /** Set when the text is refused whole; then there are no blocks. */
  refused: Refusal | undefined;
  /** Changes with every change of a block that is not work: of what work may look up. */
  bookVersion = 0;
  /** Changes with every change. */
  version = 0;
  private characters = 0;

  constructor(
    readonly name: string,
    text: string,
    /** A library that ships with the tool: its blocks are read when they are asked for. */
    readonly shipped = false,
    /** Its blocks are read when they are asked for; until then their kinds and names are taken as they are written. */
    readonly lazily = shipped,
  ) {
    this.replaceAll(text);
  }

  get text(): string {
    return this.lines.join('\n');
  }

  replaceAll(text: string): void {
    this.version += 1;
    this.bookVersion += 1;
    this.characters = text.length;
    this.refused = refusalOf(text.length, text);
    this.lines = splitLines(text.replace(/^\ufeff/, ''));
    this.blocks = this.refused ? [] : this.cut(0, this.lines.length);
  }

  edit(change: TextChange): void {
    this.version += 1;
    const fresh = this.spliced(change);
    if (this.refused || this.characters > MOST_CHARACTERS) this.weighAgain();
    else this.readAgain(change, fresh);
  }

  /** The blocks that the change touched, with the new text in its lines already. */
  private readAgain(change: TextChange, fresh: number): void {
    const first = this.firstTouched(change.startLine);
    const last = this.blockAt(change.endLine);
    const from = this.blocks[first]?.firstLine ?? 0;
    const shift = fresh - (change.endLine - change.startLine + 1);
    const after = this.blocks.slice(last + 1);
    for (const block of after) block.firstLine += shift;
    const to = after[0]?.firstLine ?? this.lines.length;
    const old = this.blocks.slice(first, last + 1);
    const now = this.cut(from, to, old);
    if (
      ![...old, ...now].every(
        (block) => isWork(block) || (old.includes(block) && now.includes(block)),
      )
    )
      this.bookVersion += 1;
    this.blocks.splice(first, last - first + 1, ...now);
  }

  /** At the limit of what is read: all of it, or nothing. */
  private weighAgain(): void {
    this.bookVersion += 1;
    this.refused = refusalOf(this.characters, this.text);
    this.blocks = this.refused ? [] : this.cut(0, this.lines.length);
  }

  /** The block that holds a line. */
  blockAt(line: number): number {
    let low = 0;
    let high = this.blocks.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.blocks[middle]!.firstLine <= line) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** When a block's first line is edited it may no longer open one: then the block above takes it in. */
  private firstTouched(line: number): number {
    const at = this.blockAt(line);
    return at > 0 && this.blocks[at]!.firstLine === line ? at - 1 : at;
  }

  /** Puts the new text into the lines; how many lines it made. */
  private spliced(change: TextChange): number {
    const head = (this.lines[change.startLine] ?? '').slice(0, change.startColumn);
    const tail = (this.lines[change.endLine] ?? '').slice(change.endColumn);
    const fresh = splitLines(head + change.text + tail);
    const gone = this.lines.splice(
      change.startLine,
      change.endLine - change.startLine + 1,
      ...fresh,
    );
    this.characters += lengthOf(fresh) - lengthOf(gone);
    return fresh.length;
  }

  /** Blocks of these lines. An old one that still says the same is kept, and moved to where it stands now. */
  private cut(from: number, to: number, old: readonly SourceBlock[] = []): SourceBlock[] {
    const part = this.lines.slice(from, to);
    const starts = cutBlocks(part);
    const left = byText(old);
    return starts.map((start, i) => {
      const lines = part.slice(start, starts[i + 1] ?? part.length);
      const block = left.get(lines.join('\n'))?.shift();
      if (!block) return new SourceBlock(this, from + start, lines);
      block.firstLine = from + start;
      return block;
    });
  }
}

function lengthOf(lines: readonly string[]): number {
  return lines.reduce((total, line) => total + line.length + 1, 0);
}

/** In order, so that of two alike the first stays the first. Looked up, as an edit may touch every block of a file. */
function byText(blocks: readonly SourceBlock[]): Map<string, SourceBlock[]> {
  const found = new Map<string, SourceBlock[]>();
  for (const block of blocks) {
    const text = block.lines.join('\n');
    const alike = found.get(text);
    if (alike) alike.push(block);
    else found.set(text, [block]);
  }
  return found;
}
