/** Each part of a paper in HTML. */
import { escaped } from '../../../../shared/escaped';
import { element, linesIn, textIn } from '../../html';
import type { DrawingPart, Fact, From, Part, Row, Table } from '../model';

type Drawn = (sheet: DrawingPart['sheet'], words: string) => string;

/**
 * Attributes that say which line of the job texts come from: for a preview that stands beside the job, and for no file
 * that goes out, which has none of them.
 */
export type Marked = (
  from: From | undefined,
  what: Part['part'] | 'cell',
  level?: number,
) => string;

const UNMARKED: Marked = () => '';

export function partsIn(parts: readonly Part[], drawn: Drawn, marked = UNMARKED): string {
  return parts
    .map((part) => partIn(part, drawn, marked))
    .filter(Boolean)
    .join('\n');
}

function partIn(part: Part, drawn: Drawn, marked: Marked): string {
  switch (part.part) {
    case 'heading': {
      const under = part.under ? textIn('span', part.under) : '';
      const from = marked(part.from, part.part, part.level);
      return element(`h${part.level}`, escaped(part.text) + under, from);
    }
    case 'words':
      return words(part, marked);
    case 'warning':
      return element(
        'p',
        `${textIn('strong', part.strong)} ${escaped(part.text)}`,
        attributes('class="warning" role="alert"', marked(part.from, part.part)),
      );
    case 'facts':
      return facts(part.rows, marked);
    case 'list':
      return list(part, marked);
    case 'table':
      return table(part, marked);
    case 'drawing':
      return drawn(part.sheet, part.words);
    case 'together':
      return element('section', `\n${partsIn(part.parts, drawn, marked)}\n`, 'class="together"');
    case 'new-page':
      return '<hr class="new-page">';
  }
}

function words(part: Extract<Part, { part: 'words' }>, marked: Marked): string {
  const { text, strong, small, from } = part;
  const lines = text.split('\n').map(escaped).join('<br>\n');
  const all = attributes(small ? 'class="small"' : '', marked(from, part.part));
  return element('p', strong ? element('strong', lines) : lines, all);
}

function attributes(...all: readonly string[]): string {
  return all.filter(Boolean).join(' ');
}

function facts(rows: readonly Fact[], marked: Marked): string {
  if (!rows.length) return '';
  const said = rows.map(({ label, lines, from }) => {
    return `\n${textIn('dt', label)}${linesIn('dd', lines, marked(from, 'facts'))}`;
  });
  return element('dl', said.join(''));
}

function list({ items, ordered, from }: Extract<Part, { part: 'list' }>, marked: Marked): string {
  const all = items.map((lines, i) => linesIn('li', lines, marked(from?.[i], 'list'))).join('\n');
  return all && element(ordered ? 'ol' : 'ul', `\n${all}\n`);
}

function table(part: Table, marked: Marked): string {
  const rows = part.rows.map((row) => rowIn(row, part, marked));
  // A column that needs no title is none to whoever hears the table, either.
  const head = part.columns.map(({ title, holds }) =>
    title ? textIn('th', title, scope('col', holds)) : '<td></td>',
  );
  const parts = [
    part.caption ? textIn('caption', part.caption) : '',
    element('thead', element('tr', head.join(''))),
    element('tbody', rows.join('\n')),
  ];
  return element('table', `\n${parts.filter(Boolean).join('\n')}\n`);
}

function scope(of: string, holds: string): string {
  return `scope="${of}"${holds === 'number' ? ' class="number"' : ''}`;
}

/**
 * What a row is about stands in its first cell; one that is empty heads nothing. A row leads where its only figure does;
 * each of several figures leads by itself.
 */
function rowIn({ cells, role, from }: Row, { columns }: Table, marked: Marked): string {
  const own = marked(from ?? cells.find((cell) => cell.from)?.from, 'table');
  const all = columns.map(({ holds }, i) => {
    const lines = (cells[i]?.text ?? '').split('\n');
    if (i === 0 && holds === 'text' && lines.join('')) return linesIn('th', lines, 'scope="row"');
    const figure = cells[i]?.from && marked(cells[i].from, 'cell');
    const at = figure && figure !== own ? figure : '';
    return linesIn('td', lines, attributes(holds === 'number' ? 'class="number"' : '', at));
  });
  return element('tr', all.join(''), attributes(role ? `class="${role}"` : '', own));
}
