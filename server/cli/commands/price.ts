/** perpend price: each piece of work, what is bought, the hours and the price, in tables. */
import { later } from '../../../shared/phrase';
import type { Given } from '../args';
import type { Io } from '../io';
import { priceDocument } from '../json/documents';
import { priceReport } from '../show/price';
import {
  type Command,
  codeOf,
  filesOf,
  JSON_OPTION,
  openAll,
  sessionOf,
  WORKSPACE,
} from './command';
import { WITH, withOptions } from './with';

export const price: Command = {
  name: 'price',
  takes: 'FILE...',
  about: later`show the figures of a job: work, what to buy, hours, price`,
  more: [
    later`These are the firm's own figures, costs and profit among them. For the client
there is perpend quote.`,
  ],
  options: [WITH, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const session = sessionOf(given, io);
    const batch = withOptions(openAll(filesOf(given, 'price'), session, io), given);
    if (given.has(JSON_OPTION.name)) io.raw(priceDocument(batch, session));
    else io.out(batch.opened.map((opened) => priceReport(opened, session, io)).join('\n\n'));
    return codeOf(batch);
  },
};
