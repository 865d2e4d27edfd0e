/** The text of a job with options taken: only the blocks that an option changes are made anew. */
import type { SourceBlock } from '../workspace/source';
import type { Option } from './option';
import { type BlockEdit, stepDone, type Trouble, wordIn } from './step';
import { targetsIn } from './targets';
import { type LineFrom, VariantBlock } from './variant-block';

export interface Derived {
  readonly blocks: SourceBlock[];
  readonly troubles: readonly (Trouble & { readonly option: Option })[];
}

interface Put {
  readonly edit: BlockEdit;
  readonly option: Option;
}

/** Makes the same blocks of the same lines again: what is worked out of them then stands. */
export class Deriving {
  private known = new Map<SourceBlock, VariantBlock>();

  of(blocks: readonly SourceBlock[], options: readonly Option[]): Derived {
    const { puts, gone, troubles } = stepsOf(blocks, options);
    const made = new Map<SourceBlock, VariantBlock>();
    const now = blocks.flatMap((block) => {
      if (gone.has(block)) return [];
      const edits = puts.get(block);
      if (!edits) return [block];
      const fresh = this.again(block, edits);
      made.set(block, fresh);
      return [fresh];
    });
    this.known = made;
    return { blocks: now, troubles };
  }

  private again(block: SourceBlock, puts: readonly Put[]): VariantBlock {
    const { lines, from } = written(block, puts);
    const known = this.known.get(block);
    if (!known || known.lines.join('\n') !== lines.join('\n'))
      return new VariantBlock(block, lines, from);
    known.from = from;
    known.firstLine = block.firstLine;
    return known;
  }
}

function stepsOf(blocks: readonly SourceBlock[], options: readonly Option[]) {
  const targets = targetsIn(blocks);
  const puts = new Map<SourceBlock, Put[]>();
  const gone = new Set<SourceBlock>();
  const troubles: Derived['troubles'][number][] = [];
  for (const option of options)
    for (const step of option.steps) {
      const done = stepDone(step, targets);
      if ('why' in done) troubles.push({ ...done, option });
      else if ('block' in done) gone.add(done.block);
      else push(puts, done.edit.block, { edit: done.edit, option });
    }
  return { puts, gone, troubles };
}

function push<K, V>(lists: Map<K, V[]>, key: K, item: V): void {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** Lines taken out stay as empty ones; of two edits of one line the last holds. */
function written(block: SourceBlock, puts: readonly Put[]) {
  const out = new Set(puts.flatMap(({ edit }) => edit.out));
  const { over, after } = byPlace(puts);
  const lines: string[] = [];
  const from: LineFrom[] = [];
  const take = (text: string, origin: LineFrom) => {
    lines.push(text);
    from.push(origin);
  };
  block.lines.forEach((text, line) => {
    const put = over.get(line);
    if (put) take(...lineFrom(put));
    else take(out.has(line) ? '' : text, { block, line, shift: 0 });
    for (const each of after.get(line)?.values() ?? []) take(...lineFrom(each));
  });
  return { lines, from };
}

/** By the line they are written over, or come after: there one of each word. */
function byPlace(puts: readonly Put[]) {
  const over = new Map<number, Put>();
  const after = new Map<number, Map<string, Put>>();
  for (const put of puts) {
    const { at, after: below } = put.edit.put ?? {};
    if (at === undefined) continue;
    if (!below) over.set(at, put);
    else after.set(at, (after.get(at) ?? new Map()).set(wordIn(put.edit.step), put));
  }
  return { over, after };
}

function lineFrom({ edit, option }: Put): [string, LineFrom] {
  const { span } = edit.step.values.line!;
  const { indent } = edit.put!;
  const text = option.block.lines[span.line]!.slice(span.start, span.end);
  const origin = { block: option.block, line: span.line, shift: span.start - indent };
  return [' '.repeat(indent) + text, origin];
}
