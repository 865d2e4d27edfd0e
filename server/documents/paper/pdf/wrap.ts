/** Breaking texts into lines. */
import { type Style, seen, type Type } from './type';

/** A text in lines that are no wider than `width`, points. Line ends in it are kept; a word too long is cut. */
export function wrapped(text: string, width: number, style: Style, type: Type): string[] {
  return text.split(/\r\n|[\n\r\u2028\u2029]/).flatMap((line) => {
    const lines: string[] = [];
    let now = '';
    let wide = 0;
    for (const word of words(seen(line), width, style, type)) {
      const more = type.width(word, style);
      if (now && wide + type.width(word.trimEnd(), style) > width) {
        lines.push(now.trimEnd());
        now = '';
        wide = 0;
      }
      now += word;
      wide += more;
    }
    return [...lines, now.trimEnd()];
  });
}

/** Each with the spaces after it. A line may also end behind a dash or a stroke between letters. */
function words(line: string, width: number, style: Style, type: Type): string[] {
  const found = line.match(/[^ ]+ *| +/g) ?? [];
  return found
    .flatMap((word) => word.match(/(?:[^-–—/]|[-–—/](?!\p{L}\p{L}))*[-–—/]?/gu)!.filter(Boolean))
    .flatMap((word) =>
      type.width(word.trimEnd(), style) > width ? cut(word, width, style, type) : word,
    );
}

/** A word too long for a line, cut where it is full; marks over a letter stay with it. */
function cut(word: string, width: number, style: Style, type: Type): string[] {
  const pieces: string[] = [];
  let now = '';
  let wide = 0;
  for (const letter of word.match(/\P{M}\p{M}*|\p{M}+/gu) ?? []) {
    const more = type.width(letter, style);
    if (now && wide + more > width) {
      pieces.push(now);
      now = '';
      wide = 0;
    }
    now += letter;
    wide += more;
  }
  return [...pieces, now];
}

/** The widest of its words, points: no column that holds it should be narrower. */
export function longestWord(text: string, style: Style, type: Type): number {
  const all = words(seen(text).replaceAll(/[\n\r]/g, ' '), Number.POSITIVE_INFINITY, style, type);
  return Math.max(0, ...all.map((word) => type.width(word.trimEnd(), style)));
}
