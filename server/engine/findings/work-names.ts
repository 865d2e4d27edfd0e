/** Names of work, wherever it stands: a wall’s piers are named too. */
import type { SourceBlock } from '../workspace/source';
import type { WorkNames } from './checks';

/** The kind and the name of each thing that a block names, each in a line of its own. */
export function namedBy(block: SourceBlock): string[] {
  const inner = (block.read.heading?.body ?? []).flatMap((line) => {
    const { name } = line.values;
    return line.kind.body && name?.kind === 'word' ? [`${line.kind.key}\n${name.text}`] : [];
  });
  return block.kind && block.name !== undefined
    ? [`${block.kind}\n${block.name}`, ...inner]
    : inner;
}

/** From what blocks name: the names of each kind, in their order. */
export function namesOf(words: readonly string[]): WorkNames {
  const names = new Map<string, string[]>();
  for (const word of words) {
    const [kind = '', name = ''] = word.split('\n');
    const list = names.get(kind);
    if (list) list.push(name);
    else names.set(kind, [name]);
  }
  return names;
}
