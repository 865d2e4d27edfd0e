/** A paper as Markdown (CommonMark, with the tables of GFM), for a mail or a page of notes. */
import type { Cell, DrawingPart, Letterhead, Paper, Part, Row, Table } from '../model';
import { cell, line } from './escape';

/** A paper without its drawings, which Markdown has no room for. */
export function markdownOf(paper: Paper): string {
  const blocks = [
    ...(paper.letterhead ? head(paper.letterhead) : []),
    ...paper.parts.flatMap(blocksOf),
    paper.foot ? line(paper.foot) : '',
  ];
  return `${blocks.filter(Boolean).join('\n\n')}\n`;
}

function head({ name, address, contact }: Letterhead): string[] {
  return [name && `**${line(name)}**`, broken([address.join(', '), contact.join(' · ')])];
}

/** Lines under each other in one paragraph. */
function broken(lines: readonly string[]): string {
  return lines
    .flatMap((text) => text.split('\n'))
    .filter((text) => text.trim())
    .map(line)
    .join('\\\n');
}

function blocksOf(part: Part): string[] {
  switch (part.part) {
    case 'heading':
      return [`${'#'.repeat(part.level)} ${line(part.text)}`, part.under ? line(part.under) : ''];
    case 'words':
      return [part.strong ? strong(part.text) : broken([part.text])];
    case 'warning':
      return [`> ${strong(part.strong)} ${line(part.text)}`];
    case 'facts':
      return [
        part.rows
          .map(({ label, lines }) => item('-', [`${label}: ${lines[0] ?? ''}`, ...lines.slice(1)]))
          .join('\n'),
      ];
    case 'list':
      return [
        part.items.map((lines, i) => item(part.ordered ? `${i + 1}.` : '-', lines)).join('\n'),
      ];
    case 'table':
      return [part.caption ? strong(part.caption) : '', table(part)];
    case 'drawing':
      return [drawing(part)];
    case 'together':
      return part.parts.flatMap(blocksOf);
    case 'new-page':
      return ['---'];
  }
}

function strong(text: string): string {
  return text.trim() ? `**${line(text)}**` : '';
}

/** Further lines stand under the first, indented to where it begins. */
function item(mark: string, lines: readonly string[]): string {
  const indent = ' '.repeat(mark.length + 1);
  const all = lines.flatMap((text) => text.split('\n')).filter((text) => text.trim());
  return `${mark} ${all.map(line).join(`\\\n${indent}`)}`;
}

/** A picture does not go into a text: what it shows does. */
function drawing({ words }: DrawingPart): string {
  return `*${line(words)}*`;
}

function table({ columns, rows }: Table): string {
  const under = columns.map(({ holds }) => (holds === 'number' ? '--:' : '---'));
  const row = (texts: readonly string[]) => `| ${texts.join(' | ')} |`;
  return [
    row(columns.map(({ title }) => cell(title))),
    row(under),
    ...rows.map((each) => row(columns.map((_, i) => cellOf(each.cells[i], each)))),
  ].join('\n');
}

function cellOf(of: Cell | undefined, { role }: Row): string {
  const text = cell(of?.text ?? '');
  return role && text ? `**${text}**` : text;
}
