/** The quote: what a client is told of a job, as one page. */
export { quotePage } from './page';
export { type QuoteView, quoteView } from './view';
