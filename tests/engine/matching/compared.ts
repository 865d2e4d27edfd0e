/** Candidates of a repair, each beside what stands there. */
import type { Candidate, Matching } from '../../../server/engine/brickwork/matching';
import { repaired } from '../repairs/repairing';

/** An even one sold singly, a higher one sold in packs, and one of the old inch sizes. No frogs, 5% breakage but for one. */
export const BRICKS = `brick even "Even red"
  size   215 x 102.5 x 65 mm
  joint  10 mm
  price  £1 each
  waste  5%
brick tall "Tall antique"
  size       215 x 102.5 x 67 mm
  joint      10 mm
  price      £124 per pack
  pack       80
  waste      8%
  tolerance  T1
  colour     "red multi, darker when weathered"
  texture    "sanded"
brick inch "Inch stock"
  size   228 x 108 x 68 mm
  joint  10 mm
  price  £1500 per 1000
  waste  5%
  made   reclaimed
`;

export function matchingOf(lines: string, before = ''): Matching {
  const job = repaired(lines, BRICKS + before);
  const found = job.works.find((work) => work.name === 'r')?.facts.matching;
  if (!found) throw new Error('nothing is compared');
  return found;
}

export function candidatesOf(lines: string, before = '') {
  const { candidates } = matchingOf(lines, before);
  return (name: string): Candidate => {
    const found = candidates.find(({ brick }) => brick.name === name);
    if (!found) throw new Error(`there is no ${name}`);
    return found;
  };
}

export const namesOf = ({ candidates }: Matching) => candidates.map(({ brick }) => brick.name);
