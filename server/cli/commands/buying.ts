/** perpend buying: what is to be bought, merchant by merchant. */
import { type BuyingWishes, buyingPaper } from '../../documents/buying/paper';
import type { Option } from '../args';
import { BOM, type Form, LISTS } from '../files/as';
import { buyingJson } from '../json/buying';
import { VERSION } from '../version';
import { paperCommand } from './paper-command';

const PRICES: Option = { name: '--prices', about: 'with what the firm pays for each' };

/** A list for another program has all in one; a workbook has a sheet to send to each merchant. */
const LAID: Readonly<Partial<Record<Form, BuyingWishes['as']>>> = { csv: 'rows', xlsx: 'sheets' };

export const buying = paperCommand({
  name: 'buying',
  about: 'write what to buy, merchant by merchant, in whole packs',
  more: [
    'What a brick, a material or a mix is bought from is said by its “merchant” line.',
    'Without --prices there is no money on it.',
  ],
  options: [PRICES, BOM],
  forms: LISTS,
  paper: ({ job }, head, given, form) =>
    buyingPaper(job, head, { prices: given.has(PRICES.name), as: LAID[form] ?? 'read' }, VERSION),
  json: ({ job, shown }, given) => buyingJson(job, given.has(PRICES.name), shown),
});
