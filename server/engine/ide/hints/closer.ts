/** What is told of a hint when a reader looks closer: how its figures came about, and where each came from. */

import { phrase } from '../../../../shared/phrase';
import type { Place } from '../../../../shared/span';
import { workingOf } from '../../views/working';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { notation, workingList } from '../markdown';
import { type Hint, type Linker, PLAIN } from '../types';
import { ALL_HINTS, blocksIn, madeFor, placed } from './index';
import { leadOf } from './lead';
import type { MadeHint, MadePart } from './made';

export interface Closer {
  /** Markdown. */
  readonly text: string;
  /** One for each part of the hint. */
  readonly parts: readonly CloserPart[];
}

export interface CloserPart {
  /** Markdown; none where there is no more to tell. */
  readonly text?: string;
  readonly place?: Place;
}

/** It is read at a glance. */
const GLANCE = { deep: 3, most: 12 };

/** Nothing where the hint is not there any more, or says something else by now. */
export function closerAt(job: Job, hint: Hint, link: Linker = PLAIN): Closer | undefined {
  if (hint.held) return { text: phrase`As it was before the line that cannot be read.`, parts: [] };
  const [block] = blocksIn(job, { first: hint.line, last: hint.line });
  const made = block && madeFor(block, job, ALL_HINTS).find((m) => same(m, block, hint));
  if (!made) return undefined;
  const parts = made.parts.map((part) => closer(part, block, job, link));
  const texts = parts.flatMap((part) => part.text ?? []);
  return { text: texts.join('\n\n'), parts };
}

function same(made: MadeHint, block: SourceBlock, hint: Hint): boolean {
  const { line, kind, text } = placed(made, block.firstLine);
  return line === hint.line && kind === hint.kind && text === hint.text;
}

function closer(
  { term, from, tells }: MadePart,
  own: SourceBlock,
  job: Job,
  link: Linker,
): CloserPart {
  if (term)
    return {
      text: workingList(workingOf(term, job.env), { ...GLANCE, link }),
      place: leadOf(term, own),
    };
  if (tells) return tells(link);
  if (!from) return {};
  const { block, line } = from;
  const at = line.syntax.span.line;
  return { text: notation([block.lines[at]!.trim()]), place: block.place(line.syntax.span) };
}
