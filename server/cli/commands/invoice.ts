/** perpend invoice: what the client is asked to pay. */

import { exact } from '../../../shared/exact';
import { later, phrase } from '../../../shared/phrase';
import { draftOf } from '../../documents/invoice/draft';
import { invoiceOf, type Made } from '../../documents/invoice/make';
import { invoicePaper } from '../../documents/invoice/paper';
import { invoiceUbl, lacking } from '../../documents/invoice/ubl';
import { headOf } from '../../documents/letterhead';
import { invoiceAsides } from '../../documents/quote';
import { inItsLanguage } from '../../documents/spoken';
import { hasErrors } from '../../documents/used';
import type { Given, Option } from '../args';
import { FAILED, WrongUse } from '../exits';
import { asOption, deliverPaper, formAsked, logoOf, READ } from '../files/as';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { invoiceJson } from '../json/invoice';
import type { Opened } from '../session';
import { dayGiven } from '../today';
import { VERSION } from '../version';
import { type Command, codeOf, fileAnd, JSON_OPTION, OUT, sessionOf, WORKSPACE } from './command';

const NUMBER: Option = {
  name: '--number',
  value: 'NUMBER',
  about: later`the number of the invoice; of one in the record, that one`,
};
const DATE: Option = { name: '--date', value: 'DATE', about: later`its date, 2026-03-12` };
const STAGE: Option = {
  name: '--stage',
  value: 'STAGE',
  about: later`for a stage of the price, by its title or its place from 1`,
};
const AMOUNT: Option = {
  name: '--amount',
  value: 'AMOUNT',
  about: later`for so much, tax in it: 362.50`,
};
const AS: Option = {
  ...asOption(READ),
  about: later`html, pdf, md, or ubl for an electronic invoice (EN 16931)`,
};

export const invoice: Command = {
  name: 'invoice',
  takes: 'FILE',
  about: later`write an invoice: a stage, an amount or what is left`,
  more: [
    later`What the client agreed to, at the price the client holds, tax by tax. Without
an option it is the last invoice of the record; where there is none, the next
stage that is not invoiced yet, or what is left. It writes nothing into the
record: perpend record FILE invoiced AMOUNT as NUMBER does.

With --as ubl, or into a file that ends in .xml, it is UBL 2.1 as EN 16931 wants
it. What that needs and the files do not say is named, and nothing is written.`,
  ],
  options: [NUMBER, DATE, STAGE, AMOUNT, AS, JSON_OPTION, OUT, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'invoice', 0);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    const made = madeFor(opened, given);
    for (const line of invoiceAsides(made.job)) io.err(`perpend: ${line}\n`);
    const lacks = [...lacking(made.invoice), ...unfinished(made, opened)];
    if (given.has(JSON_OPTION.name)) io.raw(invoiceJson(made, lacks, opened.shown));
    else if (isUbl(given)) return deliverUbl(made, lacks, given, io);
    else {
      const logo = logoOf(opened, session, io);
      const paper = inItsLanguage([opened.job], (job) => {
        const own = madeFor({ ...opened, job: job! }, given);
        return invoicePaper(own, headOf(own.job, logo), draftOf(own, job!), VERSION);
      });
      deliverPaper(paper, formAsked(given, READ), given, io);
    }
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** @throws WrongUse where there is nothing to invoice */
function madeFor({ job, shown }: Opened, given: Given): Made {
  if (!job.isJob) throw new WrongUse(phrase`${shown} holds no work, and so nothing to invoice.`);
  const amount = given.value(AMOUNT.name);
  if (amount !== undefined && !/^\d+(\.\d+)?$/.test(amount))
    throw new WrongUse(phrase`${amount} is no amount. Write it like this: --amount 362.50.`);
  const date = given.value(DATE.name);
  if (date !== undefined) dayGiven(date);
  const made = invoiceOf(job, {
    number: given.value(NUMBER.name),
    stage: given.value(STAGE.name),
    amount: amount === undefined ? undefined : exact(amount),
    date,
  });
  if (typeof made === 'string') throw new WrongUse(`${shown}: ${made}`);
  return made;
}

function isUbl(given: Given): boolean {
  const asked = given.value(AS.name);
  return asked === 'ubl' || (asked === undefined && /\.xml$/i.test(given.value(OUT.name) ?? ''));
}

function deliverUbl(made: Made, lacks: readonly string[], given: Given, io: Io): number {
  for (const what of lacks) io.err(phrase`perpend: An electronic invoice needs ${what}.\n`);
  if (lacks.length) return FAILED;
  deliver(invoiceUbl(made.invoice), given.value(OUT.name), io);
  return 0;
}

/** A document of UBL has no place that says it is a draft: so none is made of what is no invoice yet. */
function unfinished({ job }: Made, opened: Opened): string[] {
  if (hasErrors(opened.job)) return [phrase`a job without errors: perpend check tells of each`];
  return job.price.total.gaps.length
    ? [phrase`a price that is complete: perpend check tells of it`]
    : [];
}
