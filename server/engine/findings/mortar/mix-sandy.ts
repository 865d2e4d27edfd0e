/** A mix with more sand than any that the library gives a class to: it may match an old colour, and is weak. */
import { phrase } from '../../../../shared/phrase';
import { showNumber } from '../../../../shared/show';
import type { Work } from '../../brickwork/work';
import { gradeOf } from '../../mortar/classes';
import { type Env, factsNamed } from '../../resolve/env';
import { headOrigin, nameOrigin, type Remark } from '../remark';

/** Once for each such mix, at the first piece of work whose mortar it is: what else it takes is concrete. */
export function mixSandy(works: readonly Work[], env: Env): Remark[] {
  const first = new Map<string, Work>();
  for (const work of works)
    for (const [i, { mix, apart }] of work.needs.mixes.entries())
      if ((i === 0 || apart) && !first.has(mix)) first.set(mix, work);
  return [...first].flatMap(([mix, work]) => sandyIn(mix, work, env));
}

function sandyIn(name: string, work: Work, env: Env): Remark[] {
  const mix = factsNamed(env, 'mix', name);
  const sandier = mix && gradeOf(mix, env).sandier;
  if (!mix || !sandier) return [];
  const count = (n: typeof sandier.sand) => showNumber(n, 1, env.style);
  const source = sandier.weakest.facts.lines('source').map((s) => s.word('text'));
  const message = phrase`${mix.title} has ${count(sandier.sand)} parts of sand to one of its binder; the weakest here, ${sandier.weakest.title}, has at most ${count(sandier.most)} (${source.join('; ')}). More sand may match an old colour, but such mortar is weak and soon washed or frozen out. Try it on a sample first, keep it to sheltered work, and where it has to carry or hold back anything ask a structural engineer. A coloured sand or a pigment changes the colour and leaves the strength.`;
  return [
    {
      code: 'mix-sandy',
      severity: 'information',
      origin: nameOrigin(work.block),
      message,
      related: [{ origin: headOrigin(mix.block), message: phrase`The mix` }],
    },
  ];
}
