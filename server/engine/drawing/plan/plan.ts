/** One course on plan, seen from above: the front face at the foot of the drawing. */
import { phrase } from '../../../../shared/phrase';
import type { Area, PlacedPiece, UnitSize } from '../../setting-out';
import { cutKey, movementKey, pieceWords } from '../keys';
import { lengthOn, type Units } from '../lengths';
import type { Box, Chain, Drawing, DrawnPart, Key, Label, Point, Stroke, Style } from '../model';

/** A piece; turned where it belongs to work that stands across: its length is then up the sheet. Or one of a skin of blocks. */
export type TurnedPiece = PlacedPiece & { readonly turned?: boolean; readonly block?: boolean };

/** A part of one course: mm along the work, and mm through it from the wall's front face. */
export interface PlanView {
  title: string;
  description: string;
  units: Units;
  unit: UnitSize;
  window: { left: number; right: number; front: number; back: number };
  /** Where the work goes on past the window: cut off there, with a break line. */
  goesOn: { left: boolean; right: boolean; up?: boolean; down?: boolean };
  /** The faces of the work that lies along the sheet, and the sides of what stands across: all that is seen when left out. */
  faces?: { front: number; back: number };
  across?: { from: number; to: number };
  pieces: readonly TurnedPiece[];
  /** Joints that let the work move: the middle of each, mm along it. */
  movement?: readonly number[];
  /** Filled with something else than bricks. */
  cores?: readonly Area[];
  part?: DrawnPart;
  /** Dimensions, along and through. */
  along: readonly number[];
  through: readonly number[];
  /** Through it: each distance, or from the first stop on; each when left out. */
  throughForm?: Chain['form'];
}

/** Height of the letters on a cut, mm on paper. */
const SMALL = 1.8;

/** A whole brick is named by which way it lies. A block has no bats that go by a name: what is not whole is cut. */
export function styleOf({ piece, along, across, block }: TurnedPiece): Style {
  if (block) return piece === 'whole' ? 'block' : 'cut';
  if (piece !== 'whole') return piece;
  return along >= across ? 'stretcher' : 'header';
}

/** What of a box lies within the window, where the work goes on past it; nothing when none of it does. */
function within({ window, goesOn }: PlanView, box: Box): Box[] {
  const right = box.x + box.width;
  const top = box.y + box.height;
  const left = goesOn.left ? Math.max(box.x, window.left) : box.x;
  const bottom = goesOn.down ? Math.max(box.y, window.front) : box.y;
  const width = (goesOn.right ? Math.min(right, window.right) : right) - left;
  const height = (goesOn.up ? Math.min(top, window.back) : top) - bottom;
  return width > 0 && height > 0 ? [{ ...box, x: left, y: bottom, width, height }] : [];
}

/** The length a brick is cut to; both ways where it is cut both ways. */
function sizeOf({ along, across, block }: TurnedPiece, unit: UnitSize, units: Units): string {
  const sides = [unit.width, unit.length];
  const whole = block || sides.some((size) => Math.abs(size - across) < 0.05);
  const length = lengthOn(units, along);
  return whole ? length : `${length} x ${lengthOn(units, across)}`;
}

function pieceMarks(view: PlanView, piece: TurnedPiece): { boxes: Box[]; labels: Label[] } {
  const { x, y, along, across, turned } = piece;
  const [width, height] = turned ? [across, along] : [along, across];
  const style = styleOf(piece);
  const boxes = within(view, { style, x, y, width, height });
  if (style !== 'cut') return { boxes, labels: [] };
  const text = sizeOf(piece, view.unit, view.units);
  const labels = boxes.map(({ x, y, width, height }): Label => {
    const at = { x: x + width / 2, y: y + height / 2, room: { width, height } };
    return { ...at, text, size: SMALL, cut: along };
  });
  return { boxes, labels };
}

/** A line across the work with a kink in it, as work is shown to go on. */
export function breakLine(x: number, { front, back }: { front: number; back: number }): Stroke[] {
  const middle = (front + back) / 2;
  const kink = (back - front) / 16;
  const points = [
    { x, y: front - kink },
    { x, y: middle - kink },
    { x: x - kink, y: middle - kink / 3 },
    { x: x + kink, y: middle + kink / 3 },
    { x, y: middle + kink },
    { x, y: back + kink },
  ];
  return points.slice(1).map((to, i) => ({ style: 'break', from: points[i]!, to }));
}

const turn = ({ x, y }: Point): Point => ({ x: y, y: x });

function breaksOf({ window, goesOn, faces, across }: PlanView): Stroke[] {
  const ends = faces ?? window;
  const sides = { front: across?.from ?? window.left, back: across?.to ?? window.right };
  const level = (y: number) =>
    breakLine(y, sides).map(({ style, from, to }) => ({ style, from: turn(from), to: turn(to) }));
  return [
    ...(goesOn.left ? breakLine(window.left, ends) : []),
    ...(goesOn.right ? breakLine(window.right, ends) : []),
    ...(goesOn.up ? level(window.back) : []),
    ...(goesOn.down ? level(window.front) : []),
  ];
}

/** From face to face of the work. */
function movementIn({ movement = [], window, faces = window }: PlanView): Stroke[] {
  const { front, back } = faces;
  return movement
    .filter((x) => x > window.left && x < window.right)
    .map((x) => ({ style: 'movement', from: { x, y: front }, to: { x, y: back } }));
}

function chainsOf({ along, through, throughForm: form = 'between' }: PlanView): Chain[] {
  const chains: Chain[] = [];
  if (along.length > 1) chains.push({ side: 'below', form: 'running', stops: along });
  if (through.length > 1) chains.push({ side: 'right', form, stops: through, origin: through[0]! });
  return chains;
}

/** What each style stands for. */
function keysIn(view: PlanView, boxes: readonly Box[]): Key[] {
  const core: Key[] = view.cores?.length ? [{ style: 'core', text: phrase`core` }] : [];
  return [...pieceWords(boxes), ...cutKey(boxes), ...core, ...movementKey(movementIn(view))];
}

export function planOf(view: PlanView): Drawing {
  const { window, units, cores = [] } = view;
  const marks = view.pieces.map((piece) => pieceMarks(view, piece));
  const filled = cores.flatMap((core) => within(view, { style: 'core', ...core }));
  const boxes = [...filled, ...marks.flatMap((mark) => mark.boxes)];
  const { left, right, front: bottom, back: top } = window;
  return {
    title: view.title,
    description: view.description,
    units,
    extent: { left, right, bottom, top },
    boxes,
    shapes: [],
    strokes: [...breaksOf(view), ...movementIn(view)],
    labels: marks.flatMap((mark) => mark.labels),
    chains: chainsOf(view),
    rod: null,
    part: view.part,
    keys: keysIn(view, boxes),
    notes: [],
  };
}
