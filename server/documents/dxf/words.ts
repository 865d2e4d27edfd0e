/** Text as a DXF file of the year 2000 holds it: one line, plain ASCII, everything else by its number. */

/** Signs that the format would read together as an order: a space between them leaves them what they are. */
const ORDERS = /%(?=%)|\\(?=[UuMm]\+)|\^/g;

/**
 * One line of text. What would end the line becomes a space; what has no number of four digits, or turns the
 * direction of writing, a question mark.
 */
export function dxfText(text: string): string {
  return Array.from(text.replace(ORDERS, '$& '), letter).join('');
}

function letter(sign: string): string {
  const code = sign.codePointAt(0)!;
  const control =
    code < 0x20 || (code >= 0x7f && code < 0xa0) || code === 0x2028 || code === 0x2029;
  if (control) return ' ';
  const turns = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);
  if (turns || code > 0xffff || (code >= 0xd800 && code <= 0xdfff)) return '?';
  return code > 0x7e ? `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}` : sign;
}
