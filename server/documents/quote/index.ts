/** The quote: what a client is told of a job, as values and as a paper. */
export { invoiceAsides, quoteAsides } from './asides';
export { quotePaper } from './paper';
export { quoteView } from './view';
