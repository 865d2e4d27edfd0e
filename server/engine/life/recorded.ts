/** A record with lines more in the text of a file: nothing else of it changes, its line ends least of all. */
import { RECORD } from '../../../grammar/lines/record';
import type { Fault } from '../../../grammar/read/fault';
import { formatting } from '../ide/format';
import { type SourceBlock, SourceFile } from '../workspace/source';

/** The first words of its lines. */
export const RECORDED: readonly string[] = (RECORD.body ?? []).map((kind) => kind.key);

export interface Recorded {
  readonly text: string;
  /** Where the first of the lines stands, counted from one. */
  readonly line: number;
  /** The lines as they stand there. */
  readonly lines: readonly string[];
  /** What is wrong with them. */
  readonly fault?: Fault;
}

/** After the last line of the record; at the end of a text without one, in a block of its own. */
export function withRecorded(text: string, lines: readonly string[]): Recorded {
  const file = new SourceFile('', text);
  const record = file.blocks.find((block) => block.kind === 'record');
  const at = record ? lastLine(record) + 1 : endOf(file);
  const fresh = record ? lines : [...(at ? [''] : []), 'record', ...lines];
  const skip = fresh.length - lines.length;
  const raw = putIn(text, at, fresh);
  const now = new SourceFile('', raw);
  const fault = faultAt(now, at + skip, lines.length);
  const done = inOrder(raw, now, at + skip);
  const shown = new SourceFile('', done).lines.slice(at + skip, at + skip + lines.length);
  return { text: done, line: at + skip + 1, lines: shown.map((line) => line.trim()), fault };
}

/** Of its words: comments and empty lines after them may belong to what follows. */
function lastLine(block: SourceBlock): number {
  return block.firstLine + Math.max(0, ...block.read.syntax.lines.map((l) => l.span.line));
}

/** After the last line that says anything. */
function endOf({ lines }: SourceFile): number {
  return lines.findLastIndex((line) => line.trim()) + 1;
}

/** Puts lines before the line of that number, each with the end that most of the text has. */
function putIn(text: string, at: number, lines: readonly string[]): string {
  const eol = eolOf(text);
  const starts = startsOf(text);
  const from = starts[at] ?? text.length;
  const open = from === text.length && from > 0 && !/[\r\n]$/.test(text);
  const put = lines.map((line) => line + eol).join('');
  return text.slice(0, from) + (open ? eol : '') + put + text.slice(from);
}

function eolOf(text: string): string {
  const crlf = text.split('\r\n').length - 1;
  return crlf * 2 > text.split(/\r\n|\n|\r/).length - 1 ? '\r\n' : '\n';
}

function startsOf(text: string): number[] {
  return [0, ...[...text.matchAll(/\r\n|\n|\r/g)].map((m) => m.index + m[0].length)];
}

function faultAt(file: SourceFile, from: number, count: number): Fault | undefined {
  const block = file.blocks[file.blockAt(from)];
  const within = (line: number) => line >= from && line < from + count;
  return block?.read.faults.find(
    (f) => f.severity === 'error' && within(block.firstLine + f.span.line),
  );
}

/** The record in its columns, and nothing else of the file. */
function inOrder(text: string, file: SourceFile, line: number): string {
  const block = file.blocks[file.blockAt(line)]!;
  const last = lastLine(block);
  const starts = startsOf(text);
  const mark = text.startsWith('\ufeff') ? 1 : 0;
  const place = (at: number, column: number) => starts[at]! + column + (at === 0 ? mark : 0);
  const edits = formatting(file).filter((e) => e.startLine >= block.firstLine && e.endLine <= last);
  return edits.reduceRight((now, e) => {
    const [from, to] = [place(e.startLine, e.startColumn), place(e.endLine, e.endColumn)];
    return now.slice(0, from) + e.text.replaceAll('\n', eolOf(text)) + now.slice(to);
  }, text);
}
