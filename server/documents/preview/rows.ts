/** Pieces of a drawing by the height they lie at: a course of bricks is one row, and courses alike share a pattern. */
import type { Box, Style } from '../../engine/drawing';
import type { Asked } from './asked';
import { type Gathered, inkNumber, tenths } from './picture';

/** Painted under bricks, and over them. */
const UNDER: ReadonlySet<Style> = new Set(['opening', 'outline', 'core', 'mortar']);
const OVER: ReadonlySet<Style> = new Set([
  'band',
  'reused',
  'projecting',
  'new-piece',
  'gone-piece',
]);

type Layer = 0 | 1 | 2;

function layerOf(style: Style): Layer {
  if (UNDER.has(style)) return 0;
  return OVER.has(style) ? 2 : 1;
}

interface Row {
  readonly layer: Layer;
  readonly y: number;
  readonly height: number;
  readonly boxes: Box[];
}

function rowsIn(boxes: readonly Box[]): Row[] {
  const rows = new Map<string, Row>();
  let [last, row]: [Box | undefined, Row | undefined] = [undefined, undefined];
  for (const box of boxes) {
    // Bricks come course by course: the next is nearly always beside the last.
    if (!row || !last || !isBeside(box, last, row))
      row = rowAt(rows, layerOf(box.style), tenths(box.y), tenths(box.height));
    row.boxes.push(box);
    last = box;
  }
  return [...rows.values()].sort((a, b) => a.layer - b.layer || a.y - b.y);
}

function isBeside(box: Box, last: Box, { layer }: Row): boolean {
  if (box.y !== last.y || box.height !== last.height) return false;
  return box.style === last.style || layerOf(box.style) === layer;
}

function rowAt(rows: Map<string, Row>, layer: Layer, y: number, height: number): Row {
  const key = `${layer} ${y} ${height}`;
  const known = rows.get(key);
  if (known) return known;
  const row = { layer, y, height, boxes: [] };
  rows.set(key, row);
  return row;
}

/** Adds a row for every height that boxes lie at. */
export function addRows(boxes: readonly Box[], frame: string, asked: Asked, into: Gathered): void {
  for (const { layer, y, height, boxes: pieces } of rowsIn(boxes)) {
    const key = `${frame}/r${layer}/${y}/${height}`;
    const sorted = pieces.sort((a, b) => a.x - b.x);
    const lineOf = asked.pieces(pieces[0]!);
    const told: number[] = [];
    for (const box of sorted)
      told.push(tenths(box.x), tenths(box.width), inkNumber(box.style), lineOf(box));
    const pattern = into.pattern(told);
    const course = layer === 1 ? asked.course(pieces[0]!) : undefined;
    const at = { frame, pattern, y, height };
    into.add(key, { kind: 'row', ...at, ...(course === undefined ? {} : { course }) });
  }
}
