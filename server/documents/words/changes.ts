/** What a note of changes says, to a client who has the quote before it. */
export interface ChangesWords {
  readonly title: string;
  /** @param date in words; nothing where it is not known */
  since(date: string): string;
  readonly nothing: string;
  readonly why: string;
  readonly work: string;
  added(title: string): string;
  dropped(title: string): string;
  readonly now: string;
  readonly before: string;
  /** Of work that is said in the same words, and is priced otherwise. */
  readonly same: string;
  readonly price: string;
  readonly what: string;
  readonly was: string;
  readonly is: string;
  readonly by: string;
  readonly net: string;
  readonly tax: string;
  readonly total: string;
  readonly options: string;
  readonly notComplete: string;
  readonly notAnOffer: string;
}

export const CHANGES_EN: ChangesWords = {
  title: 'What has changed',
  since: (date) => (date ? `Since our quote of ${date}` : 'Since our last quote'),
  nothing: 'Neither the work nor the price has changed.',
  why: 'Why',
  work: 'The work',
  added: (title) => `Added: ${title}`,
  dropped: (title) => `No longer to be done: ${title}`,
  now: 'Now',
  before: 'Before',
  same: 'The work is the same; what it takes has changed.',
  price: 'The price',
  what: 'What',
  was: 'Before',
  is: 'Now',
  by: 'Difference',
  net: 'Price before tax',
  tax: 'Tax',
  total: 'Price',
  options: 'With the options you chose',
  notComplete: 'not complete',
  notAnOffer: 'Parts of the new price are still to be worked out.',
};
