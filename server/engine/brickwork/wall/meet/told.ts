/** How courses go round a corner, for the working of a count. */

import { phrase } from '../../../../../shared/phrase';
import { endSaid } from '../../../kinds-said';
import type { Quoin } from './quoins';

export function quoinText({ side, other, way }: Quoin): string[] {
  if (!way) return [];
  const [stop, run] = way.parity === 0 ? ['1, 3, 5', '2, 4, 6'] : ['2, 4, 6', '1, 3, 5'];
  return [
    phrase`At the ${endSaid(side)} it makes a corner with ${other.name}: courses ${run} and so on run through, courses ${stop} and so on stop behind it, and what shows there in the face is its bricks on end.`,
  ];
}
