/** Options on a quote: what each is, and then all their prices side by side. */
import type { Part, Row, Table } from '../paper/model';
import type { QuoteWords } from '../words';
import type { Amount } from './money';
import type { QuotedOption } from './options';
import type { QuoteView } from './view';

export function optionParts(view: QuoteView, words: QuoteWords): Part[] {
  if (!view.options.length) return [];
  const [first, ...others] = view.options.map((option) => oneOption(option, words));
  return [
    { part: 'together', parts: [{ part: 'heading', level: 2, text: words.options }, first!] },
    ...others,
    { part: 'together', parts: [table(view, words)] },
  ];
}

function oneOption({ title, says, notes, notWith, from }: QuotedOption, words: QuoteWords): Part {
  const more = [...notes, ...(notWith.length ? [words.notWith(notWith.join(', '))] : [])];
  return {
    part: 'together',
    parts: [
      { part: 'heading', level: 3, text: title, from },
      ...(says.length ? [{ part: 'list' as const, items: says.map((each) => [each]) }] : []),
      ...more.map((text): Part => ({ part: 'words', text })),
    ],
  };
}

function table({ options, total }: QuoteView, words: QuoteWords): Table {
  const cell = ({ text, value, from }: Amount) => ({
    text: text ?? words.notComplete,
    value,
    from,
  });
  const rows = options.map(
    ({ title, more, price, from }): Row => ({
      cells: [{ text: title }, cell(more), cell(price)],
      from,
    }),
  );
  return {
    part: 'table',
    name: 'options',
    columns: [
      { title: words.option, holds: 'text' },
      { title: words.more, holds: 'number' },
      { title: words.priceWith, holds: 'number' },
    ],
    rows: [{ cells: [{ text: words.asQuoted }, { text: '' }, cell(total)] }, ...rows],
  };
}
