/** What a job comes to, short, for a reader that is a program: for the firm, costs and profit among it. */
import { phrase } from '../../../shared/phrase';
import type { Told } from '../../../shared/protocol/tools';
import { VERSION } from '../../../shared/version';
import { figureItems } from '../../engine/ide/working';
import { figureView } from '../../engine/views/job-view';
import { missingOf } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { pageOf } from '../pages';
import { priceSteps } from '../pages/price/steps';
import { markdownOf } from '../paper';

/** @param file as its reader knows it */
export function priceTold(job: Job, file: string): Told {
  const made = pageOf(job, 'price', { version: VERSION });
  if (typeof made === 'string')
    return { markdown: `${made}\n`, json: JSON.stringify({ file, isJob: false, why: made }) };
  return {
    markdown: `${markdownOf(made.paper)}\n${idsOf(job)}\n`,
    json: JSON.stringify(valuesOf(job, file)),
  };
}

/** More are not named: whoever explains a figure can list all. */
const MOST_IDS = 80;

function idsOf(job: Job): string {
  const ids = figureItems(job).map(({ id }) => `\`${id}\``);
  return phrase`Ids of the figures: ${ids.slice(0, MOST_IDS).join(', ')}`;
}

function valuesOf(job: Job, file: string) {
  const { price, spread, works, env } = job;
  const amount = (term: Term) => {
    const { value, unit, text } = figureView('', term, env);
    return { value, unit, text };
  };
  const may = (term: Term | undefined) => term && amount(term);
  return {
    file,
    isJob: true,
    currency: env.money.code,
    complete: price.total.gaps.length === 0,
    missing: missingOf(price.total),
    price: amount(price.total),
    range: spread && { low: amount(spread.low), high: amount(spread.high) },
    steps: priceSteps(job).map((step) => ({
      step: step.step,
      title: step.title || undefined,
      rate: may(step.rate),
      amount: amount(step.amount),
    })),
    leaves: amount(price.leaves),
    earns: may(price.earns),
    hours: amount(price.hours),
    days: amount(price.days),
    work: works.map((work) => {
      const { cost, price: part } = job.shareOf(work);
      const { kind, name, title } = work;
      return { kind, name, title, cost: amount(cost), price: amount(part) };
    }),
    options: job.options.priced.map(({ name, title, price: own }) => ({
      name,
      title,
      price: amount(own.total),
    })),
  };
}
