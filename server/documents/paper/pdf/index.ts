/**
 * A paper as a PDF: tagged, so that it can be read aloud, with its fonts in it, and the same bytes for the same paper.
 * It claims PDF/UA; of what that asks, structure, language, title, alternatives and fonts are tested.
 */
import type { StructElement } from 'pdfkit';
import { wordsFor } from '../../words';
import type { Paper } from '../model';
import { Document, MM, printable } from './document';
import { fill, type Piece } from './flow';
import { headPieces } from './letterhead';
import { piecesOf } from './parts';
import { readyPicture } from './picture';
import { artifact, baseline, EDGE, rule, type Setting, SIZE } from './sheet';
import { type Fonts, Type } from './type';

export type { Fonts } from './type';

export interface Pdf {
  readonly bytes: Uint8Array;
  /** Letters that the fonts have not, each once: a box stands for them. */
  readonly missing: readonly string[];
  /** The letterhead's picture cannot be read, and is left out. */
  readonly noLogo: boolean;
}

/** The bytes of a tagged PDF, and the letters that its fonts have not; the same paper gives the same bytes. */
export function pdfOf(paper: Paper, fonts: Fonts): Pdf {
  const doc = new Document(paper);
  const type = new Type(doc, fonts);
  const root = doc.struct('Document');
  doc.addStructure(root);
  const [width, high] = sizeOf(paper);
  const set: Setting = {
    doc,
    type,
    left: EDGE.side,
    width: width - 2 * EDGE.side,
    high: high - EDGE.top - EDGE.bottom,
  };
  const head = paper.letterhead;
  const picture = head?.logo && readyPicture(head.logo, doc);
  const pieces = [
    ...(head ? headPieces(head, picture, root, set) : []),
    ...piecesOf(paper.parts, root, set),
    ...(paper.foot ? footPieces(paper.foot, root, set) : []),
  ];
  fill(pieces, { top: EDGE.top, bottom: high - EDGE.bottom, next: () => doc.addPage() });
  feet(paper, set, high);
  root.end();
  return {
    bytes: doc.bytes(),
    missing: [...type.missing],
    noLogo: head?.logo !== undefined && !picture,
  };
}

/** The small print, under a fine rule. */
function footPieces(text: string, root: StructElement, set: Setting) {
  const { doc, left, width } = set;
  const line: Piece = {
    height: 2 * MM,
    gap: 8 * MM,
    hold: 2,
    draw: (y) => rule(doc, left, y, width, 0.25),
  };
  return [line, ...piecesOf([{ part: 'words', text, small: true }], root, set)];
}

function sizeOf({ size }: Paper): [number, number] {
  return size === 'A4' ? [(210 * 72) / 25.4, (297 * 72) / 25.4] : [612, 792];
}

/** What is said at the foot of each page, once it is known how many there are. */
function feet({ running, lang }: Paper, set: Setting, high: number): void {
  const { doc, type, left, width } = set;
  const { count } = doc.bufferedPageRange();
  const style = { size: SIZE.small };
  const y = high - EDGE.bottom + 22;
  for (let page = 0; page < count; page++) {
    doc.switchToPage(page);
    const number = wordsFor(lang).page(page + 1, count);
    const room = width - type.width(number, style) - 20;
    artifact(
      doc,
      () => {
        doc.lineWidth(0.25).strokeColor('#777').undash();
        doc
          .moveTo(left, y - 3)
          .lineTo(left + width, y - 3)
          .stroke();
        doc.fillColor('#000');
        type.draw(shortened(printable(running), room, type), left, y + baseline(8), style);
        type.draw(number, left + width - type.width(number, style), y + baseline(8), style);
      },
      'Pagination',
    );
  }
}

/** As much of a text as goes on one line. */
function shortened(text: string, room: number, type: Type): string {
  const style = { size: SIZE.small };
  if (type.width(text, style) <= room) return text;
  // More than goes on any line: each letter less is measured again.
  const letters = [...text.slice(0, 300)];
  while (letters.length && type.width(`${letters.join('')}…`, style) > room) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
