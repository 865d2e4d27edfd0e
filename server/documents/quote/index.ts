/** The quote: what a client is told of a job, as values and as a paper. */
export { noTaxNumber, quoteAsides } from './asides';
export { quotePaper } from './paper';
export { type QuoteView, quoteView } from './view';
