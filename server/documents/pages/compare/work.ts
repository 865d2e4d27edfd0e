/** Pieces of work that are others than before, and the amounts of the job. */
import type { Comparison, FigureChange, WorkChange } from '../../../engine/compare';
import { tableOf, tableUnder } from '../../cells';
import type { Part, Row, Table } from '../../paper/model';
import type { CompareWords } from '../../words';
import { figureRow, lineText } from './changes';
import { boughtIn, figuresTold, linesTold, quantitiesTold, workHead } from './told';

export function workParts(found: Comparison, words: CompareWords): Part[] {
  const pieces = found.work.map((change) => pieceParts(change, found, words));
  const order: Part[] = found.reordered ? [{ part: 'words', text: words.reordered }] : [];
  if (!pieces.length && !order.length) return [];
  return [{ part: 'heading', level: 2, text: words.work }, ...pieces, ...order];
}

function pieceParts(change: WorkChange, found: Comparison, words: CompareWords): Part {
  const lines = linesTold(change).map((line) => [lineText(line, words)]);
  const rows = figuresTold(change).map((figure) => figureRow(figure, figure.label, found));
  const parts: Part[] = [
    { part: 'heading', level: 3, text: headOf(change, words) },
    ...(lines.length ? [{ part: 'list' as const, items: lines }] : []),
    ...(rows.length ? [changeTable(headOf(change, words), rows, words)] : []),
  ];
  return { part: 'together', parts };
}

function headOf(work: WorkChange, words: CompareWords): string {
  const said = workHead(work);
  switch (work.change) {
    case 'renamed':
      return words.renamed(said, work.before!.name);
    case 'new':
      return words.isNew(said);
    case 'gone':
      return words.isGone(said);
    case 'changed':
      return said;
  }
}

export function quantityParts(found: Comparison, words: CompareWords): Part[] {
  const label = (figure: FigureChange) => {
    const material = boughtIn(figure);
    return material ? words.toBuy(material) : figure.label;
  };
  const rows = quantitiesTold(found).map((figure) => figureRow(figure, label(figure), found));
  return tableUnder(words.quantities, changeTable(words.quantities, rows, words));
}

export function changeTable(
  name: string,
  rows: readonly Row[],
  { what, was, is, by }: CompareWords,
): Table {
  return tableOf(name, [what, was, is, by], rows);
}
