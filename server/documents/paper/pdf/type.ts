/** Setting type: which face a letter stands in, how wide a text is, and what no face has. */
import type { Document } from './document';

/** The bytes of the fonts (TrueType) that a paper is set in. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  /** Signs that the other two have not, and the box □ for what none has. */
  readonly signs: Uint8Array;
}

export interface Style {
  readonly size: number;
  readonly bold?: boolean;
}

type Face = keyof Fonts;

interface Stretch {
  readonly face: Face;
  readonly text: string;
}

/** Stands for a letter that no face has. */
const BOX = '□';
/** Joiners, marks of an alternative form, the mark of byte order: nobody sees them, and they need no box. */
// biome-ignore lint/suspicious/noMisleadingCharacterClass: each of them is meant by itself
const UNSEEN = /[\u00ad\u200b-\u200d\u2060\ufe0e\ufe0f\ufeff]/g;

/** Characters of control, halves of a pair, and marks that turn the direction of writing: none stands on paper. */
const FORBIDDEN =
  /[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]|[\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

export class Type {
  /** Letters that no face has, in the order they came up. */
  readonly missing = new Set<string>();
  private readonly faces = new Map<string, Face | undefined>();
  private readonly widths = new Map<string, number>();

  constructor(
    readonly doc: Document,
    fonts: Fonts,
  ) {
    for (const face of ['regular', 'bold', 'signs'] as const) doc.registerFont(face, fonts[face]);
  }

  /** Points. */
  width(text: string, { size, bold = false }: Style): number {
    const key = `${bold} ${text}`;
    let width = this.widths.get(key);
    if (width === undefined) {
      width = this.measured(text, bold);
      this.widths.set(key, width);
    }
    return (width * size) / 1000;
  }

  /** Of letters a thousand points high. */
  private measured(text: string, bold: boolean): number {
    let sum = 0;
    for (const stretch of this.stretches(text, bold)) {
      this.doc.font(stretch.face).fontSize(1000);
      sum += this.doc.widthOfString(stretch.text);
    }
    return sum;
  }

  /** One line, its base line at `y`. */
  draw(text: string, x: number, y: number, style: Style): void {
    let at = x;
    for (const { face, text: part } of this.stretches(text, style.bold ?? false)) {
      this.doc.font(face).fontSize(style.size);
      this.doc.text(part, at, y, { lineBreak: false, baseline: 'alphabetic' });
      at += this.doc.widthOfString(part);
    }
  }

  /** The outline of the letters alone, in the colour and weight of lines: a ground for letters over a drawing. */
  outline(text: string, x: number, y: number, style: Style): void {
    let at = x;
    for (const { face, text: part } of this.stretches(text, style.bold ?? false)) {
      this.doc.font(face).fontSize(style.size);
      const how = { lineBreak: false, baseline: 'alphabetic', fill: false, stroke: true } as const;
      this.doc.text(part, at, y, how);
      at += this.doc.widthOfString(part);
    }
  }

  private stretches(text: string, bold: boolean): Stretch[] {
    const found: { face: Face; text: string }[] = [];
    for (const letter of seen(text)) {
      const face = this.faceOf(letter, bold);
      if (!face) this.missing.add(letter);
      const next = { face: face ?? 'signs', text: face ? letter : BOX };
      const last = found.at(-1);
      if (last?.face === next.face) last.text += next.text;
      else found.push(next);
    }
    return found;
  }

  private faceOf(letter: string, bold: boolean): Face | undefined {
    const key = `${bold} ${letter}`;
    if (!this.faces.has(key)) {
      const faces: Face[] = [bold ? 'bold' : 'regular', 'signs'];
      this.faces.set(
        key,
        faces.find((face) => this.has(face, letter)),
      );
    }
    return this.faces.get(key);
  }

  private has(face: Face, letter: string): boolean {
    this.doc.font(face);
    return this.doc._font.font.hasGlyphForCodePoint(letter.codePointAt(0)!);
  }
}

/** Letters in the form that fonts have them in; spaces of all kinds as one, but for the one that does not break. */
export function seen(text: string): string {
  return text
    .normalize('NFC')
    .replace(FORBIDDEN, '\ufffd')
    .replace(UNSEEN, '')
    .replace(/[\t\n\r\u2000-\u200a\u2028\u2029\u205f\u3000]/g, ' ')
    .replace(/\u202f/g, '\u00a0');
}
