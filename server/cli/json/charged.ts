/** What a client is charged, as --json prints it: rows of tax, discounts, stages, deductions, and how it is rounded. */

import type { TaxGroup } from '../../engine/price/tax/taxes';
import type { JobPrice } from '../../engine/price/total';
import type { Job } from '../../engine/workspace/job';
import { amountJson } from './measure';

/** What is not there is left out. */
export function chargedJson(job: Job) {
  const { taxes, discounts, stages, deductions, retention, agreed, roundings } = job.price;
  return {
    taxes: taxes.map((tax) => taxJson(tax, job)),
    discounts: discounts.map((d) => ({
      title: d.title,
      rate: d.rate?.value.toFixed(),
      amount: amountJson(d.amount, job),
    })),
    stages: stages.map((s) => stageJson(s, job)),
    retention: retention && {
      rate: retention.rate.value.toFixed(),
      days: retention.days?.value.toFixed(),
      amount: amountJson(retention.amount, job),
    },
    deductions: deductions.map((d) => ({
      title: d.title,
      of: d.of,
      rate: d.rate.value.toFixed(),
      base: amountJson(d.base, job),
      amount: amountJson(d.amount, job),
    })),
    agreed: agreed && { withTax: agreed.withTax, price: amountJson(agreed.price, job) },
    roundings: roundings.map(({ of, to }) => ({ of, to: to.value.toFixed() })),
  };
}

function taxJson({ category, rate, name, reason, base, tax, owed }: TaxGroup, job: Job) {
  return {
    category,
    rate: rate.value.toFixed(),
    name,
    reason: reason || undefined,
    base: amountJson(base, job),
    tax: amountJson(tax, job),
    owed: owed && { rate: owed.rate.value.toFixed(), tax: amountJson(owed.tax, job) },
  };
}

function stageJson({ title, amount, held, due }: JobPrice['stages'][number], job: Job) {
  return {
    title,
    amount: amountJson(amount, job),
    held: held && amountJson(held, job),
    due: amountJson(due, job),
  };
}
