/** Courses said with a fraction: a wall stands in whole ones. */

import type { QuantityValue } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import type { Origin } from '../working/term';
import { coursesText } from './courses';
import { type Remark, rewrite } from './remark';

export function coursesNotWhole(origin: Origin, value: QuantityValue): Remark {
  const below = value.low.floor();
  const message = phrase`Brickwork stands in whole courses: ${value.low.toFixed()} is reckoned as ${below.toFixed()}.`;
  const ways = [below, below.add(1)]
    .filter((n) => n.gt(0))
    .map((n) => ({
      title: phrase`Make it ${n.toFixed()}`,
      edits: [rewrite(origin, coursesText(n.toNumber()))],
    }));
  return { code: 'courses-whole', severity: 'warning', origin, message, ways };
}
