/** The pairs that a DXF file is made of: a group code on one line, its value on the next. */

export type Tag = readonly [code: number, value: string | number];

/** Codes that hold a count, a flag or a colour; every other number is a length, an angle or a ratio. */
const WHOLE = (code: number) =>
  (code >= 60 && code <= 99) ||
  (code >= 170 && code <= 179) ||
  (code >= 270 && code <= 289) ||
  (code >= 290 && code <= 299) ||
  (code >= 370 && code <= 379) ||
  (code >= 420 && code <= 429);

/** To a millionth of a millimetre, with a point, as CAD programs expect of a length; the same bytes everywhere. */
function numberText(code: number, value: number): string {
  if (WHOLE(code)) return String(value);
  const text = (Math.round(value * 1e6) / 1e6 + 0).toFixed(6).replace(/0+$/, '');
  return text.endsWith('.') ? `${text}0` : text;
}

/** The text of a DXF file: code and value on lines of their own. */
export function written(tags: readonly Tag[]): string {
  return tags
    .map(([code, value]) => {
      const text = typeof value === 'number' ? numberText(code, value) : value;
      return `${String(code).padStart(3)}\n${text}\n`;
    })
    .join('');
}

/** The names, in hexadecimal, by which one thing in the file points to another. */
export class Handles {
  private last = 0xff;

  /** Those below are for the tables and the few things that the file itself needs. */
  next(): string {
    return (++this.last).toString(16).toUpperCase();
  }

  /** One past all that were given out. */
  get seed(): string {
    return (this.last + 1).toString(16).toUpperCase();
  }
}
