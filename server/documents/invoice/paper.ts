/** The invoice as a paper. */
import type { Exact } from '../../../shared/exact';
import { defaultLine } from '../../engine/resolve/env';
import { jobFacts } from '../about-job';
import { fromAll, fromLines, fromOwn } from '../from';
import { firmFacts, languageOf } from '../letterhead';
import type { Fact, From, Letterhead, Paper, Part, Row } from '../paper/model';
import { type InvoiceWords, type Words, wordsFor } from '../words';
import { moneyCell } from './amounts';
import type { Made } from './make';
import { fromBuyer, jobLines } from './parties';
import { notNow, soFar } from './rest';
import { fromTax, reasons, rowSaid, taxSaid } from './tax-words';
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
  const { title, from } = jobFacts(job, words);
  return [
    ...(draft
      ? [
          {
            part: 'warning' as const,
            strong: say.notAnInvoice,
            text: draft,
            from: made.billed.from,
          },
        ]
      : []),
    { part: 'heading', level: 1, text: name, under: title, from },
    { part: 'facts', rows: about(made, words) },
    together({ part: 'heading', level: 2, text: say.sum }, tableOf(made, say)),
    ...reasons(invoice, job, words.quote),
    ...notNow(made, say),
    ...soFar(made, say),
    { part: 'together', parts: payment(made, say) },
    ...workDone(invoice, say),
  ];
}

function together(...parts: readonly Part[]): Part {
  return { part: 'together', parts };
}

/** Only what is known. */
function about({ invoice, job, billed: { from } }: Made, { date, invoice: words }: Words): Fact[] {
  const { facts } = words;
  const days = firmFacts(job)?.line('payment') ?? defaultLine(job.env, 'payment');
  const rows: [string, readonly string[], From | undefined][] = [
    [facts.to, linesOf(invoice.buyer), fromBuyer(job)],
    [facts.taxNumber, [invoice.buyer.taxNumber], fromBuyer(job, 'tax-number')],
    [facts.number, [invoice.number], from],
    [facts.date, [date(invoice.issued)], from],
    [facts.due, [date(invoice.due)], fromAll(fromLines(days), from)],
    [facts.site, jobLines(job, 'site'), fromOwn(job, 'site')],
    [facts.ref, [invoice.reference], fromOwn(job, 'ref')],
  ];
  return rows
    .map(([label, lines, of]) => ({ label, lines: lines.filter(Boolean), from: of }))
    .filter(({ lines }) => lines.length);
}

function linesOf({ name, address, town, postcode }: Party): string[] {
  return [name, ...address, [town, postcode].filter(Boolean).join(' ')].filter(Boolean);
}

function tableOf({ invoice, job, billed }: Made, words: InvoiceWords): Part {
  const { totals } = invoice;
  const row = (label: string, amount: Exact, role?: Row['role'], from = billed.from): Row => ({
    cells: [{ text: label }, moneyCell(amount, job)],
    role,
    from,
  });
  const rowsOf = (all: readonly { name: string; amount: Exact; tax: Tax; from?: From }[]) => {
    const names = all.map(({ name }) => name);
    return all.map(({ name, amount, tax, from }) =>
      row(rowSaid(name, tax, names, job, words), amount, undefined, from),
    );
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
      ...rowsOf(invoice.lines.map(({ net, ...line }) => ({ ...line, amount: net }))),
      ...rowsOf(
        invoice.allowances.map(({ reason: name, amount, tax, from }) => ({
          name,
          amount: amount.neg(),
          tax,
          from,
        })),
      ),
      row(words.net, totals.net, 'total'),
      ...invoice.taxes.map((tax) =>
        row(taxSaid(tax, job, words), tax.amount, undefined, fromTax(tax, job, billed.from)),
      ),
      ...unlessZero(words.rounding, totals.rounding),
      row(words.due, totals.due, 'grand'),
    ],
  };
}

/** Of all of the work at once; a stage is called by its title alone. */
function workDone({ lines }: Invoice, words: InvoiceWords): Part[] {
  const said = lines.filter(({ says }) => says.length);
  if (!said.length) return [];
  const [first, ...others] = said.map(({ name, says, from, saysFrom }) =>
    together(
      { part: 'heading', level: 3, text: name, from },
      { part: 'list', items: says.map((each) => [each]), from: saysFrom },
    ),
  );
  return [together({ part: 'heading', level: 2, text: words.workDone }, first!), ...others];
}

function payment({ invoice, job, billed }: Made, words: InvoiceWords): Part[] {
  const { terms, account, number } = invoice;
  const firm = firmFacts(job);
  const days = firm?.line('payment') ?? defaultLine(job.env, 'payment');
  const said: [string, From | undefined][] = [
    [terms, fromLines(days)],
    [account && words.account(account), fromLines(firm?.line('account'))],
    [number && words.quoting(number), billed.from],
  ];
  return [
    { part: 'heading', level: 2, text: words.payment },
    ...said.flatMap(([text, from]): Part[] => (text ? [{ part: 'words', text, from }] : [])),
  ];
}
