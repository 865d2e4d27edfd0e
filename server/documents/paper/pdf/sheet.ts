/** Where things stand on a page of a PDF, and how its type is set. */
import type { StructElement } from 'pdfkit';
import { type Document, MM } from './document';
import type { Hold, Piece } from './flow';
import type { Style, Type } from './type';
import { wrapped } from './wrap';

/** Distances from the edges of the paper, points. */
export const EDGE = { side: 18 * MM, top: 16 * MM, bottom: 22 * MM } as const;

/** Sizes of type, points: those of the page in HTML. */
export const SIZE = { text: 10, small: 8, 1: 20, 2: 12.5, 3: 10.5 } as const;

/** From one base line to the next, as a share of the size of the type. */
export const LEADING = 1.4;

/** What every part is drawn with. */
export interface Setting {
  readonly doc: Document;
  readonly type: Type;
  /** The left edge of the text and how wide it is, points. */
  readonly left: number;
  readonly width: number;
  /** How high the text is, points. */
  readonly high: number;
}

/** Where lines of words stand and what they are in the document's structure. */
export interface Lines extends Style {
  readonly at: number;
  readonly width: number;
  readonly gap: number;
  /** What the last line holds to. */
  readonly hold?: Hold;
  readonly align?: 'left' | 'right';
}

/** What is read, and to which element of the structure it belongs. */
export function marked(doc: Document, element: StructElement, tag: string, draw: () => void): void {
  const content = doc.markStructureContent(tag);
  draw();
  doc.endMarkedContent();
  element.add(content);
}

/** What is there for the eye alone. */
export function artifact(doc: Document, draw: () => void, type = 'Layout'): void {
  doc.markContent('Artifact', { type });
  draw();
  doc.endMarkedContent();
}

/** A line from left to right; a fine one is grey. */
export function rule(doc: Document, x: number, y: number, width: number, weight: number): void {
  artifact(doc, () => {
    doc
      .lineWidth(weight)
      .strokeColor(weight < 0.5 ? '#777' : '#000')
      .undash();
    doc
      .moveTo(x, y)
      .lineTo(x + width, y)
      .stroke();
  });
}

/** From the upper edge of a line to its base line. */
export function baseline(size: number): number {
  return size * (LEADING / 2 + 0.36);
}

/** A text as pieces of a line each, none left alone at the top or the foot of a page. */
export function linePieces(
  text: string,
  how: Lines,
  element: StructElement,
  tag: string,
  { doc, type }: Setting,
): Piece[] {
  const lines = wrapped(text, how.width, how, type);
  const { size, hold = 0 } = how;
  return lines.map((line, i) => ({
    height: size * LEADING,
    gap: i === 0 ? how.gap : 0,
    hold: i === lines.length - 1 ? hold : i === 0 || i === lines.length - 2 ? 2 : 0,
    draw: (y) => {
      if (!line) return;
      const x = how.align === 'right' ? how.at + how.width - type.width(line, how) : how.at;
      marked(doc, element, tag, () => {
        doc.fillColor('#000');
        type.draw(line, x, y + baseline(size), how);
      });
    },
  }));
}
