/** What may follow a name in a line of an option: the lines of what it names, and then what such a line takes. */
import { type LineKind, lineOf } from '../../../grammar/lines';
import type { Item } from '../../../grammar/syntax';
import { askable } from '../life/template';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { valuesFor } from './complete-values';
import { explainKey } from './hover-key';
import type { Completion } from './types';

export const OF_OPTION: ReadonlySet<string> = new Set(['change', 'leave-out', 'ask']);
/** Blocks of which lines speak of lines of other blocks. */
export const OF_BLOCKS: ReadonlySet<string> = new Set(['option', 'template']);

/** `items`: what stands between the name and the cursor. */
export function inOption(
  line: LineKind,
  name: Item,
  items: readonly Item[],
  block: SourceBlock,
  job: Job,
): Completion[] {
  const [target] = (name.kind === 'word' && askable(job.file.blocks).get(name.text)) || [];
  if (!target) return [];
  const [word, ...values] = items;
  if (!word) return keysOf(target.heading.kind, job);
  if (line.key !== 'change' || word.kind !== 'word') return [];
  const kind = lineOf(target.heading.kind, word.text);
  return kind ? valuesFor(kind, values, block, job) : [];
}

function keysOf({ body = [] }: LineKind, job: Job): Completion[] {
  const plain = body.filter((kind) => !kind.body && !kind.open && kind.key !== 'option');
  return plain.map((kind) => ({
    label: kind.key,
    kind: 'key',
    detail: kind.example,
    explains: () => explainKey(kind, job),
    insert: kind.takes.length ? `${kind.key} ` : kind.key,
    more: kind.takes.length > 0,
  }));
}
