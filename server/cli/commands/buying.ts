/** perpend buying: what is to be bought, merchant by merchant. */
import { later } from '../../../shared/phrase';
import { buyingPaper } from '../../documents/buying/paper';
import { BUYING_AS } from '../../documents/pages/papers';
import type { Option } from '../args';
import { BOM, LISTS } from '../files/as';
import { buyingJson } from '../json/buying';
import { VERSION } from '../version';
import { paperCommand } from './paper-command';

const PRICES: Option = { name: '--prices', about: later`with what the firm pays for each` };

export const buying = paperCommand({
  name: 'buying',
  about: later`write what to buy, merchant by merchant, in whole packs`,
  more: [
    later`What a brick, a material or a mix is bought from is said by its “merchant” line.
Without --prices there is no money on it.`,
  ],
  options: [PRICES, BOM],
  forms: LISTS,
  paper: ({ job }, head, given, form) =>
    buyingPaper(
      job,
      head,
      { prices: given.has(PRICES.name), as: BUYING_AS[form] ?? 'read' },
      VERSION,
    ),
  json: ({ job, shown }, given) => buyingJson(job, given.has(PRICES.name), shown),
});
