import {
  type Drawing,
  type Ink,
  type Mark,
  type Paper,
  type Sheet,
  toSheet,
} from '../engine/drawing';
import { type Drawn, runsOf, type TextMark } from './runs';
import { FONT, HATCHES, LOOKS } from './svg-looks';

/** Marks up to a thousandth of a mm: the same bytes for the same drawing on every machine. */
function n(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

/** Text safe in XML content and attributes; characters that XML has no way to write become a space. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, ' ')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');
}

type BoxMark = Extract<Mark, { kind: 'box' }>;
type ShapeMark = Extract<Mark, { kind: 'shape' }>;
type LineMark = Extract<Mark, { kind: 'line' }>;
const boxPath = ({ x, y, width, height }: BoxMark) =>
  `M${n(x)} ${n(y)}h${n(width)}v${n(height)}h${n(-width)}z`;

const linePath = ({ x1, y1, x2, y2 }: LineMark) => `M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}`;

const shapePath = ({ points }: ShapeMark) =>
  `M${points.map(({ x, y }) => `${n(x)} ${n(y)}`).join('L')}z`;

function pathOf(mark: Drawn): string {
  if (mark.kind === 'box') return boxPath(mark);
  return mark.kind === 'shape' ? shapePath(mark) : linePath(mark);
}

/** One path for a row of marks in the same ink: a wall of bricks is a few paths, not thousands of elements. */
function path(ink: Ink, marks: readonly Drawn[]): string {
  const d = marks.map(pathOf).join('');
  const look = LOOKS[ink];
  const dash = look.dash ? ` stroke-dasharray="${look.dash}"` : '';
  const filled = marks[0]!.kind !== 'line';
  const stroke = `stroke="${look.line}" stroke-width="${look.weight}"${dash}`;
  const plain = `<path d="${d}" fill="${filled ? look.fill : 'none'}" ${stroke}/>`;
  const hatched = filled && look.hatch ? `<path d="${d}" fill="url(#${look.hatch})"/>` : '';
  return plain + (hatched && `\n${hatched}`);
}

function text(mark: TextMark): string {
  const turn = mark.turned ? ` transform="rotate(-90 ${n(mark.x)} ${n(mark.y)})"` : '';
  const align = mark.align === 'start' ? '' : ` text-anchor="${mark.align}"`;
  const bold = mark.bold ? ' font-weight="bold"' : '';
  const back = mark.backed
    ? ` stroke="#fff" stroke-width="${n(Math.min(0.7, mark.size * 0.3))}" stroke-linejoin="round" paint-order="stroke"`
    : '';
  const at = `x="${n(mark.x)}" y="${n(mark.y)}" font-size="${n(mark.size)}"`;
  return `<text ${at}${align}${bold}${back}${turn}>${escapeXml(mark.text)}</text>`;
}

/** Between sheets that stand one under another, mm. */
const BETWEEN = 6;

/**
 * A sheet as SVG text: one page in millimetres, colours with hatches so that it reads in black and
 * white, title and description for screen readers. The same sheet gives the same bytes; all words
 * are escaped, and there is no script, style sheet, link or outside reference in it.
 */
export function sheetToSvg(sheet: Sheet): string {
  return sheetsToSvg([sheet]);
}

/** Several sheets in one picture, one under another. */
export function sheetsToSvg(sheets: readonly Sheet[]): string {
  const width = Math.max(...sheets.map((sheet) => sheet.width));
  const height = sheets.reduce((sum, sheet) => sum + sheet.height + BETWEEN, -BETWEEN);
  const size = `width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}"`;
  const said = [...new Set(sheets.map((sheet) => sheet.description))].join(' ');
  let down = 0;
  const pages = sheets.flatMap((sheet) => {
    const lines = page(sheet);
    const at = down;
    down += sheet.height + BETWEEN;
    return at ? [`<g transform="translate(0 ${n(at)})">`, ...lines, '</g>'] : lines;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-labelledby="title desc" font-family="${FONT}">`,
    `<title id="title">${escapeXml(sheets[0]!.title)}</title>`,
    `<desc id="desc">${escapeXml(said)}</desc>`,
    `<defs>${HATCHES.join('')}</defs>`,
    ...pages,
    '</svg>',
    '',
  ].join('\n');
}

function page({ width, height, marks }: Sheet): string[] {
  const paper = `<rect width="${n(width)}" height="${n(height)}" fill="#fff"/>`;
  const drawn = runsOf(marks).map((run) => (run.text ? text(run.text) : path(run.ink, run.marks)));
  return [paper, ...drawn];
}

/** A drawing as SVG on A4 landscape, or `paper`; `tight` for a page that shows it at a width of its own. */
export function drawingToSvg(drawing: Drawing, paper?: Paper, tight = false): string {
  return sheetToSvg(toSheet(drawing, paper, tight));
}
