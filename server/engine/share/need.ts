/** What a job needs of the files it uses: blocks that its own name, that those name in turn, and all that are asked by kind. */
import type { ReadLine, Values } from '../../../grammar/read/values';
import { type SourceBlock, WORK } from '../workspace/source';

/** Never taken in: they say what a file is, or whose, and not what a job needs. */
const NOT_TAKEN: ReadonlySet<string> = new Set([
  'perpend',
  'use',
  'job',
  'template',
  'bill-to',
  'option',
  'record',
  ...WORK,
]);

/** Those that nothing asks for by name. */
const BY_KIND: ReadonlySet<string> = new Set(['cost', 'limit', 'caution']);

/**
 * In their order, those of the job first.
 * @param own the blocks of the job
 * @param used those of other files, nearest first; what libraries that ship name counts too, but stays in them
 */
export function neededOf(own: readonly SourceBlock[], used: readonly SourceBlock[]): SourceBlock[] {
  const offered = used.filter(({ kind }) => kind !== undefined && !NOT_TAKEN.has(kind));
  const all = [...own, ...offered];
  const byName = groupedByName(all.filter(isByName));
  const taken = new Set(all.filter((block) => !isByName(block)));
  const seen = new Set<string>();
  for (let open = [...taken]; open.length; ) {
    const words = new Set(open.flatMap(wordsIn));
    const fresh = [...words].filter((word) => byName.has(word) && !seen.has(word));
    for (const name of fresh) seen.add(name);
    open = fresh.flatMap((name) => byName.get(name)!);
    for (const block of open) taken.add(block);
  }
  return all.filter((block) => taken.has(block) && !block.file.shipped);
}

/** Something is taken in only where its name stands in what is. */
function isByName({ kind, name }: SourceBlock): boolean {
  return name !== undefined && !BY_KIND.has(kind!) && !WORK.has(kind!);
}

function groupedByName(blocks: readonly SourceBlock[]): Map<string, SourceBlock[]> {
  const found = new Map<string, SourceBlock[]>();
  for (const block of blocks) {
    const list = found.get(block.name!);
    if (list) list.push(block);
    else found.set(block.name!, [block]);
  }
  return found;
}

function wordsIn({ read }: SourceBlock): string[] {
  return read.heading ? ofLine(read.heading) : [];
}

function ofLine({ values, body }: ReadLine): string[] {
  return [...inValues(values), ...body.flatMap(ofLine)];
}

function inValues(values: Values): string[] {
  return Object.values(values).flatMap((value) => {
    if (value?.kind === 'word') return [value.text];
    return value?.kind === 'list' ? value.of.flatMap(inValues) : [];
  });
}
