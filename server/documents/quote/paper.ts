/** The quote as a paper. It is made of the view alone, so what the view does not hold cannot be on it. */
import type { Fact, From, Letterhead, Paper, Part, Row, Table } from '../paper/model';
import { type QuoteWords, type Words, wordsFor } from '../words';
import type { Amount, Told } from './money';
import { optionParts } from './option-parts';
import type { QuoteView } from './view';
import type { QuotedWork } from './work';

/** @param version of the tool, for the small print */
export function quotePaper(
  view: QuoteView,
  letterhead: Letterhead | undefined,
  version: string,
): Paper {
  const words = wordsFor(view.lang);
  const { quote } = words;
  const name = nameOf(view, quote);
  const title = [[name, view.ref].filter(Boolean).join(' '), view.title].join(' · ');
  return {
    kind: 'quote',
    lang: view.lang,
    date: view.date,
    size: view.size,
    title,
    letterhead,
    parts: partsOf(view, name, words),
    foot: [view.rounding, quote.madeWith(version)].filter(Boolean).join(' '),
    running: [letterhead?.name, title].filter(Boolean).join(' · '),
  };
}

function nameOf({ draft, replaces }: QuoteView, words: QuoteWords): string {
  if (draft) return words.draft;
  return replaces ? words.revised : words.title;
}

function partsOf(view: QuoteView, name: string, words: Words): Part[] {
  const { quote } = words;
  return [
    ...(view.draft ? [warning(quote.nothingOffered(view.draft), view.from.draft, quote)] : []),
    { part: 'heading', level: 1, text: name, under: view.title, from: view.from.title },
    about(view, words),
    ...(view.replaces && !view.draft
      ? [paragraph({ text: quote.replaces(words.date(view.replaces)), from: view.from.replaces })]
      : []),
    { part: 'heading', level: 2, text: quote.work },
    ...view.works.map(oneWork),
    ...also(view, quote),
    ...view.notes.map(paragraph),
    money(view, quote),
    ...stages(view, quote),
    ...optionParts(view, quote),
    ...terms(view, quote),
  ];
}

function warning(text: string, from: From, words: QuoteWords): Part {
  return { part: 'warning', strong: words.notAQuote, text, from };
}

function paragraph(told: Told): Part {
  return { part: 'words', ...told };
}

/** For whom, where and when: only what the file says. */
function about(view: QuoteView, { date, quote: { facts } }: Words): Part {
  const until = view.validUntil && !view.draft ? [date(view.validUntil)] : [];
  const { from } = view;
  const rows: Fact[] = [
    { label: facts.client, lines: view.client, from: from.client },
    { label: facts.site, lines: view.site, from: from.site },
    { label: facts.ref, lines: view.ref ? [view.ref] : [], from: from.ref },
    { label: facts.date, lines: view.date ? [date(view.date)] : [], from: from.date },
    { label: facts.validUntil, lines: until, from: from.valid },
  ];
  return { part: 'facts', rows: rows.filter(({ lines }) => lines.length) };
}

/** What is said of it stands beside its drawing, where both go on one page. */
function oneWork({ title, says, notes, drawing, from }: QuotedWork): Part {
  const parts: Part[] = [
    { part: 'heading', level: 3, text: title, from },
    listOf(says),
    ...notes.map(paragraph),
  ];
  if (drawing) parts.push({ part: 'drawing', ...drawing });
  return { part: 'together', parts };
}

/** An item for each sentence. */
export function listOf(all: readonly Told[]): Part {
  return { part: 'list', items: all.map(({ text }) => [text]), from: all.map(({ from }) => from) };
}

/** Under each other, as the work is. */
function also({ also: costs }: QuoteView, words: QuoteWords): Part[] {
  if (!costs.length) return [];
  const items = costs.map(({ title, notes }) => [title, ...notes.map(({ text }) => text)]);
  return [
    { part: 'heading', level: 3, text: words.also },
    { part: 'list', items, from: costs.map(({ from }) => from) },
  ];
}

function money(view: QuoteView, words: QuoteWords): Part {
  const { off, net, taxes } = view;
  const rows = off.length || taxes.length ? [...off, net, ...taxes] : [];
  const all = [...rows.map((each) => row(each, words)), row(view.total, words, 'grand')];
  const table = amounts('price', words.what, all, words);
  return under(words.price, [table, ...view.reasons.map(paragraph)]);
}

function stages(view: QuoteView, words: QuoteWords): Part[] {
  if (!view.stages.length) return [];
  const rows = view.stages.map((each) => row(each, words));
  return [under(words.stages, [amounts('stages', words.when, rows, words)])];
}

function terms(view: QuoteView, words: QuoteWords): Part[] {
  return view.terms.length ? [under(words.terms, view.terms.map(paragraph))] : [];
}

/** Parts under a heading of theirs, on one page where they go on one. */
function under(text: string, parts: readonly Part[]): Part {
  return { part: 'together', parts: [{ part: 'heading', level: 2, text }, ...parts] };
}

function amounts(name: string, what: string, rows: readonly Row[], words: QuoteWords): Table {
  return {
    part: 'table',
    name,
    columns: [
      { title: what, holds: 'text' },
      { title: words.amount, holds: 'number' },
    ],
    rows,
  };
}

function row({ label, text, value, from }: Amount, words: QuoteWords, role?: Row['role']): Row {
  return { cells: [{ text: label }, { text: text ?? words.notComplete, value }], role, from };
}
