/** How much is bought beyond what is laid, and what a count is held against. */
import { MORTAR_DEFAULTS } from '../mortar/mix';
import { choice, type LineKind, line, lit, number, share, word } from '../slots';

export const AMOUNT_DEFAULTS: readonly LineKind[] = [
  line(
    'dry-volume',
    [number('factor')],
    'Volume of loose dry materials that make one volume of mortar.',
    'dry-volume 1.33',
  ),
  ...MORTAR_DEFAULTS,
  line(
    'brick-waste',
    [share('share')],
    'Bricks broken or turned away, for bricks that do not say.',
    'brick-waste 5%',
  ),
  line(
    'mortar-waste',
    [share('share')],
    'Mortar lost, for mixes that do not say.',
    'mortar-waste 10%',
  ),
];

/** A count that everyone knows, told beside ours. */
export const RULE_OF_THUMB: readonly LineKind[] = [
  line(
    'rule',
    [choice('what', 'bricks'), number('count'), lit('per'), word('unit', 'unit of area')],
    'A rule of thumb shown beside the count: bricks to an area of half-brick wall.',
    'rule bricks 60 per m2',
  ),
  line(
    'rule-within',
    [share('share')],
    'How much larger or smaller the face of a brick may be for the rule of thumb still to hold.',
    'rule-within 3%',
  ),
];
