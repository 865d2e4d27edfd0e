/** How many columns of a terminal a text takes. */

const MARKS = /\p{Mark}|\u200b|\u200d|\ufe0f/u;
/** Scripts whose letters are two columns wide, and signs shown as pictures. */
const WIDE =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\uff01-\uff60]/u;

export function widthOf(text: string): number {
  if (/^[\x20-\x7e]*$/.test(text)) return text.length;
  let width = 0;
  for (const sign of text) width += MARKS.test(sign) ? 0 : WIDE.test(sign) ? 2 : 1;
  return width;
}

export function padded(text: string, width: number, side: 'left' | 'right'): string {
  const room = ' '.repeat(Math.max(0, width - widthOf(text)));
  return side === 'left' ? text + room : room + text;
}

/** Broken at spaces into lines of at most `width`; a longer word stands alone. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line ? `${line} ${word}` : word;
    if (line && widthOf(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
