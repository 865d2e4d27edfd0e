import { layChains, roomFor } from './chains';
import { lengthOn, UNIT_WORDS, type Units } from './lengths';
import type { Drawing } from './model';
import type { Mark, Paper, Place, Sheet } from './paper';
import { A4_LANDSCAPE, ROOM, textWidth } from './paper';
import { layRod } from './rod';
import { keyRow, ROW } from './sheet-keys';

/** Scales that a rule has edges for. */
const SCALES: Readonly<Record<Units, readonly number[]>> = {
  millimetres: [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500],
  feet: [1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 192, 384],
};

function scaleFor(drawing: Drawing, width: number, height: number): number {
  const { left, right, bottom, top } = drawing.extent;
  const needed = Math.max((right - left) / width, (top - bottom) / height);
  const known = SCALES[drawing.units].find((scale) => scale >= needed);
  return known ?? Math.ceil(needed / 500) * 500;
}

function roomBelow(drawing: Drawing, paper: Paper): number {
  const below = drawing.chains.filter((chain) => chain.side === 'below');
  const chains = below.reduce((sum, chain) => sum + roomFor(chain, drawing.units), 4);
  return chains + ROW * keyRow(drawing.keys, paper).rows + ROW * drawing.notes.length + 2;
}

function labelMarks(drawing: Drawing, place: Place): Mark[] {
  return drawing.labels.flatMap(({ text, x, y, size, room }): Mark[] => {
    const wide = textWidth(text, size);
    const fits = (width: number, height: number) =>
      !room || (width <= room.width / place.scale && height <= room.height / place.scale);
    const at = { kind: 'text' as const, size, text, align: 'middle' as const, backed: true };
    const [px, py] = [place.x(x), place.y(y)];
    if (fits(wide, size)) return [{ ...at, x: px, y: py + size * 0.36 }];
    if (fits(size, wide)) return [{ ...at, x: px + size * 0.36, y: py, turned: true }];
    return [];
  });
}

function workMarks(drawing: Drawing, place: Place): Mark[] {
  const boxes = drawing.boxes.map(({ style, x, y, width, height }): Mark => {
    const [left, top] = [place.x(x), place.y(y + height)];
    const [w, h] = [width / place.scale, height / place.scale];
    return { kind: 'box', ink: style, x: left, y: top, width: w, height: h };
  });
  const strokes = drawing.strokes.map(({ style, from, to }): Mark => {
    const [x1, y1, x2, y2] = [place.x(from.x), place.y(from.y), place.x(to.x), place.y(to.y)];
    return { kind: 'line', ink: style, x1, y1, x2, y2 };
  });
  return [...boxes, ...strokes, ...labelMarks(drawing, place)];
}

/** On a rule for feet the scale is so many inches to the foot. */
function scaleText(scale: number, units: Units): string {
  const inches = 12 / scale;
  const known = units === 'feet' && scale > 1 && Number.isInteger(inches * 16);
  return known ? `1:${scale}, ${lengthOn('feet', inches * 25.4)} to the foot` : `1:${scale}`;
}

/** @param scale nothing where the sheet is shown at another size than its own */
function heading(drawing: Drawing, paper: Paper, scale: number | undefined): Mark[] {
  const y = paper.margin + 5;
  const right = paper.width - paper.margin;
  const said = scale === undefined ? 'Not to scale.' : `Scale ${scaleText(scale, drawing.units)}.`;
  const text = `${said} Sizes in ${UNIT_WORDS[drawing.units]}.`;
  return [
    { kind: 'text', x: paper.margin, y, size: 5, align: 'start', bold: true, text: drawing.title },
    { kind: 'text', x: right, y, size: 3, align: 'end', text },
  ];
}

/**
 * Puts a drawing on paper: the largest usual scale at which it goes in, the work above its
 * dimensions and rather high on the page, the rod on its left, the key below. `tight` is for a page that shows it
 * at a width of its own: it ends below the key, and claims no scale.
 */
export function toSheet(drawing: Drawing, paper: Paper = A4_LANDSCAPE, tight = false): Sheet {
  const { extent } = drawing;
  const below = roomBelow(drawing, paper);
  const width = paper.width - 2 * paper.margin - ROOM.rod - ROOM.heights[drawing.units];
  const height = paper.height - 2 * paper.margin - ROOM.title - below;
  const scale = scaleFor(drawing, width, height);
  const high = (extent.top - extent.bottom) / scale;
  const left = paper.margin + ROOM.rod + (width - (extent.right - extent.left) / scale) / 2;
  const base = paper.margin + ROOM.title + high + (tight ? 0 : Math.max(0, height - high) / 4);
  const place: Place = {
    scale,
    x: (along) => left + (along - extent.left) / scale,
    y: (up) => base - (up - extent.bottom) / scale,
  };
  const end = base + below;
  return {
    title: drawing.title,
    description: drawing.description,
    width: paper.width,
    height: tight ? end + paper.margin : paper.height,
    scale,
    marks: [
      ...heading(drawing, paper, tight ? undefined : scale),
      ...workMarks(drawing, place),
      ...layRod(drawing, place),
      ...layChains(drawing, place),
      ...keyRow(drawing.keys, paper).marks(end, drawing.notes),
    ],
  };
}
