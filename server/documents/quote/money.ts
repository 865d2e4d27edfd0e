/** The amounts of a quote, and how they are rounded. */
import { exact } from '../../../shared/exact';
import { defaultLine, LineFacts } from '../../engine/resolve/env';
import { showTerm, showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { rateOf } from '../rates';

export interface Amount {
  readonly label: string;
  /** For a reader; nothing while the price is not complete. */
  readonly text: string | undefined;
}

/** @param hidden no amount is told, as the price is not one yet */
export function amounts(job: Job, hidden: boolean) {
  const { price, env } = job;
  const amount = (label: string, term: Term): Amount => ({
    label,
    text: hidden ? undefined : showTerm(term, env),
  });
  const rate = rateOf(price.tax);
  const taxed = rate && !rate.value.isZero();
  return {
    net: amount('Price before tax', price.price),
    tax: taxed ? amount(`${price.taxName} at ${showTerm(rate, env)}`, price.tax) : undefined,
    total: amount('Total', price.total),
    stages: price.stages.map((s) => amount(s.title, s.amount)),
  };
}

/** The step that the price is rounded to is the firm's or the default's own line. */
export function rounding(job: Job): string {
  const { env, book, price } = job;
  const least = showValue(exact(`1e-${env.money.digits}`), env.money.code, env);
  const own = book.setting('price', 'round');
  const line = own ? new LineFacts(own.block, own.line, env) : defaultLine(env, 'round');
  const step = line?.term('to', 'rounded to');
  const taxed = rateOf(price.tax)?.value.isZero() === false;
  const cents = [taxed ? price.taxName : '', price.stages.length ? 'stages' : '']
    .filter(Boolean)
    .join(' and ');
  const parts = [
    step && !step.value.isZero()
      ? `the price before tax to the nearest ${showTerm(step, env)}`
      : '',
    cents ? `${cents} to the nearest ${least}` : '',
  ].filter(Boolean);
  return parts.length ? `Rounded: ${parts.join(', ')}, halves up.` : '';
}
