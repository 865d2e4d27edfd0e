/** What the page of a price says. */
import type { PriceStep } from '../pages/price/steps';

/** What of a step is put in words; texts that are not there are empty. */
export interface StepSaid {
  readonly title: string;
  readonly time: string;
  readonly rate: string;
}

export interface PriceWords {
  readonly title: string;
  /** Options that are taken in it. */
  taken(names: readonly string[]): string;
  readonly incomplete: string;
  readonly what: string;
  readonly amount: string;
  readonly cost: string;
  readonly price: string;
  readonly works: string;
  readonly buy: string;
  readonly steps: Readonly<Record<Exclude<PriceStep['step'], 'tax'>, (said: StepSaid) => string>>;
  /** Of the only one. */
  tax(name: string, rate: string): string;
  /** Of one among several. */
  taxOn(name: string, rate: string, base: string): string;
  noTax(name: string, base: string): string;
  taxOwed(name: string, rate: string, base: string, due: string): string;
  /** @param percent so many of a hundred jobs alike */
  between(percent: number, low: string, high: string): string;
  readonly toPrice: string;
  readonly leaves: string;
  readonly profit: string;
  ofPrice(percent: string): string;
  readonly earns: string;
  readonly earnsIs: string;
  readonly asked: string;
  readonly askedIs: string;
  keptBack(rate: string, base: string): string;
  readonly stages: string;
  heldBack(days: string): string;
  readonly options: string;
  readonly option: string;
  readonly beforeTax: string;
  readonly withTax: string;
  readonly priceWith: string;
  readonly accepted: string;
  notWith(names: readonly string[]): string;
  /** @param held what the client holds, where that is another price */
  asAccepted(names: readonly string[], total: string, held: string): string;
}

const rated =
  (name: string) =>
  ({ rate }: StepSaid) =>
    rate ? `${name} ${rate}` : name;
const TENTHS = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** “eight of ten”, as one counts jobs. */
export function ofHundred(percent: number): string {
  if (percent >= 100) return 'all';
  return percent % 10 ? `${percent} of a hundred` : `${TENTHS[percent / 10]} of ten`;
}

const always = (text: string) => () => text;

export const PRICE_EN: PriceWords = {
  title: 'Price worked out',
  taken: (names) => `With the options taken: ${names.join(', ')}.`,
  incomplete: 'NOT COMPLETE.',
  what: 'What',
  amount: 'Amount',
  cost: 'Cost of its own',
  price: 'Part of the price',
  works: 'Each piece of work, before tax',
  buy: 'To buy',
  steps: {
    materials: always('Materials'),
    labour: ({ time }) => `Labour, ${time}`,
    partner: ({ title, time }) => `${title}, ${time}`,
    travel: ({ time }) => `Travel, ${time}`,
    others: always('Other costs'),
    cost: always('Cost'),
    contingency: rated('Contingency'),
    overhead: rated('Overhead'),
    profit: ({ rate }) => (rate ? `Profit ${rate}` : 'Profit, by its margin'),
    agreed: always('To the price agreed'),
    least: always('Up to the least price'),
    rounding: always('Rounding'),
    discount: ({ title, rate }) => (rate ? `${title}, ${rate}` : title),
    net: always('Price before tax'),
    rest: always('Rounding'),
    total: always('Price'),
  },
  tax: (name, rate) => (rate ? `${name} ${rate}` : name),
  taxOn: (name, rate, base) => `${name} ${rate} of ${base}`,
  noTax: (name, base) => `No ${name} on ${base}`,
  taxOwed: (name, rate, base, due) => `${name} ${rate} of ${base}, owed by the client: ${due}`,
  between: (percent, low, high) =>
    `In ${ofHundred(percent)} jobs alike the price is ${low} to ${high}.`,
  toPrice: 'From cost to price',
  leaves: 'What it leaves',
  profit: 'Profit',
  ofPrice: (percent) => `${percent} of the price before tax`,
  earns: 'Earned for each hour paid',
  earnsIs: 'Wages and profit',
  asked: 'Worked out, before tax',
  askedIs: 'What it would have been',
  keptBack: (rate, base) => `${rate} of ${base} kept back`,
  stages: 'Paid in stages',
  heldBack: (days) => (days ? `Held back for ${days}` : 'Held back'),
  options: 'Options',
  option: 'Option',
  beforeTax: 'Before tax',
  withTax: 'With tax',
  priceWith: 'Price with it',
  accepted: 'accepted',
  notWith: (names) => `not with ${names.join(', ')}`,
  asAccepted: (names, total, held) =>
    held
      ? `As accepted, with ${names.join(', ')}: ${total}; the client holds ${held}.`
      : `As accepted, with ${names.join(', ')}: ${total}.`,
};
