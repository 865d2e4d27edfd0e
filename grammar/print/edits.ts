/** The way from a text to its canonical form, as few changes of lines as it takes. */

/** A line of the canonical text; `source` is the line it came from, absent for one put in. */
export interface LaidLine {
  readonly source?: number;
  readonly text: string;
}

export interface SourceLine {
  readonly text: string;
  /** How it ends: CRLF, LF, CR, or nothing for the last. */
  readonly end: string;
}

/** Replaces a piece of the text, lines and columns counted from 0, by `text`. */
export interface FormatEdit {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly text: string;
}

/**
 * Edits in the order of the text, none touching another. `laid` keeps the order of the lines; the ones
 * it leaves out are taken away. `lead` columns at the very beginning are left alone; `end` is what stands after the last line.
 */
export function editsTo(
  laid: readonly LaidLine[],
  source: readonly SourceLine[],
  eol: string,
  lead: number,
  end = laid.length ? eol : '',
): FormatEdit[] {
  const making = new Making(source, lead);
  for (const line of laid) making.line(line, eol);
  making.rest(end);
  return making.edits;
}

class Making {
  readonly edits: FormatEdit[] = [];
  /** Up to here the text is as wanted. */
  private line0 = 0;
  private column0: number;
  /** What must stand here before the next kept line. */
  private owed = '';

  constructor(
    private readonly source: readonly SourceLine[],
    lead: number,
  ) {
    this.column0 = lead;
  }

  line(laid: LaidLine, eol: string): void {
    if (laid.source === undefined) {
      this.owed += laid.text + eol;
      return;
    }
    this.passEnd(laid.source, eol);
    const from = laid.source === 0 ? this.lead() : 0;
    this.replace(laid.source, from, this.owed);
    const written = this.source[laid.source]!.text;
    this.replace(laid.source, written.length, laid.text);
    this.owed = eol;
  }

  /** After the last kept line. */
  rest(end: string): void {
    const last = this.source.length - 1;
    this.replace(last, this.source[last]!.text.length, end);
  }

  /** The line's end is left alone when it is the one wanted. */
  private passEnd(next: number, eol: string): void {
    if (!this.owed || this.line0 === next || this.source[this.line0]!.end !== eol) return;
    this.line0 += 1;
    this.column0 = 0;
    this.owed = this.owed.slice(eol.length);
  }

  private lead(): number {
    return this.line0 === 0 ? this.column0 : 0;
  }

  /** Makes the text from where we are to that place say `text`, and goes there. */
  private replace(line: number, column: number, text: string): void {
    if (this.between(line, column) !== text)
      this.push({
        startLine: this.line0,
        startColumn: this.column0,
        endLine: line,
        endColumn: column,
        text,
      });
    this.line0 = line;
    this.column0 = column;
  }

  private between(line: number, column: number): string {
    if (line === this.line0) return this.source[line]!.text.slice(this.column0, column);
    const first = this.source[this.line0]!;
    const middle = this.source.slice(this.line0 + 1, line).map((l) => l.text + l.end);
    const last = this.source[line]!.text.slice(0, column);
    return first.text.slice(this.column0) + first.end + middle.join('') + last;
  }

  private push(edit: FormatEdit): void {
    const before = this.edits.at(-1);
    const touches = before?.endLine === edit.startLine && before.endColumn === edit.startColumn;
    if (!touches) this.edits.push(edit);
    else
      this.edits[this.edits.length - 1] = {
        ...edit,
        startLine: before.startLine,
        startColumn: before.startColumn,
        text: before.text + edit.text,
      };
  }
}
