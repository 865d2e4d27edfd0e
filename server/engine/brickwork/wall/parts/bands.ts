/** Courses in another brick: bought, and laid in the wall’s mortar. */
import { phrase } from '../../../../../shared/phrase';
import { bandsOff } from '../../../findings/band';
import { brickOf } from '../../goods';
import { saidFrom } from '../../said';
import { zonesOf } from '../zones';
import type { PartOf } from './part';

export const bands: PartOf = (masonry, plan, counts) => {
  const { facts, env } = masonry;
  if (!facts.lines('band').length) return undefined;
  const zones = zonesOf(masonry, plan).bands;
  const remarks = bandsOff(facts, zones, (line) => brickOf(line, env, line.origin), plan);
  const says = counts.bands.map(({ line, brick }) => {
    const ends = [line.number('first')!, line.number('last') ?? line.number('first')!];
    const [first, last] = [Math.min(...ends), Math.max(...ends)];
    const which = first === last ? phrase`course ${first}` : phrase`courses ${first} to ${last}`;
    return saidFrom([phrase`Lay ${which} in ${brick.title}.`], line);
  });
  return {
    bricks: counts.bands.map(({ brick, counted }) => ({ brick, counted })),
    remarks,
    says: says.flat(),
  };
};
