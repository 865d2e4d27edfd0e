/** perpend buying: what is to be bought, merchant by merchant. */
import { buyingPaper } from '../../documents/buying/paper';
import type { Option } from '../args';
import { LISTS } from '../files/as';
import { VERSION } from '../version';
import { paperCommand } from './paper-command';

const PRICES: Option = { name: '--prices', about: 'with what the firm pays for each' };

export const buying = paperCommand({
  name: 'buying',
  about: 'write the buying list, merchant by merchant, in whole packs',
  more: [
    'What a brick, a material or a mix is bought from is said by its “merchant” line.',
    'Without --prices there is no money on it.',
  ],
  options: [PRICES],
  forms: LISTS,
  paper: ({ job }, head, given) => buyingPaper(job, head, given.has(PRICES.name), VERSION),
});
