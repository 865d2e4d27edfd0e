/** How a paper looks in a browser and printed from there: black on white, rules instead of tints, nothing fetched. */
import type { Words } from '../../words';
import type { Paper } from '../model';

export function styleFor(paper: Paper, words: Words): string {
  return `
@page { size: ${paper.size}; margin: 16mm 18mm 20mm;
  @bottom-left { content: ${cssText(paper.running)}; ${FOOT} width: 75%; }
  @bottom-right { content: ${pageCount(words)}; ${FOOT} text-align: right; }
}
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 12mm 0; max-width: 174mm; background: #fff; color: #000;
  font: 10.5pt/1.4 "Helvetica Neue", Helvetica, Arial, "Liberation Sans", sans-serif; overflow-wrap: anywhere; }
header { display: flex; justify-content: space-between; gap: 6mm; border-bottom: 1.5pt solid #000; padding-bottom: 3mm; margin-bottom: 6mm; }
header p { margin: 0; font-size: 9.5pt; }
header .firm { font-size: 15pt; font-weight: bold; margin-bottom: 1mm; }
header img { max-width: 50mm; max-height: 22mm; object-fit: contain; align-self: flex-start; }
h1 { font-size: 20pt; line-height: 1.2; margin: 0 0 4mm; }
h1 span, h2 span, h3 span { display: block; font-size: 12.5pt; font-weight: normal; margin-top: 1mm; }
h2 { font-size: 12.5pt; margin: 6mm 0 1mm; border-bottom: 0.5pt solid #000; padding-bottom: 1mm; }
h3 { font-size: 10.5pt; margin: 3mm 0 1mm; }
h1, h2, h3, caption { break-after: avoid; }
p { margin: 1mm 0; orphans: 2; widows: 2; }
.small { font-size: 8pt; }
ul, ol { margin: 0; padding-left: 6mm; }
li, tr, figure, .together { break-inside: avoid; }
dl { display: grid; grid-template-columns: 30mm 1fr; gap: 0.3mm 4mm; margin: 1mm 0 3mm; }
dt { font-weight: bold; }
dd { margin: 0; }
table { width: 100%; margin: 2mm 0; border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: bold; }
thead { display: table-header-group; }
th, td { text-align: left; vertical-align: top; padding: 1mm 4mm 1mm 0; font-weight: normal; border-bottom: 0.25pt solid #777; }
th:last-child, td:last-child { padding-right: 0; }
.number { text-align: right; white-space: nowrap; }
thead th, thead td { font-size: 8.5pt; font-weight: bold; vertical-align: bottom; border-bottom: 0.75pt solid #000; }
.total th, .total td { font-weight: bold; }
.grand th, .grand td { font-weight: bold; font-size: 12pt; border-bottom: 1.5pt double #000; }
.total, .grand { break-before: avoid; }
figure { margin: 4mm 0 0; }
figure img { display: block; width: 100%; height: auto; max-height: 240mm; object-fit: contain; object-position: left top; }
.warning { border: 2pt solid #000; padding: 3mm 4mm; margin: 0 0 6mm; font-size: 11.5pt; }
.new-page { break-after: page; border: 0; margin: 0; }
footer { margin-top: 10mm; border-top: 0.25pt solid #777; padding-top: 2mm; font-size: 8pt; }
@media print { body { padding: 0; max-width: none; } }
@media screen and (max-width: 190mm) { body { padding: 6mm; } }
`;
}

const FOOT = 'font: 8pt "Helvetica Neue", Helvetica, Arial, "Liberation Sans", sans-serif;';

/** A text in a style sheet: whatever could end it, or the element it stands in, is written by its number. */
function cssText(text: string): string {
  const safe = text.replace(
    /[^\p{L}\p{N} .,·-]/gu,
    (sign) => `\\${sign.codePointAt(0)!.toString(16)} `,
  );
  return `"${safe}"`;
}

/** `Page 1 of 3` with the browser’s own numbers in it, in whatever order the language puts them. */
function pageCount(words: Words): string {
  const [number, of] = [-1, -2];
  const counters: Readonly<Record<string, string>> = {
    [number]: 'counter(page)',
    [of]: 'counter(pages)',
  };
  return words
    .page(number, of)
    .split(/(-[12])/)
    .filter(Boolean)
    .map((part) => counters[part] ?? cssText(part))
    .join(' ');
}
