/** Each part of a paper in HTML. */
import { element, escaped, linesIn, textIn } from '../../html';
import type { DrawingPart, Fact, Part, Row, Table } from '../model';

type Drawn = (sheet: DrawingPart['sheet'], words: string) => string;

export function partsIn(parts: readonly Part[], drawn: Drawn): string {
  return parts
    .map((part) => partIn(part, drawn))
    .filter(Boolean)
    .join('\n');
}

function partIn(part: Part, drawn: Drawn): string {
  switch (part.part) {
    case 'heading': {
      const under = part.under ? textIn('span', part.under) : '';
      return element(`h${part.level}`, escaped(part.text) + under);
    }
    case 'words':
      return words(part);
    case 'warning':
      return element(
        'p',
        `${textIn('strong', part.strong)} ${escaped(part.text)}`,
        'class="warning" role="alert"',
      );
    case 'facts':
      return facts(part.rows);
    case 'list':
      return list(part);
    case 'table':
      return table(part);
    case 'drawing':
      return drawn(part.sheet, part.words);
    case 'together':
      return element('section', `\n${partsIn(part.parts, drawn)}\n`, 'class="together"');
    case 'new-page':
      return '<hr class="new-page">';
  }
}

function words({ text, strong, small }: Extract<Part, { part: 'words' }>): string {
  const lines = text.split('\n').map(escaped).join('<br>\n');
  return element('p', strong ? element('strong', lines) : lines, small ? 'class="small"' : '');
}

function facts(rows: readonly Fact[]): string {
  if (!rows.length) return '';
  const said = rows.map(({ label, lines }) => `\n${textIn('dt', label)}${linesIn('dd', lines)}`);
  return element('dl', said.join(''));
}

function list({ items, ordered }: Extract<Part, { part: 'list' }>): string {
  const all = items.map((lines) => linesIn('li', lines)).join('\n');
  return all && element(ordered ? 'ol' : 'ul', `\n${all}\n`);
}

function table(part: Table): string {
  const rows = part.rows.map((row) => rowIn(row, part));
  const head = part.columns.map(({ title, holds }) => textIn('th', title, scope('col', holds)));
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

/** What a row is about stands in its first cell. */
function rowIn({ cells, role }: Row, { columns }: Table): string {
  const all = columns.map(({ holds }, i) => {
    const lines = (cells[i]?.text ?? '').split('\n');
    if (i === 0 && holds === 'text') return linesIn('th', lines, 'scope="row"');
    return linesIn('td', lines, holds === 'number' ? 'class="number"' : '');
  });
  return element('tr', all.join(''), role ? `class="${role}"` : '');
}
