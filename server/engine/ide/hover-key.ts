/** A line’s word under the pointer: what it means, how it is written, and what holds when it is left out. */

import type { LineKind } from '../../../grammar/lines';
import { pattern } from '../../../grammar/read/describe';
import type { ReadLine } from '../../../grammar/read/values';
import { phrase, spoken } from '../../../shared/phrase';
import type { Job } from '../workspace/job';
import { defaultOf } from './defaults';
import { code, notation, plain, squeezed, whereOf } from './markdown';
import type { Linker } from './types';

export function hoverKey(
  line: ReadLine,
  parent: ReadLine | undefined,
  job: Job,
  link: Linker,
): string {
  const { kind } = line;
  const parts = [code(pattern(kind)), plain(spoken(kind.means)), ...example(line)];
  if (parent?.kind.key !== 'defaults') parts.push(...leftOut(kind, job, link));
  return [...parts, ...laterText(kind)].join('\n\n');
}

/** How it might be written; not where it is written so. */
function example({ kind, syntax }: ReadLine): string[] {
  const bare = (text: string) => text.replace(/\s+/g, ' ').trim();
  const written = [
    syntax.key?.text,
    ...syntax.items.map((item) => ('text' in item ? item.text : '')),
  ];
  const same = bare(written.join(' ')) === bare(kind.example);
  return same ? [] : [notation([kind.example])];
}

/** What of it nothing computes yet. */
export function laterText({ later }: LineKind): string[] {
  return later ? [phrase`*Not computed yet: ${plain(spoken(later))}.*`] : [];
}

/** What a key means, for one that is not written yet. */
export function explainKey(kind: LineKind, job: Job): string {
  const parts = [plain(spoken(kind.means)), notation([kind.example])];
  return [...parts, ...leftOut(kind, job, (text) => text)].join('\n\n');
}

function leftOut(kind: LineKind, job: Job, link: Linker): string[] {
  const found = defaultOf(kind, job.book);
  if (!found) return kind.unless ? [phrase`Left out: ${plain(spoken(kind.unless))}.`] : [];
  const { block, line } = found.setting;
  const place = block.place(line.syntax.span);
  const text = squeezed(block.lines[line.syntax.span.line]!);
  const source = found.source ? ` *(${plain(found.source)})*` : '';
  return [phrase`Left out: ${code(text)} ${link(whereOf(place), place)}${source}`];
}
