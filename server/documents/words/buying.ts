/** What a buying list says. */
export interface BuyingWords {
  readonly title: string;
  readonly notWhole: string;
  /** Of what no file says whom it is bought from. */
  readonly anyone: string;
  readonly what: string;
  readonly needed: string;
  readonly buy: string;
  readonly cost: string;
  readonly all: string;
}

export const BUYING_EN: BuyingWords = {
  title: 'Buying list',
  notWhole: 'NOT THE WHOLE LIST.',
  anyone: 'To be bought',
  what: 'What',
  needed: 'Needed',
  buy: 'To buy',
  cost: 'Cost before tax',
  all: 'All of it',
};
