import type { Point, Style } from '../model';

/** Paper, mm. */
export interface Paper {
  width: number;
  height: number;
  margin: number;
  /** It is cut off below what is drawn: for a page that has other things on it. */
  short?: boolean;
}

export const A4_LANDSCAPE: Paper = { width: 297, height: 210, margin: 10 };
/** 11 by 8 1/2 in. */
export const LETTER_LANDSCAPE: Paper = { width: 279.4, height: 215.9, margin: 10 };

/** A style of the work, or of what is written about it. */
export type Ink = Style;

/** What a sheet is made of: mm on paper, x to the right, y down, as paper is read. */
export type Mark =
  | {
      kind: 'box';
      ink: Ink;
      x: number;
      y: number;
      width: number;
      height: number;
      /** Part of the key, not of the work. */
      key?: boolean;
    }
  | { kind: 'shape'; ink: Ink; points: readonly Point[] }
  | { kind: 'line'; ink: Ink; x1: number; y1: number; x2: number; y2: number; key?: boolean }
  | {
      kind: 'text';
      x: number;
      /** Base line. */
      y: number;
      size: number;
      align: 'start' | 'middle' | 'end';
      /** Read from below upward. */
      turned?: boolean;
      /** On a plain ground, so that it reads over what it stands on. */
      backed?: boolean;
      bold?: boolean;
      text: string;
    };

/** A drawing put on paper at a scale. */
export interface Sheet {
  title: string;
  description: string;
  width: number;
  height: number;
  /** The scale is 1 to this. */
  scale: number;
  /** Where the work's left end at the ground lies, mm on paper. */
  origin: Point;
  marks: readonly Mark[];
}

/** Room that words and dimensions take round the work, mm on paper; heights in feet and inches are longer words. */
export const ROOM = { title: 14, chain: 9, rod: 18, heights: { millimetres: 16, feet: 22 } };

/** From work to paper. */
export interface Place {
  scale: number;
  x: (along: number) => number;
  y: (up: number) => number;
}

/** Letters are about this wide for their height, in the plain faces used. */
const LETTER = 0.56;

export function textWidth(text: string, size: number): number {
  return text.length * size * LETTER;
}
