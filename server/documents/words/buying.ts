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
  readonly merchant: string;
  readonly unit: string;
  readonly currency: string;
  /** How much is in one of what is bought. */
  readonly pack: string;
  readonly nothing: string;
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
  merchant: 'From',
  unit: 'Unit',
  currency: 'Currency',
  pack: 'Each holds',
  nothing: 'Nothing has to be bought.',
};
