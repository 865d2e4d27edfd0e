/** From cost to price, step by step: each that there is, so that what is above and below agrees. */
import type { Exact } from '../../../../shared/exact';
import type { Figure } from '../../../engine/brickwork/needs';
import { ofPrice } from '../../../engine/price/settings';
import type { TaxGroup } from '../../../engine/price/tax/taxes';
import { counted, type Term } from '../../../engine/working/term';
import type { Job } from '../../../engine/workspace/job';
import { fromAll, fromLines, fromTerms } from '../../from';
import type { From } from '../../paper/model';
import { rateOf } from '../../rates';

export interface PriceStep {
  readonly step:
    | 'materials'
    | 'labour'
    | 'partner'
    | 'travel'
    | 'others'
    | 'cost'
    | 'contingency'
    | 'overhead'
    | 'profit'
    /** What the price that was agreed, the least price or rounding puts on or takes off. */
    | 'agreed'
    | 'least'
    | 'rounding'
    | 'discount'
    | 'net'
    | 'tax'
    /** What makes up for a penny. */
    | 'rest'
    | 'total';
  readonly amount: Term;
  /** Of a partner’s labour, a discount, a tax: what it is called. */
  readonly title: string;
  /** In percent. A profit without one is made by its margin. */
  readonly rate?: Term;
  /** Hours of labour, days of travel. */
  readonly time?: Term;
  /** One tax among several: what it is on. */
  readonly tax?: TaxGroup;
  /** Where it comes from, where its amount does not say. */
  readonly from?: From;
}

type Figures = ReadonlyMap<string, Figure>;

export function priceSteps(job: Job): PriceStep[] {
  const { price } = job;
  const by: Figures = new Map(price.figures.map((f) => [f.key, f]));
  const own = (key: PriceStep['step'] & string, more: Partial<PriceStep> = {}): PriceStep => ({
    step: key,
    amount: by.get(key)!.term,
    title: '',
    ...more,
  });
  return [
    own('materials'),
    own('labour', { time: by.get('paid')?.term ?? price.hours }),
    ...price.partners.map(({ labour, hours }): PriceStep => {
      return { step: 'partner', amount: labour, title: labour.label, time: hours };
    }),
    ...some(by, 'travel', { time: price.days }),
    ...some(by, 'others'),
    own('cost'),
    ...['contingency', 'overhead', 'profit'].flatMap((key) => some(by, key as 'profit')),
    ...rounded(by, job),
    ...price.discounts.map(({ title, amount, rate, line }): PriceStep => {
      const off = plain(amount.value.neg(), job);
      return { step: 'discount', amount: off, title, rate, from: fromLines(line) };
    }),
    own('net'),
    ...taxSteps(job),
    ...some(by, 'rounding').map((step): PriceStep => ({ ...step, step: 'rest' })),
    { step: 'total', amount: price.total, title: '' },
  ];
}

/** Where it is anything. */
function some(by: Figures, key: PriceStep['step'], more: Partial<PriceStep> = {}): PriceStep[] {
  const amount = by.get(key)?.term;
  if (!amount) return [];
  const rate = rateOf(amount);
  const none = rate?.value.isZero() || (amount.value.isZero() && !amount.gaps.length);
  return none ? [] : [{ step: key, amount, title: '', rate, ...more }];
}

function plain(value: Exact, { env }: Job): Term {
  return counted('', value, env.money.code);
}

/** One rate by itself, where it is anything; of several each. */
function taxSteps({ price: { taxes } }: Job): PriceStep[] {
  const [only] = taxes;
  if (taxes.length === 1 && only!.category !== 'AE') {
    const { rate, tax, name } = only!;
    const none = rate.value.isZero() && !rate.gaps.length;
    const from = fromAll(fromLines(only!.line), fromTerms(tax));
    return none ? [] : [{ step: 'tax', amount: tax, title: name, rate: rateOf(tax), from }];
  }
  return taxes.map((tax) => {
    const from = fromAll(fromLines(tax.line), fromTerms(tax.tax));
    return { step: 'tax', amount: tax.tax, title: tax.name, tax, from };
  });
}

/** The lines of the price that make up for a difference. */
const LINES = { agreed: 'agreed', least: 'least', rounding: 'round' } as const;

function rounded(by: Figures, job: Job): PriceStep[] {
  const { price } = job;
  const worked = ['contingency', 'overhead', 'profit'].reduce((sum, key) => {
    const term = by.get(key)?.term;
    return term ? sum.add(term.value) : sum;
  }, by.get('cost')!.term.value);
  const gap = price.gross.value.sub(worked);
  if (gap.isZero()) return [];
  const step = price.agreed ? 'agreed' : atLeast(price.gross) ? 'least' : 'rounding';
  const from = fromAll(fromLines(ofPrice(job.env, LINES[step])), fromTerms(price.gross));
  return [{ step, amount: plain(gap, job), title: '', from }];
}

/** Whether the least price is what the price was made from, by the price's own working. */
function atLeast(term: Term): boolean {
  const [worked] = term.args;
  if (term.op === 'most') return worked !== undefined && !worked.value.eq(term.value);
  return (term.op === 'cents' || term.op === 'nearest') && worked !== undefined && atLeast(worked);
}
