/** What holds where a job says nothing: a file for each subject, and here the order in which a reader meets them. */
import { SOURCE } from '../said';
import { type LineKind, line } from '../slots';
import { DENSITIES } from '../weights';
import { AMOUNT_DEFAULTS, RULE_OF_THUMB } from './amounts';
import { FIRM_DEFAULTS } from './firm';
import { FIT_DEFAULTS } from './fit';
import { FOOTING_LAP, FOOTING_MIX } from './footing';
import { HEAD_DEFAULTS } from './heads';
import { MEETING_DEFAULTS, MOVEMENT_DEFAULTS, WALL_TIES } from './joined';
import { PAPER_DEFAULTS } from './papers';
import { PIER_DEFAULTS } from './piers';
import { LIFT, PRACTICE_DEFAULTS } from './practice';
import { DAY_DEFAULTS, PRICE_DEFAULTS } from './price';
import { REPAIR_DEFAULTS } from './repair';
import { CREASING, TOP_DEFAULTS } from './tops';
import { WORK_DEFAULTS } from './work';

export const DEFAULTS: LineKind = line(
  'defaults',
  [],
  'What holds where a job says nothing. The job’s own come first, then each file it uses in order, then the library.',
  'defaults',
  {
    top: true,
    many: true,
    body: [
      SOURCE,
      ...PAPER_DEFAULTS,
      ...WORK_DEFAULTS,
      ...FIT_DEFAULTS,
      ...AMOUNT_DEFAULTS,
      ...PRICE_DEFAULTS,
      ...DAY_DEFAULTS,
      ...RULE_OF_THUMB,
      WALL_TIES,
      FOOTING_MIX,
      ...TOP_DEFAULTS,
      FOOTING_LAP,
      ...PIER_DEFAULTS,
      CREASING,
      ...HEAD_DEFAULTS,
      ...MOVEMENT_DEFAULTS,
      ...MEETING_DEFAULTS,
      ...DENSITIES,
      LIFT,
      ...REPAIR_DEFAULTS,
      ...PRACTICE_DEFAULTS,
      ...FIRM_DEFAULTS,
    ],
  },
);
