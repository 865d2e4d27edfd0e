/** Each part of a paper as pieces to fill pages with, and as elements of the document's structure. */
import type { StructElement } from 'pdfkit';
import type { DrawingPart, Fact, Part } from '../model';
import { MM } from './document';
import { type Hold, NEW_PAGE, type Piece } from './flow';
import { drawSheet } from './marks';
import { artifact, linePieces, marked, rule, type Setting, SIZE } from './sheet';
import { tablePieces } from './table';

type Pieces = (Piece | typeof NEW_PAGE)[];

/** @param parent to which the elements of these parts are added, in the order they are read */
export function piecesOf(parts: readonly Part[], parent: StructElement, set: Setting): Pieces {
  return parts.flatMap((part) => pieces(part, parent, set));
}

function pieces(part: Part, parent: StructElement, set: Setting): Pieces {
  switch (part.part) {
    case 'heading':
      return heading(part, parent, set);
    case 'words':
      return words(part, parent, set);
    case 'warning':
      return warning(part, parent, set);
    case 'facts':
      return facts(part.rows, parent, set);
    case 'list':
      return list(part, parent, set);
    case 'table':
      return tablePieces(part, parent, set);
    case 'drawing':
      return [drawing(part, parent, set)];
    case 'together':
      return together(piecesOf(part.parts, parent, set));
    case 'new-page':
      return [NEW_PAGE];
  }
}

/** An element of the structure under another. */
function child(
  parent: StructElement,
  tag: string,
  { doc }: Setting,
  more?: { alt?: string; scope?: string },
): StructElement {
  const element = doc.struct(tag, more);
  parent.add(element);
  return element;
}

type PartOf<K extends Part['part']> = Extract<Part, { part: K }>;

const GAPS = { 1: 0, 2: 6 * MM, 3: 3 * MM } as const;

function heading({ level, text, under }: PartOf<'heading'>, parent: StructElement, set: Setting) {
  const { left: at, width } = set;
  const tag = `H${level}`;
  const how = { size: SIZE[level], bold: true, at, width, gap: GAPS[level], hold: 2 as Hold };
  const lines = linePieces(text, how, child(parent, tag, set), tag, set);
  const [first, ...others] = lines.map((line) => ({ ...line, hold: 2 as Hold }));
  const named: Piece = { ...first!, draw: withBookmark(first!, level, text, set) };
  const below = under
    ? linePieces(
        under,
        { size: SIZE[2], at, width, gap: 1, hold: 2 },
        child(parent, 'P', set),
        'P',
        set,
      )
    : [];
  return [named, ...others, ...below, ...(level === 2 ? [underline(set)] : space(level))];
}

/** A reader may go to headings of the second level by the list of them that a viewer shows. */
function withBookmark(piece: Piece, level: number, text: string, { doc }: Setting): Piece['draw'] {
  return (y) => {
    if (level === 2) doc.outline.addItem(text);
    piece.draw(y);
  };
}

function underline({ doc, left, width }: Setting): Piece {
  return { height: 2.5 * MM, gap: 0, hold: 2, draw: (y) => rule(doc, left, y + MM, width, 0.5) };
}

function space(level: number): Piece[] {
  return level === 1 ? [{ height: 4 * MM, gap: 0, hold: 2, draw: () => {} }] : [];
}

function words({ text, strong, small }: PartOf<'words'>, parent: StructElement, set: Setting) {
  const size = small ? SIZE.small : SIZE.text;
  const how = { size, bold: strong, at: set.left, width: set.width, gap: MM };
  return linePieces(text, how, child(parent, 'P', set), 'P', set);
}

/** A frame that goes over pages where the words do. */
function warning({ strong, text }: PartOf<'warning'>, parent: StructElement, set: Setting) {
  const pad = 4 * MM;
  const size = 11.5;
  const box = { at: set.left + pad, width: set.width - 2 * pad };
  const element = child(parent, 'P', set);
  const lines = [
    ...linePieces(strong, { ...box, size, bold: true, gap: 0, hold: 2 }, element, 'P', set),
    ...linePieces(text, { ...box, size, gap: 0 }, element, 'P', set),
  ];
  const edge = (height: number, top: boolean, hold: Hold): Piece => ({
    height,
    gap: top ? 2 * MM : 0,
    hold,
    draw: (y) => frame(y, height, top ? 'top' : 'bottom', set),
  });
  const inside = lines.map(
    (line): Piece => ({
      ...line,
      hold: line.hold || 1,
      draw: (y) => {
        frame(y, line.height, 'sides', set);
        line.draw(y);
      },
    }),
  );
  const last = inside.at(-1);
  if (last) inside[inside.length - 1] = { ...last, hold: 2 };
  return [edge(2.5 * MM, true, 2), ...inside, edge(2.5 * MM, false, 0), gapAfter(4 * MM)];
}

function gapAfter(height: number): Piece {
  return { height, gap: 0, hold: 0, draw: () => {} };
}

function frame(y: number, height: number, part: 'top' | 'bottom' | 'sides', set: Setting): void {
  const { doc, left, width } = set;
  artifact(doc, () => {
    doc.lineWidth(2).strokeColor('#000').lineCap('butt').undash();
    for (const x of [left + 1, left + width - 1]) doc.moveTo(x, y).lineTo(x, y + height);
    const level = part === 'top' ? y + 1 : y + height - 1;
    if (part !== 'sides') doc.moveTo(left, level).lineTo(left + width, level);
    doc.stroke();
  });
}

/** What stands before the words of an item, and where those begin. */
interface Labelled {
  readonly label: string;
  readonly bold?: boolean;
  readonly lines: readonly string[];
}

/** Items of a list, a label on the left of each. */
function labelled(items: readonly Labelled[], room: number, parent: StructElement, set: Setting) {
  const list = child(parent, 'L', set);
  return items.flatMap(({ label, bold, lines }): Piece[] => {
    const item = child(list, 'LI', set);
    const name = child(item, 'Lbl', set);
    const body = child(item, 'LBody', set);
    const how = { size: SIZE.text, at: set.left + room, width: set.width - room, gap: 0 };
    const rows = lines.flatMap((text, i) =>
      linePieces(text, { ...how, hold: i < lines.length - 1 ? 1 : 0 }, body, 'LBody', set),
    );
    const beside = linePieces(
      label,
      { size: SIZE.text, bold, at: set.left, width: room - 2 * MM, gap: 0 },
      name,
      'Lbl',
      set,
    );
    return side(beside, rows).map((piece, i) => (i ? piece : { ...piece, gap: 0.4 * MM }));
  });
}

/** Two columns of lines, drawn line by line, the left one first. */
function side(left: readonly Piece[], right: readonly Piece[]): Piece[] {
  const number = Math.max(left.length, right.length);
  return Array.from({ length: number }, (_, i) => {
    const both = [left[i], right[i]].filter((piece) => piece !== undefined);
    return {
      height: Math.max(...both.map(({ height }) => height)),
      gap: 0,
      hold: Math.max(...both.map(({ hold }) => hold), i < left.length - 1 ? 2 : 0) as Hold,
      draw: (y) => {
        for (const piece of both) piece.draw(y);
      },
    };
  });
}

function facts(rows: readonly Fact[], parent: StructElement, set: Setting): Piece[] {
  if (!rows.length) return [];
  const items = rows.map(({ label, lines }) => ({ label, bold: true, lines }));
  return [...labelled(items, 32 * MM, parent, set), gapAfter(2 * MM)];
}

function list({ items, ordered }: PartOf<'list'>, parent: StructElement, set: Setting): Piece[] {
  if (!items.length) return [];
  const labels = items.map((_, i) => (ordered ? `${i + 1}.` : '•'));
  const wide = Math.max(...labels.map((label) => set.type.width(label, { size: SIZE.text })));
  const all = items.map((lines, i) => ({ label: labels[i]!, lines }));
  return labelled(all, Math.max(5 * MM, wide + 2 * MM + 1), parent, set);
}

function drawing({ sheet, words: alt }: DrawingPart, parent: StructElement, set: Setting): Piece {
  const { doc, left, width, high, type } = set;
  const scale = Math.min(MM, width / sheet.width, (high - 14 * MM) / sheet.height);
  const height = sheet.height * scale;
  const figure = child(parent, 'Figure', set, { alt });
  return {
    height,
    gap: 3 * MM,
    hold: 0,
    draw: (y) => {
      const bottom = doc.page.height - y - height;
      const box = [left, bottom, left + sheet.width * scale, bottom + height];
      figure.dictionary.data.A = { O: 'Layout', Placement: 'Block', BBox: box };
      marked(doc, figure, 'Figure', () => {
        doc.save();
        doc.translate(left, y).scale(scale);
        drawSheet(sheet, doc, type);
        doc.restore();
      });
    },
  };
}

function together(pieces: Pieces): Pieces {
  const last = pieces.length - 1;
  return pieces.map((piece, i) =>
    piece === NEW_PAGE || i === last || piece.hold ? piece : { ...piece, hold: 1 },
  );
}
