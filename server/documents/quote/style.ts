/** How the quote looks on paper and on screen: black on white, rules instead of tints, nothing fetched. */

export function styleFor(paper: 'A4' | 'Letter'): string {
  return `
@page { size: ${paper}; margin: 16mm 18mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 12mm 0; max-width: 174mm; background: #fff; color: #000;
  font: 10.5pt/1.4 "Helvetica Neue", Helvetica, Arial, "Liberation Sans", sans-serif; }
header { border-bottom: 1.5pt solid #000; padding-bottom: 3mm; margin-bottom: 6mm; }
header p { margin: 0; font-size: 9.5pt; }
header .firm { font-size: 15pt; font-weight: bold; margin-bottom: 1mm; }
h1 { font-size: 20pt; line-height: 1.2; margin: 0 0 4mm; }
h1 span { display: block; font-size: 12.5pt; font-weight: normal; margin-top: 1mm; }
h2 { font-size: 12.5pt; margin: 6mm 0 1mm; border-bottom: 0.5pt solid #000; padding-bottom: 1mm; }
h3 { font-size: 10.5pt; margin: 3mm 0 1mm; }
h2, h3 { break-after: avoid; }
p { margin: 1mm 0; }
ul { margin: 0; padding-left: 5mm; }
li, tr, figure, .stages, .money, .terms { break-inside: avoid; }
dl { display: grid; grid-template-columns: 28mm 1fr; gap: 0.3mm 4mm; margin: 0; }
dt { font-weight: bold; }
dd { margin: 0; }
table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { text-align: left; padding: 1mm 0; font-weight: normal; border-bottom: 0.25pt solid #777; }
td, thead th:last-child { text-align: right; white-space: nowrap; padding-left: 6mm; }
thead th { font-size: 8.5pt; }
tfoot th, tfoot td { font-weight: bold; font-size: 12pt; border-bottom: 1.5pt double #000; }
figure { margin: 1mm 0 0; }
figure img { display: block; width: 100%; height: auto; }
.draft { border: 2pt solid #000; padding: 3mm 4mm; margin: 0 0 6mm; font-size: 11.5pt; }
footer { margin-top: 10mm; border-top: 0.25pt solid #777; padding-top: 2mm; font-size: 8pt; }
@media print { body { padding: 0; max-width: none; } }
@media screen and (max-width: 190mm) { body { padding: 6mm; } }
`;
}
