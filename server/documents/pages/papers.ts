/** Papers: what goes to a client, on site, to a merchant, and what the firm keeps of a job. */
import { phrase } from '../../../shared/phrase';
import type { Form } from '../../../shared/protocol/pages';
import { leftBlank } from '../blanks';
import { type BuyingWishes, buyingPaper } from '../buying/paper';
import { changesPaper } from '../changes/paper';
import { outcomePaper } from '../outcome/paper';
import { quoteAsides, quotePaper, quoteView } from '../quote';
import { sitePaper } from '../site/paper';
import { makeInvoice } from './invoice';
import { alone, type Kind, LISTS, type Making, READ } from './kinds';

/** A list for another program has all in one; a workbook has a sheet to send to each merchant. */
export const BUYING_AS: Readonly<Partial<Record<Form, BuyingWishes['as']>>> = {
  csv: 'rows',
  xlsx: 'sheets',
};

export const PAPERS: readonly Kind[] = [
  {
    kind: 'quote',
    reader: 'client',
    forms: READ,
    title: () => phrase`Quote`,
    about: () => phrase`What will be done, the price and the terms, for the client.`,
    make: quote,
  },
  {
    kind: 'invoice',
    reader: 'client',
    forms: [...READ, 'xml'],
    title: () => phrase`Invoice`,
    about: () => phrase`A stage, an amount or what is left of the price, for the client.`,
    make: makeInvoice,
  },
  {
    kind: 'changes',
    reader: 'client',
    forms: READ,
    title: () => phrase`Note of changes`,
    about: () => phrase`What has changed since the quote, and why, for the client.`,
    make: ({ agreed, between, head, version }) => ({
      paper: changesPaper(agreed, between, head, version),
      asides: leftBlank(agreed),
    }),
  },
  {
    kind: 'site',
    reader: 'site',
    forms: READ,
    title: () => phrase`Site sheet`,
    about: () => phrase`Drawings, mixes, cuts, order of work and cautions; no money.`,
    make: ({ agreed, head, version }) => alone(sitePaper(agreed, head, version)),
  },
  {
    kind: 'buying',
    reader: 'site',
    forms: LISTS,
    title: () => phrase`Buying list`,
    about: () => phrase`What to buy, merchant by merchant, in whole packs.`,
    make: ({ agreed, head, version, options, form }) => {
      const wishes = { prices: options.prices ?? false, as: BUYING_AS[form] ?? 'read' };
      return alone(buyingPaper(agreed, head, wishes, version));
    },
  },
  {
    kind: 'result',
    reader: 'firm',
    forms: READ,
    title: () => phrase`Result`,
    about: () => phrase`What the job cost and left, beside what was reckoned.`,
    make: ({ job, head, version }) => alone(outcomePaper(job, head, version)),
  },
];

function quote({ agreed, head, version }: Making) {
  const view = quoteView(agreed);
  const not = view.draft ? [phrase`NOT A QUOTE yet. ${view.draft}`] : [];
  return {
    paper: quotePaper(view, head, version),
    asides: [...not, ...quoteAsides(agreed, view.draft)],
  };
}
