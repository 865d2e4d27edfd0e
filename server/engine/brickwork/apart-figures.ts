/** What a piece of work takes of mixes that are not its own: a figure each. */
import { named } from '../working/term';
import type { Figure, Needs } from './needs';

export function apartFigures({ mixes }: Pick<Needs, 'mixes'>): Figure[] {
  return mixes
    .filter((mix) => mix.apart)
    .map(({ mix, litres }) => ({ key: `mortar.${mix}`, term: named(litres.label, litres) }));
}
