/** How a text was written, as far as it shows in one that was read as UTF-8. */

/** Of the first so many characters every second one is nought where ASCII is written in two bytes each (RFC 2781). */
const LOOKED_AT = 400;
/** Less than half of them, since not all letters of a file are ASCII; and more than a stray one or two. */
const PART = 1 / 4;
const LEAST = 8;

export function isUtf16(text: string): boolean {
  const first = text.slice(0, LOOKED_AT);
  return first.split('\0').length - 1 >= Math.max(LEAST, first.length * PART);
}
