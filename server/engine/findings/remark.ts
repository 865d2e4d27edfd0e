/** A finding inside the engine: it holds on to blocks, whose lines may still move, until a reader asks for it. */
import type { ReadLine } from '../../../grammar/read/values';
import type { Finding, Severity, WayOut } from '../../../shared/finding';
import { phrase } from '../../../shared/phrase';
import type { Span } from '../../../shared/span';
import type { Gap, Origin } from '../working/term';
import type { SourceBlock } from '../workspace/source';

export interface RemarkEdit {
  readonly block: SourceBlock;
  readonly span: Span;
  readonly text: string;
}

export interface RemarkWay {
  readonly title: string;
  readonly edits: readonly RemarkEdit[];
  readonly preferred?: boolean;
  /** Nobody would take it who has another: it stays behind them. */
  readonly last?: boolean;
  /** It clears its finding by what it says, whatever else there is: it may be offered untried. */
  readonly sure?: boolean;
}

export interface Remark {
  readonly code: string;
  readonly severity: Severity;
  readonly origin: Origin;
  readonly message: string;
  /** What no figure counts because of it: the price is then not complete, and this remark says so itself. */
  readonly leavesOut?: string;
  /** Which of several alike it is, such as the run it speaks of. */
  readonly about?: string;
  readonly related?: readonly { readonly origin: Origin; readonly message: string }[];
  /** Ways out; a function where they cost something to find, and a reader may never ask: of it only the sure ones may be wanted. */
  readonly ways?: readonly RemarkWay[] | ((onlySure?: boolean) => readonly RemarkWay[]);
  /** Those with something to fill in, written `${1:text}`: for an editor, that leads from one such place to the next. */
  readonly fills?: readonly RemarkWay[];
}

export function toFinding(remark: Remark): Finding {
  let ways: readonly WayOut[] | undefined;
  return {
    code: remark.code,
    severity: remark.severity,
    place: remark.origin.block.place(remark.origin.span),
    message: remark.message,
    related: relatedOf(remark),
    get ways() {
      ways ??= waysIn(remark).map(toWayOut);
      return ways;
    },
    ...(remark.fills && { fills: remark.fills.map(toWayOut) }),
  };
}

/** What every total that hangs on a piece of work has to know of what is left out of it. */
export function gapsIn(remarks: readonly Remark[]): Gap[] {
  return remarks.flatMap(({ leavesOut, origin }) =>
    leavesOut ? [{ what: leavesOut, origin, told: true }] : [],
  );
}

function waysIn({ ways = [] }: Remark): readonly RemarkWay[] {
  return typeof ways === 'function' ? ways() : ways;
}

function toWayOut(way: RemarkWay): WayOut {
  const edits = way.edits.map((e) => ({ place: e.block.place(e.span), text: e.text }));
  return { title: way.title, preferred: way.preferred, edits };
}

/** Puts a line under another, indented as told. */
export function lineAfter(block: SourceBlock, line: number, text: string): RemarkEdit {
  const end = block.lines[line]?.length ?? 0;
  return { block, span: { line, start: end, end }, text: `\n${text}` };
}

/** The words of a whole line, its comment too, gone. */
function lineOut(block: SourceBlock, line: number): RemarkEdit {
  return { block, span: { line, start: 0, end: block.lines[line]?.length ?? 0 }, text: '' };
}

/** The way out that takes a whole line away. */
export function takenOut(
  { block, line }: { readonly block: SourceBlock; readonly line: ReadLine },
  title = phrase`Take the line out`,
): RemarkWay {
  return { title, edits: [lineOut(block, line.syntax.span.line)] };
}

/** The whole of a line's words, from its first to its last, written anew. */
export function rewrite(origin: Origin, text: string): RemarkEdit {
  return { block: origin.block, span: origin.span, text };
}

export function headOrigin(block: SourceBlock): Origin {
  const span = block.read.syntax.heading?.span ?? {
    line: 0,
    start: 0,
    end: block.lines[0]?.length ?? 0,
  };
  return { block, span };
}

/** The name that a heading gives: what is told of the whole piece of work, and leaves its first word alone. */
export function nameOrigin(block: SourceBlock): Origin {
  const name = block.read.heading?.values.name;
  return name ? { block, span: name.span } : headOrigin(block);
}

/** Two limits may name the same place: a reader is led there once. */
function relatedOf({ related = [] }: Remark): Finding['related'] {
  const said = new Map(
    related.map(({ origin: { block, span }, message }) => {
      const place = block.place(span);
      return [`${place.file}:${place.line}:${place.start} ${message}`, { place, message }];
    }),
  );
  return [...said.values()];
}
