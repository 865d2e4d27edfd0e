/** A template with an answer in it, and the job that it is in the end. */
import type { Fault } from '../../../../grammar/read/fault';
import { SourceFile } from '../../workspace/source';
import { type Ask, askable, askPlace, templateOf } from './index';

export interface Answered {
  readonly text: string;
  /** Where the line stands in it, counted from nought. */
  readonly line: number;
  /** What is wrong with it. */
  readonly fault?: Fault;
}

/** So long an answer is none. */
const LONGEST = 2000;

/** Nothing where the question asks of nothing. The answer as it is said; or, where a text is wanted, in quotation marks. */
export function answered(text: string, ask: Ask, answer: string): Answered | undefined {
  const said = answer
    .slice(0, LONGEST)
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .trim();
  const plain = written(text, ask, said);
  if (!plain?.fault || /["“]/.test(said.charAt(0))) return plain;
  const quoted = written(text, ask, `"${said.replace(/["\\]/g, '\\$&')}"`);
  return quoted && !quoted.fault ? quoted : plain;
}

function written(text: string, ask: Ask, answer: string): Answered | undefined {
  const file = new SourceFile('', text);
  const found = askPlace(ask, askable(file.blocks));
  if (!('place' in found)) return undefined;
  const { put, out } = found.place;
  const { block } = found.target;
  const old = block.lines[put.at]!;
  const fresh = `${' '.repeat(put.indent)}${ask.word} ${answer}`;
  const lines = [...file.lines];
  const at = block.firstLine + put.at;
  lines[at] = put.after ? `${old}\n${fresh}` : fresh + commentOf(block.read.syntax, put.at, old);
  for (const line of out) lines[block.firstLine + line] = '';
  const done = lines.join('\n');
  const line = put.after ? at + 1 : at;
  return { text: done, line, fault: faultAt(done, line) };
}

function commentOf(
  {
    lines,
  }: {
    readonly lines: readonly { span: { line: number }; comment?: { span: { start: number } } }[];
  },
  line: number,
  text: string,
): string {
  const comment = lines.find((l) => l.span.line === line)?.comment;
  return comment ? `  ${text.slice(comment.span.start)}` : '';
}

function faultAt(text: string, line: number): Fault | undefined {
  const file = new SourceFile('', text);
  const block = file.blocks[file.blockAt(line)];
  return block?.read.faults.find(
    (f) => f.severity === 'error' && block.firstLine + f.span.line === line,
  );
}

/** The job without its questions. */
export function withoutAsks(text: string): string {
  const file = new SourceFile('', text);
  const template = templateOf(file);
  if (!template) return text;
  const { block } = template;
  const last = Math.max(...block.read.syntax.lines.map((l) => l.span.line));
  const from = block.firstLine + block.read.syntax.heading!.span.line;
  return [...file.lines.slice(0, from), ...file.lines.slice(block.firstLine + last + 1)].join('\n');
}
