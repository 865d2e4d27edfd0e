/** What one line of an option does to the text, or why it can do nothing. */
import { type LineKind, lineOf } from '../../../grammar/lines';
import type { ReadLine } from '../../../grammar/read/values';
import type { LineSyntax } from '../../../grammar/syntax';
import { wordOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';
import type { Targets, ToChange } from './targets';

/** A line written in place of another, or after one; lines taken out. */
export interface BlockEdit {
  readonly block: SourceBlock;
  readonly step: ReadLine;
  readonly out: readonly number[];
  /** Counted in the block; the text without its indent. */
  readonly put?: { readonly at: number; readonly after: boolean; readonly indent: number };
}

export interface Trouble {
  readonly step: ReadLine;
  readonly why: 'nothing' | 'several' | 'no-line' | 'several-lines' | 'with-lines' | 'not-there';
  readonly targets: readonly ToChange[];
}

export type Done = { readonly edit: BlockEdit } | { readonly block: SourceBlock } | Trouble;

/** `block`: one that is left out whole. */
export function stepDone(step: ReadLine, targets: Targets): Done {
  const found = targets.get(wordOf(step.values.what)) ?? [];
  const trouble = (why: Trouble['why']): Trouble => ({ step, why, targets: found });
  const [target] = found;
  if (!target) return trouble('nothing');
  if (found.length > 1) return trouble('several');
  return step.kind.key === 'change'
    ? changed(step, target, trouble)
    : without(step, target, trouble);
}

type Fails = (why: Trouble['why']) => Trouble;

/** The word that a changed line begins with. */
export function wordIn(step: ReadLine): string {
  const { line } = step.values;
  const first = line?.kind === 'rest' ? line.items[0] : undefined;
  return first?.kind === 'word' ? first.text : wordOf(line);
}

/** The kind of line that a step speaks of. */
export function kindIn(step: ReadLine, { heading }: ToChange): LineKind | undefined {
  return lineOf(heading.kind, wordIn(step));
}

function changed(step: ReadLine, target: ToChange, fails: Fails): Done {
  const found = placeOf(wordIn(step), target);
  if (typeof found === 'string') return fails(found);
  return { edit: { block: target.block, step, ...found } };
}

/** Where a line is written that takes the place of another, or is added: counted in the block. */
export interface LinePlace {
  /** Further lines of the word, which go. */
  readonly out: readonly number[];
  readonly put: NonNullable<BlockEdit['put']>;
}

/** Of the line with that word; or why there is no one place for it. */
export function placeOf(
  word: string,
  { heading }: ToChange,
): LinePlace | 'no-line' | 'with-lines' | 'several-lines' {
  const kind = lineOf(heading.kind, word);
  if (!kind) return 'no-line';
  if (kind.body) return 'with-lines';
  const [first, ...more] = linesOf(heading, kind);
  if (more.length && kind.many) return 'several-lines';
  const at = first?.span.line ?? heading.syntax.span.line;
  const put = { at, after: !first, indent: first?.indent ?? heading.syntax.indent + 2 };
  return { out: more.map((l) => l.span.line), put };
}

function without(step: ReadLine, target: ToChange, fails: Fails): Done {
  const { block, heading } = target;
  if (!step.values.line) {
    if (heading.kind.top && heading === block.read.heading) return { block };
    return { edit: { block, step, out: [...heading.syntax.body, heading.syntax].map(lineAt) } };
  }
  const kind = kindIn(step, target);
  if (!kind) return fails('no-line');
  const lines = linesOf(heading, kind);
  if (!lines.length) return fails('not-there');
  return { edit: { block, step, out: lines.flatMap((l) => [l, ...l.body]).map(lineAt) } };
}

function lineAt({ span }: LineSyntax): number {
  return span.line;
}

/** As written, those that cannot be read too. */
function linesOf({ syntax }: ReadLine, kind: LineKind): LineSyntax[] {
  return syntax.body.filter((l) => l.key?.text === kind.key);
}
