/** The invoice as a paper. */
import type { Exact } from '../../../shared/exact';
import type { Job } from '../../engine/workspace/job';
import { jobFacts } from '../about-job';
import { languageOf } from '../letterhead';
import type { Fact, Letterhead, Paper, Part, Row } from '../paper/model';
import { type InvoiceWords, type Words, wordsFor } from '../words';
import { moneyCell } from './amounts';
import type { Made } from './make';
import { jobLines } from './parties';
import { notNow, soFar } from './rest';
import { reasons, rowSaid, taxSaid } from './tax-words';
import type { Invoice, Party, Tax } from './types';

/** @param draft why it may not go out yet; nothing when it may */
export function invoicePaper(
  made: Made,
  letterhead: Letterhead | undefined,
  draft: string | undefined,
  version: string,
): Paper {
  const { invoice, job } = made;
  const lang = languageOf(job);
  const words = wordsFor(lang);
  const name = draft ? words.invoice.draft : words.invoice.title;
  const title = [name, invoice.number].filter(Boolean).join(' ');
  return {
    kind: 'invoice',
    lang,
    date: invoice.issued,
    size: job.env.imperial ? 'Letter' : 'A4',
    title,
    letterhead,
    parts: partsOf(made, name, draft, words),
    foot: [words.invoice.rounded, words.quote.madeWith(version)].join(' '),
    running: [letterhead?.name, title].filter(Boolean).join(' · '),
  };
}

function partsOf(made: Made, name: string, draft: string | undefined, words: Words): Part[] {
  const { invoice, job } = made;
  const say = words.invoice;
  return [
    ...(draft ? [{ part: 'warning' as const, strong: say.notAnInvoice, text: draft }] : []),
    { part: 'heading', level: 1, text: name, under: jobFacts(job, words).title },
    { part: 'facts', rows: about(invoice, job, words) },
    together({ part: 'heading', level: 2, text: say.sum }, tableOf(invoice, job, say)),
    ...reasons(invoice, job, words.quote),
    ...notNow(made, say),
    ...soFar(made, say),
    { part: 'together', parts: payment(invoice, say) },
    ...workDone(invoice, say),
  ];
}

function together(...parts: readonly Part[]): Part {
  return { part: 'together', parts };
}

/** Only what is known. */
function about(invoice: Invoice, job: Job, { date, invoice: { facts } }: Words): Fact[] {
  const rows: [string, readonly string[]][] = [
    [facts.to, linesOf(invoice.buyer)],
    [facts.taxNumber, [invoice.buyer.taxNumber]],
    [facts.number, [invoice.number]],
    [facts.date, [date(invoice.issued)]],
    [facts.due, [date(invoice.due)]],
    [facts.site, jobLines(job, 'site')],
    [facts.ref, [invoice.reference]],
  ];
  return rows
    .map(([label, lines]) => ({ label, lines: lines.filter(Boolean) }))
    .filter(({ lines }) => lines.length);
}

function linesOf({ name, address, town, postcode }: Party): string[] {
  return [name, ...address, [town, postcode].filter(Boolean).join(' ')].filter(Boolean);
}

function tableOf(invoice: Invoice, job: Job, words: InvoiceWords): Part {
  const { totals } = invoice;
  const row = (label: string, amount: Exact, role?: Row['role']): Row => ({
    cells: [{ text: label }, moneyCell(amount, job)],
    role,
  });
  const rowsOf = (all: readonly { name: string; amount: Exact; tax: Tax }[]) => {
    const names = all.map(({ name }) => name);
    return all.map(({ name, amount, tax }) => row(rowSaid(name, tax, names, job, words), amount));
  };
  const unlessZero = (label: string, amount: Exact) =>
    amount.isZero() ? [] : [row(label, amount, 'total')];
  return {
    part: 'table',
    name: 'invoice',
    columns: [
      { title: words.what, holds: 'text' },
      { title: words.amount, holds: 'number' },
    ],
    rows: [
      ...rowsOf(invoice.lines.map(({ name, net, tax }) => ({ name, amount: net, tax }))),
      ...rowsOf(
        invoice.allowances.map(({ reason: name, amount, tax }) => ({
          name,
          amount: amount.neg(),
          tax,
        })),
      ),
      row(words.net, totals.net, 'total'),
      ...invoice.taxes.map((tax) => row(taxSaid(tax, job, words), tax.amount)),
      ...unlessZero(words.rounding, totals.rounding),
      row(words.due, totals.due, 'grand'),
    ],
  };
}

/** Of all of the work at once; a stage is called by its title alone. */
function workDone({ lines }: Invoice, words: InvoiceWords): Part[] {
  const said = lines.filter(({ says }) => says.length);
  if (!said.length) return [];
  const [first, ...others] = said.map(({ name, says }) =>
    together(
      { part: 'heading', level: 3, text: name },
      { part: 'list', items: says.map((each) => [each]) },
    ),
  );
  return [together({ part: 'heading', level: 2, text: words.workDone }, first!), ...others];
}

function payment({ terms, account, number }: Invoice, words: InvoiceWords): Part[] {
  const said = [terms, account && words.account(account), number && words.quoting(number)];
  return [
    { part: 'heading', level: 2, text: words.payment },
    ...said.filter(Boolean).map((text): Part => ({ part: 'words', text })),
  ];
}
