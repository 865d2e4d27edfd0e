/** What every part of the work is worked out in: the book, the units and money of the reader, and which end of a range is taken. */
import { type FigureStyle, PLAIN_STYLE, readStyle } from '../../../shared/show';
import { type Book, type Setting, wordOf } from './book';
import type { Pick } from './ranges';

// The door of this folder: who works something out needs these beside the environment.
export { BlockFacts, defaultLine, defaultTerm, factsNamed, factsOf } from './block-facts';
export { LineFacts } from './line-facts';
export { picked, plainlyRead, rangeKey } from './ranges';

export interface Money {
  readonly code: string;
  readonly sign: string;
  readonly digits: number;
}

export interface Env {
  readonly book: Book;
  readonly pick: Pick;
  readonly imperial: boolean;
  readonly style: FigureStyle;
  readonly money: Money;
}

export function envOf(book: Book, pick: Pick): Env {
  const units = wordOf(book.setting('defaults', 'units')?.line.values.units);
  const sample = wordOf(book.setting('defaults', 'figures')?.line.values.sample);
  return {
    book,
    pick,
    imperial: units === 'imperial',
    style: readStyle(sample) ?? PLAIN_STYLE,
    money: moneyOf(book),
  };
}

/** The job's currency, else the defaults'. */
function currencyLine(book: Book): Setting | undefined {
  return book.setting('job', 'currency') ?? book.setting('defaults', 'currency');
}

function moneyOf(book: Book): Money {
  const code = wordOf(currencyLine(book)?.line.values.currency) || 'XXX';
  const known = currencyOf(book, code);
  const digits = known?.line.values.digits;
  const sign = wordOf(known?.line.values.sign) || code;
  return { code, sign, digits: digits?.kind === 'quantity' ? digits.low.toNumber() : 2 };
}

/** By its code; the nearest block that has it, so that the long list is read only for a currency no library names. */
export function currencyOf(book: Book, code: string): Setting | undefined {
  for (const block of book.blocksOf('currencies')) {
    const line = block.read.heading?.body.find((l) => l.syntax.key?.text === code);
    if (line) return { line, block };
  }
  return undefined;
}
