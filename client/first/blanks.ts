/** A text whose amounts of money and words in quotation marks are places to fill in, as an editor’s snippet has them. */

/** Before a comment: what a line says, not what is said about it. */
const CODE = /^[^#]*/;
const PLACE = /(?<=[£$])\d[\d,.]*|\d[\d,.]*(?= €)|(?<=")[^"]+(?=")/g;

/** @returns a snippet that writes the text as it is where nothing is filled in */
export function blanks(text: string): string {
  let place = 0;
  return text
    .split('\n')
    .map((line) => {
      const [code = ''] = CODE.exec(line) ?? [];
      return pieces(code, () => ++place) + escaped(line.slice(code.length));
    })
    .join('\n');
}

function pieces(code: string, next: () => number): string {
  let [made, end] = ['', 0];
  for (const found of code.matchAll(PLACE)) {
    made += `${escaped(code.slice(end, found.index))}\${${next()}:${escaped(found[0])}}`;
    end = found.index + found[0].length;
  }
  return made + escaped(code.slice(end));
}

function escaped(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}
