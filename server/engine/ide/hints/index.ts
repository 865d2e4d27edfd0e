/** What stands at the end of lines while typing, by kind, so that each can be switched off. */
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { HINT_KINDS, type Hint, type HintKind, type LineRange } from '../types';
import { hourHints } from './hours';
import { lineHints } from './lines';
import type { MadeHint } from './made';
import { moneyHints } from './money';
import { nameHints, takenHints } from './names';
import { rangeHints } from './ranges';
import { totalHints } from './totals';

export type Wanted = ReadonlySet<HintKind>;

export const ALL_HINTS: Wanted = new Set(HINT_KINDS);

/** What a reader sees who has chosen nothing. */
export const USUAL_HINTS: Wanted = new Set(['total', 'line', 'money', 'range']);

type Make = (block: SourceBlock, home: Job) => readonly MadeHint[];

/** In the order that hints of one line stand in. */
const MAKERS: Readonly<Record<HintKind, Make>> = {
  total: totalHints,
  line: lineHints,
  money: moneyHints,
  hours: hourHints,
  range: rangeHints,
  name: nameHints,
  taken: takenHints,
};

/** In the order of the text, and only for the lines asked for: the whole of a long file would cost more than a reader sees. */
export function hintsOf(job: Job, range: LineRange, wanted: Wanted = USUAL_HINTS): Hint[] {
  return blocksIn(job, range)
    .flatMap((block) => madeFor(block, job, wanted).map((made) => placed(made, block.firstLine)))
    .filter((hint) => hint.line >= range.first && hint.line <= range.last)
    .sort((a, b) => a.line - b.line);
}

export function blocksIn({ file }: Job, range: LineRange): SourceBlock[] {
  const first = file.blockAt(range.first);
  const found: SourceBlock[] = [];
  for (let i = first; i < file.blocks.length && file.blocks[i]!.firstLine <= range.last; i++)
    found.push(file.blocks[i]!);
  return found;
}

/** Of one block, lines counted from its first. */
export function madeFor(block: SourceBlock, job: Job, wanted: Wanted): MadeHint[] {
  if (!block.read.heading) return [];
  const home = job.homeOf(block);
  const kinds = HINT_KINDS.filter((kind) => wanted.has(kind));
  return kinds.flatMap((kind) => MAKERS[kind](block, home));
}

export function placed({ line, column, kind, parts }: MadeHint, firstLine: number): Hint {
  const texts = parts.map((part) => part.text);
  return { line: firstLine + line, column, kind, text: texts.join(BETWEEN), parts: texts };
}

/** Between the parts of a hint. */
export const BETWEEN = ' · ';
