/** What perpend result --json prints. Its shape is promised in shared/json-schema. */
import { agreedJob } from '../../engine/life/agreed';
import { owedOf } from '../../engine/life/owed';
import { type Result, resultOf } from '../../engine/life/result';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import type { Opened } from '../session';
import { VERSION } from '../version';
import { amountJson } from './measure';

export function resultDocument({ job, shown }: Opened): string {
  const result = resultOf(job);
  const { price, invoiced, paid, held, owed, toInvoice } = owedOf(job);
  const amount = (term: Term) => amountJson(term, job);
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-result',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    currency: job.env.money.code,
    complete: agreedJob(job).price.total.gaps.length === 0,
    result: result && resultJson(result, job),
    paying: {
      price: amount(price),
      invoiced: amount(invoiced),
      paid: amount(paid),
      held: amount(held),
      owed: amount(owed),
      toInvoice: amount(toInvoice),
    },
  };
  return `${JSON.stringify(document)}\n`;
}

function resultJson(result: Result, job: Job) {
  const amount = (term: Term) => amountJson(term, job);
  const may = (term: Term | undefined) => term && amountJson(term, job);
  const both = (of: { readonly estimated?: Term; readonly actual: Term }) => ({
    estimated: may(of.estimated),
    actual: amount(of.actual),
  });
  return {
    options: [...result.job.taken],
    net: amount(result.net),
    parts: result.parts.map((p) => ({ part: p.part, ...both(p), recorded: !p.asEstimated })),
    cost: both(result.cost),
    overhead: amount(result.overhead),
    leaves: both(result.leaves),
    margin: both(result.margin),
    earns: result.earns && both(result.earns),
    hours: both(result.hours),
    tasks: result.tasks.map((t) => ({
      task: t.task,
      estimated: may(t.estimated),
      worked: may(t.worked),
      toDo: may(t.amountEstimated),
      done: may(t.amount),
      output: may(t.output),
    })),
  };
}
