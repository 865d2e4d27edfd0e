/** The invoice as a paper. */
import { type Exact, HUNDRED, roundTo } from '../../../shared/exact';
import { showTerm, showValue } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { jobFacts } from '../about-job';
import { languageOf } from '../letterhead';
import type { Fact, Letterhead, Paper, Part, Row } from '../paper/model';
import { type InvoiceWords, type QuoteWords, type Words, wordsFor } from '../words';
import type { Made } from './make';
import { jobLines } from './parties';
import type { Invoice, InvoiceLine, Party, Tax, TaxGroup } from './types';

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
    ...deductions(made, say),
    ...held(made, say),
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
      ...invoice.lines.map((line) => row(lineSaid(line, invoice, job, words), line.net)),
      ...invoice.allowances.map((a) => row(a.reason, a.amount.neg())),
      row(words.net, totals.net, 'total'),
      ...invoice.taxes.map((tax) => row(taxSaid(tax, job, words), tax.amount)),
      ...unlessZero(words.rounding, totals.rounding),
      row(words.due, totals.due, 'grand'),
    ],
  };
}

function moneyCell(amount: Exact, { env }: Job) {
  const { code } = env.money;
  return { text: showValue(amount, code, env), value: amount.toFixed(), unit: code };
}

function taxSaid({ category, rate, base }: TaxGroup, job: Job, words: InvoiceWords): string {
  const { env } = job;
  const on = showValue(base, env.money.code, env);
  const name = taxName({ category, rate }, job);
  return category === 'S' || category === 'Z'
    ? words.taxAt(name, showValue(rate, '%', env), on)
    : words.noTax(name, on);
}

function taxName({ category, rate }: Tax, { price }: Job): string {
  const of = price.taxes.find((t) => t.category === category && t.rate.value.eq(rate));
  return of?.name ?? price.taxName;
}

/** A stage is a line for each tax: then the line says which. */
function lineSaid(line: InvoiceLine, { lines }: Invoice, job: Job, words: InvoiceWords): string {
  const alone = lines.filter(({ name }) => name === line.name).length === 1;
  if (alone) return line.name;
  const { category, rate } = line.tax;
  const at = category === 'S' || category === 'Z' ? showValue(rate, '%', job.env) : undefined;
  return words.lineAt(line.name, taxName(line.tax, job), at);
}

/** Why there is no tax to pay: words that the law of the country asks for, and what the client owes himself. */
function reasons({ taxes, digits }: Invoice, { env, price }: Job, words: QuoteWords): Part[] {
  const said = taxes.flatMap(({ category, reason, base }) => {
    const owing = price.taxes.filter(({ owed }) => owed);
    const [first] = owing;
    const same = owing.every(({ owed }) => owed!.rate.value.eq(first!.owed!.rate.value));
    if (category !== 'AE' || !first?.owed || !same) return reason ? [reason] : [];
    const { rate } = first.owed;
    const amount = roundTo(base.mul(rate.value).div(HUNDRED), digits);
    const told = showValue(amount, env.money.code, env);
    return [words.taxOwed(reason, first.name, showTerm(rate, env), told)];
  });
  return [...new Set(said)].map((text) => ({ part: 'words', text }));
}

/** What the client keeps back for the tax office: of all of the work only, as what a stage holds of labour nobody says. */
function deductions({ invoice, billed, job }: Made, words: InvoiceWords): Part[] {
  const { env, price } = job;
  if (!price.deductions.length || !billed.amount.eq(billed.whole)) return [];
  const off = price.deductions.map(({ title, rate, base, amount }) => ({
    cells: [
      { text: words.deducted(title, showTerm(rate, env), showTerm(base, env)) },
      moneyCell(amount.value.neg(), job),
    ],
  }));
  const left = price.deductions.reduce((sum, d) => sum.sub(d.amount.value), invoice.totals.due);
  const rows: Row[] = [
    ...off,
    { cells: [{ text: words.afterDeducted }, moneyCell(left, job)], role: 'total' },
  ];
  return [together(amounts('deducted', words.due, rows, words))];
}

/** What the client holds back of this invoice for a while, where the price says so. */
function held({ invoice, job }: Made, words: InvoiceWords): Part[] {
  const { retention } = job.price;
  if (!retention) return [];
  const { due } = invoice.totals;
  const back = roundTo(due.mul(retention.rate.value).div(HUNDRED), invoice.digits);
  const rows: Row[] = [
    { cells: [{ text: words.held }, moneyCell(back.neg(), job)] },
    { cells: [{ text: words.now }, moneyCell(due.sub(back), job)], role: 'total' },
  ];
  return [together(amounts('held', words.due, rows, words))];
}

/** Where this invoice stands in the whole of the price; nothing where it is the whole. */
function soFar({ billed, job }: Made, words: InvoiceWords): Part[] {
  const { amount, before, whole } = billed;
  if (before.isZero() && amount.eq(whole)) return [];
  const rows: (readonly [string, Exact])[] = [
    [words.whole, whole],
    ...(before.isZero() ? [] : [[words.before, before] as const]),
    [words.due, amount],
    [words.left, whole.sub(before).sub(amount)],
  ];
  const table = amounts(
    'so-far',
    words.what,
    rows.map(([label, value]) => ({ cells: [{ text: label }, moneyCell(value, job)] })),
    words,
  );
  return [together({ part: 'heading', level: 2, text: words.soFar }, table)];
}

function amounts(name: string, what: string, rows: readonly Row[], words: InvoiceWords): Part {
  const columns = [
    { title: what, holds: 'text' as const },
    { title: words.amount, holds: 'number' as const },
  ];
  return { part: 'table', name, columns, rows };
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
