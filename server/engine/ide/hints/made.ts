/** A hint as it is made: its parts keep the figures they are of, for who looks closer. */
import type { ReadLine } from '../../../../grammar/read/values';
import type { Env } from '../../resolve/env';
import { showTerm } from '../../views/show';
import type { Term } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import type { HintKind, Linker } from '../types';
import type { CloserPart } from './closer';

export interface MadePart {
  readonly text: string;
  /** What the part is a figure of. */
  readonly term?: Term;
  /** The line that it is of, where it is of no figure. */
  readonly from?: { readonly block: SourceBlock; readonly line: ReadLine };
  /** What there is to tell of it, where it is neither: made when somebody looks closer. */
  readonly tells?: (link: Linker) => CloserPart;
}

/** Lines count from the block’s first. */
export interface MadeHint {
  readonly line: number;
  readonly column: number;
  readonly kind: HintKind;
  readonly parts: readonly MadePart[];
}

/** At the very end of the line, a comment included. */
export function atEnd(block: SourceBlock, line: ReadLine): Pick<MadeHint, 'line' | 'column'> {
  const at = line.syntax.span.line;
  return { line: at, column: block.lines[at]!.trimEnd().length };
}

/** Behind what the line says, before its comment. */
export function behind({ syntax }: ReadLine): Pick<MadeHint, 'line' | 'column'> {
  return { line: syntax.span.line, column: syntax.span.end };
}

export function shown(term: Term, env: Env): MadePart {
  return { text: showTerm(term, env), term };
}
