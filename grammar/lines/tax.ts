/** Tax on the price, of the job or of a part of it. */
import { choice, either, line, optional, quantity, text } from './slots';

/** A rate, a rate that the client owes the state himself, or none and why. */
const RATE_OF_TAX = either(
  [choice('how', 'none'), text('reason')],
  [choice('how', 'reverse-charge'), quantity('rate', 'percent'), optional(text('name'))],
  [quantity('rate', 'percent'), optional(text('name'))],
);

export const TAX = line(
  'tax',
  [RATE_OF_TAX],
  'Tax on the price, and what it is called on paper. `tax none "why"` charges none and says why on paper; with `tax reverse-charge 20%` the client owes the tax to the state, and the paper says how much.',
  'tax 20% "VAT"',
  { unless: 'the defaults’ tax' },
);

/** The same of one piece of work or one cost. */
export const OWN_TAX = line(
  'tax',
  [RATE_OF_TAX],
  'Tax on this part of the price, where it is not the job’s: another rate, `none "why"`, or `reverse-charge 20%`. The price before tax is shared out by cost; tax is worked out once for all that bears the same.',
  'tax 5%',
  { unless: 'the job’s tax' },
);
