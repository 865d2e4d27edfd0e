/** Cautions of the library, each where the job calls for it. */
import { listed } from '../../../grammar/read/numbers';
import type { Work } from '../brickwork/needs';
import { type Env, factsNamed, factsOf } from '../resolve/env';
import { headOrigin, nameOrigin, type Remark } from './remark';

/** One remark a caution, at the first piece of work that brings it up. */
export function cautions(works: readonly Work[], env: Env): Remark[] {
  const does = works.map((w) => ({
    work: w,
    does: new Set([...w.facts.does, ...materialsOf(w, env), 'any']),
  }));
  return env.book.blocksOf('caution').flatMap((block) => {
    const facts = factsOf(block, env)!;
    const when = facts.lines('when').map((l) => l.word('when'));
    const at = does.find((d) => when.some((w) => d.does.has(w)));
    if (!at) return [];
    const source = facts.lines('source').map((l) => l.word('text'));
    const says = facts.lines('say').map((l) => l.word('text'));
    const from = source.length ? ` (${listed(source, 'and')})` : '';
    const message = `${facts.title}: ${says.join(' ')}${from}`;
    const related = [{ origin: headOrigin(block), message: 'The caution in the library' }];
    return [
      {
        code: `caution-${facts.name}`,
        severity: 'information' as const,
        origin: nameOrigin(at.work.block),
        message,
        related,
      },
    ];
  });
}

/** Materials of the mixes a work uses, which are cautions of their own: cement, lime. */
function materialsOf(work: Work, env: Env): string[] {
  return work.needs.mixes.flatMap(({ mix }) => {
    const list = factsNamed(env, 'mix', mix)?.line('parts')?.values.parts;
    if (list?.kind !== 'list') return [];
    return list.of.map(({ material }) => (material && 'text' in material ? material.text : ''));
  });
}
