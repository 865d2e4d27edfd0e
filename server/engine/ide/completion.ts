/** What may be written at the cursor. Nothing in comments and texts, and nothing where any word would do. */
import { readLine } from '../../../grammar/blocks';
import type { LineKind } from '../../../grammar/lines';
import { headingNamed, lineOf } from '../../../grammar/lines';
import type { Item } from '../../../grammar/syntax';
import { LETTER } from '../../../grammar/tokens';
import type { Job } from '../workspace/job';
import { headings, keysUnder } from './complete-keys';
import { inOption, OF_BLOCKS, OF_OPTION } from './complete-option';
import { valuesFor } from './complete-values';
import { enclosing, type Home } from './enclosing';
import type { Completion, Completions, Position } from './types';

const WORD_BEFORE = new RegExp(`[${LETTER}](?:[${LETTER}0-9²³'’-]|\\.(?=[${LETTER}0-9]))*$`);

export function completion(job: Job, at: Position): Completions | undefined {
  const before = (job.file.lines[at.line] ?? '').slice(0, at.column);
  const word = WORD_BEFORE.exec(before)?.[0] ?? '';
  const lead = before.slice(0, before.length - word.length);
  if (isSilent(before)) return undefined;
  const items = itemsFor(job, at, lead);
  const span = { line: at.line, start: lead.length, end: before.length };
  return items?.length ? { span, items } : undefined;
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

function kindOf(key: string, lead: string, home: Home | undefined): LineKind | undefined {
  if (!/^\s/.test(lead)) return headingNamed(key);
  const inner = home?.parents.at(-1);
  const outer = home?.parents[0];
  return (inner && lineOf(inner.kind, key)) ?? (outer && lineOf(outer.kind, key));
}
