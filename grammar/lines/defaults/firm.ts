/** Defaults of a firm’s jobs together: when its quarters begin, and what it takes to believe what past jobs show. */
import { type LineKind, line, lit, number, share, whole } from '../slots';

export const FIRM_DEFAULTS: readonly LineKind[] = [
  line(
    'quarters',
    [lit('from'), { ...whole(number('month')), most: 12 }],
    'A month, 1 to 12, that a quarter of the firm’s year begins with: turnover and tax of its jobs are added up by quarter.',
    'quarters from 1',
  ),
  line(
    'outputs-measured',
    [
      lit('jobs'),
      number('jobs'),
      lit('and'),
      lit('days'),
      number('days'),
      lit('and'),
      lit('sure'),
      share('sure'),
    ],
    'How many past jobs, and days in them, it takes until what they show is offered as the firm’s own output, and how sure the range is that is told with it.',
    'outputs-measured jobs 3 and days 10 and sure 80%',
  ),
];
