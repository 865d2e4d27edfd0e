/** What an overview of jobs says. */
export interface JobsWords {
  readonly title: string;
  /** @param day in words */
  asOf(jobs: number, others: number, day: string): string;
  inCurrency(code: string): string;
  readonly states: Readonly<
    Record<'not-sent' | 'out' | 'lost' | 'in-hand' | 'done' | 'paid', string>
  >;
  readonly stand: string;
  readonly state: string;
  readonly jobs: string;
  readonly price: string;
  withoutPrice(count: number): string;
  readonly job: string;
  readonly since: string;
  readonly days: string;
  readonly money: string;
  readonly what: string;
  readonly amount: string;
  readonly invoiced: string;
  readonly paid: string;
  readonly held: string;
  readonly owed: string;
  readonly open: string;
  readonly late: string;
  readonly byInvoice: string;
  readonly byPayment: string;
  readonly quarter: string;
  /** A quarter by its first and last day, each in words. */
  fromTo(from: string, to: string): string;
  readonly beforeTax: string;
  readonly tax: string;
  readonly withTax: string;
  readonly unknownTax: string;
  andMore(count: number): string;
  lost(count: number): string;
  leftOut(count: number): string;
  moved(count: number): string;
}

const counted = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

export const JOBS_EN: JobsWords = {
  title: 'Jobs',
  asOf(jobs, others, day) {
    const more = others ? `, and ${counted(others, 'other file', 'other files')}` : '';
    return `${counted(jobs, 'job', 'jobs')}${more}, as of ${day}.`;
  },
  inCurrency: (code) => `In ${code}`,
  states: {
    'not-sent': 'Not sent',
    out: 'Out',
    lost: 'Lost',
    'in-hand': 'Won, in hand',
    done: 'Won, all invoiced',
    paid: 'Won, all paid',
  },
  stand: 'How they stand',
  state: 'State',
  jobs: 'Jobs',
  price: 'Price',
  withoutPrice: (count) => `${count} without a price`,
  job: 'Job',
  since: 'Since',
  days: 'Days',
  money: 'Invoiced and paid',
  what: 'What',
  amount: 'Amount',
  invoiced: 'Invoiced',
  paid: 'Paid',
  held: 'Held back',
  owed: 'Owed',
  open: 'Owed, the oldest first',
  late: 'Days late',
  byInvoice: 'By the day of the invoice',
  byPayment: 'By the day of payment',
  quarter: 'Quarter',
  fromTo: (from, to) => `${from} to ${to}`,
  beforeTax: 'Before tax',
  tax: 'Tax',
  withTax: 'With tax',
  unknownTax: 'Tax not known',
  andMore: (count) => `And ${count} more.`,
  lost: (count) =>
    `${counted(count, 'job uses', 'jobs use')} a file that is missing or outside the folder: what it says of currency, tax and days to pay is not taken.`,
  leftOut: (count) =>
    `${counted(count, 'line', 'lines')} of records cannot be read or are in another currency, and are left out.`,
  moved: (count) =>
    `${counted(count, 'job', 'jobs')} had options accepted at no price that is written down: the price is without them.`,
};
