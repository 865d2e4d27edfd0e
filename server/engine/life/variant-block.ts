/** A block with the lines of an option in it, and the file that has it: what is told of it is told of the text as written. */
import type { Place, Span } from '../../../shared/span';
import type { Gap } from '../working/term';
import { SourceBlock, SourceFile, WORK } from '../workspace/source';

/** Where a line of a changed block is written: columns there are so many more. */
export interface LineFrom {
  readonly block: SourceBlock;
  readonly line: number;
  readonly shift: number;
}

/** Nothing of it is in any file: its places are those of the lines it was made of. */
export class VariantBlock extends SourceBlock {
  constructor(
    readonly of: SourceBlock,
    lines: readonly string[],
    /** One for each line. Moves with the blocks that the lines are from. */
    public from: readonly LineFrom[],
  ) {
    super(of.file, of.firstLine, lines);
  }

  override place(span: Span): Place {
    const { block, line, shift } = this.written(span.line);
    const start = Math.max(0, span.start + shift);
    return block.place({ line, start, end: Math.max(start, span.end + shift) });
  }

  /** Where a line of it is written. */
  written(line: number): LineFrom {
    return this.from[line] ?? { block: this.of, line: 0, shift: 0 };
  }
}

/** The file of a job with options taken. Its lines are the written ones; its blocks are what counts. */
export class VariantFile extends SourceFile {
  /** Lines of the options that could not be taken in. */
  lost: readonly Gap[] = [];

  constructor(private readonly of: SourceFile) {
    super(of.name, '');
    this.lines = of.lines;
  }

  /** Brings it up to the file as it is now. */
  take(blocks: SourceBlock[], lost: readonly Gap[]): void {
    this.lost = lost;
    this.version += 1;
    const changed = !alike(this.blocks.filter(isBook), blocks.filter(isBook));
    if (changed) this.bookVersion += 1;
    this.lines = this.of.lines;
    this.refused = this.of.refused;
    this.blocks = blocks;
  }

  /** As it would be written by hand. */
  override get text(): string {
    return this.blocks.map((block) => block.lines.join('\n')).join('\n');
  }
}

function isBook({ kind }: SourceBlock): boolean {
  return kind === undefined || !WORK.has(kind);
}

function alike(a: readonly SourceBlock[], b: readonly SourceBlock[]): boolean {
  return a.length === b.length && a.every((block, i) => block === b[i]);
}
