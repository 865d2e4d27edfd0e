/** What may be written at the cursor. Nothing in comments and texts, and nothing where any word would do. */
import { readLine } from '../../../grammar/blocks';
import { headingNamed, type LineKind, lineOf } from '../../../grammar/lines';
import { match } from '../../../grammar/read/match';
import type { Item } from '../../../grammar/syntax';
import { LETTER } from '../../../grammar/tokens';
import type { Job } from '../workspace/job';
import { type FilesBeside, fileNames } from './complete-files';
import { headings, keysUnder } from './complete-keys';
import { inOption, OF_BLOCKS, OF_OPTION } from './complete-option';
import { valuesFor } from './complete-values';
import { enclosing, type Home } from './enclosing';
import type { Completion, CompletionKind, Completions, Position } from './types';

const WORD_BEFORE = new RegExp(`[${LETTER}](?:[${LETTER}0-9²³'’-]|\\.(?=[${LETTER}0-9]))*$`);

/** A word goes on so far behind the cursor. */
const WORD_AFTER = new RegExp(`^(?:[${LETTER}0-9²³'’-]|\\.(?=[${LETTER}0-9]))*`);

/** @param files the files that one may name, as it would write them; nothing where nobody knows */
export function completion(job: Job, at: Position, files?: FilesBeside): Completions | undefined {
  const text = job.file.lines[at.line] ?? '';
  const before = text.slice(0, at.column);
  const named = files && fileNames(job, at, files);
  if (named) return named;
  const word = WORD_BEFORE.exec(before)?.[0] ?? '';
  const lead = before.slice(0, before.length - word.length);
  if (isSilent(before)) return undefined;
  const items = itemsFor(job, at, lead);
  const span = { line: at.line, start: lead.length, end: before.length };
  const wordEnd = before.length + WORD_AFTER.exec(text.slice(before.length))![0].length;
  return items?.length ? { span, wordEnd, items, whole: isWhole(job, at, lead) } : undefined;
}

/** One of those that were offered for a word that begins there. */
export interface Chosen extends Position {
  readonly label: string;
  readonly kind: CompletionKind;
}

/** What there is to tell of one, asked when a reader looks at it; the text may have changed since. */
export function explained(job: Job, { line, column, label, kind }: Chosen): string | undefined {
  const lead = (job.file.lines[line] ?? '').slice(0, column);
  const items = itemsFor(job, { line, column }, lead) ?? [];
  return items.find((item) => item.label === label && item.kind === kind)?.explains?.();
}

/** In a comment or a text, or in the middle of a number. */
function isSilent(before: string): boolean {
  const line = readLine(before, 0);
  const last = line?.items.at(-1);
  const open = last?.kind === 'text' && (!last.closed || last.span.end === before.length);
  return Boolean(line?.comment) || open || /[\d.,£$€]$/.test(before);
}

function itemsFor(job: Job, at: Position, lead: string): Completion[] | undefined {
  if (lead === '') return headings(job);
  const home = enclosing(job.file, at.line, lead);
  if (lead.trim() === '') return home && keysUnder(home, job);
  const line = readLine(lead, 0);
  const kind = line?.key && kindOf(line.key.text, lead, home);
  const [name, ...rest] = (line?.items ?? []) as Item[];
  if (kind && home && OF_OPTION.has(kind.key) && OF_BLOCKS.has(home.parents[0]!.kind.key) && name)
    return inOption(kind, name, rest, home.block, job);
  return kind ? valuesFor(kind, line!.items as Item[], home?.block, job) : undefined;
}

/** Whether what stands before the word says something by itself. */
function isWhole(job: Job, at: Position, lead: string): boolean {
  if (!lead.trim()) return false;
  const line = readLine(lead, 0);
  const kind = line?.key && kindOf(line.key.text, lead, enclosing(job.file, at.line, lead));
  return kind !== undefined && match(kind.takes, line!.items).values !== undefined;
}

export function kindOf(key: string, lead: string, home: Home | undefined): LineKind | undefined {
  if (!/^\s/.test(lead)) return headingNamed(key);
  const inner = home?.parents.at(-1);
  const outer = home?.parents[0];
  return (inner && lineOf(inner.kind, key)) ?? (outer && lineOf(outer.kind, key));
}
