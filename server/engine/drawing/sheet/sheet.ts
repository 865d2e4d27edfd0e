import { layChains, roomFor } from '../chains';
import type { Drawing } from '../model';
import { layRod } from '../rod/rod';
import { workMarks } from '../work-marks';
import { lettersFor, needLetters, withSizes } from './cuts';
import {
  A4_LANDSCAPE,
  type Mark,
  type Paper,
  type Place,
  ROOM,
  type Sheet,
  textWidth,
} from './paper';
import { scaleFor, scaleSaid } from './scales';
import { keyRow, ROW } from './sheet-keys';

function roomBelow(drawing: Drawing, paper: Paper): number {
  const below = drawing.chains.filter((chain) => chain.side === 'below');
  const chains = below.reduce((sum, chain) => sum + roomFor(chain, drawing.units), 4);
  const keys = keyRow(withSizes(drawing.keys, [drawing], true), paper);
  return chains + ROW * keys.rows + ROW * drawing.notes.length + 2;
}

/** Sizes of a title, mm: smaller where it is long. */
const TITLE = { most: 5, least: 3 };
/** Of the room that single words are given: letters of a line of text take less, in Noto Sans and in Helvetica alike. */
const TAKEN = { plain: 0.8, bold: 0.9 };
/** A title that is too long even so loses its middle: its end says which sheet it is. */
const KEPT_END = 24;

/** Title on the left, scale and units on the right. */
export function heading(title: string, said: string, paper: Paper): Mark[] {
  const y = paper.margin + 5;
  const right = paper.width - paper.margin;
  const room = right - paper.margin - textWidth(said, 3) * TAKEN.plain - 4;
  const fits = room / (textWidth(title, 1) * TAKEN.bold);
  const size = Math.min(TITLE.most, Math.max(TITLE.least, fits));
  const most = Math.floor(room / (textWidth('x', size) * TAKEN.bold) + 1e-6);
  const text = cutShort(title, most);
  return [
    { kind: 'text', x: paper.margin, y, size, align: 'start', bold: true, text },
    { kind: 'text', x: right, y, size: 3, align: 'end', text: said },
  ];
}

function cutShort(text: string, most: number): string {
  if (text.length <= most) return text;
  const end = Math.min(KEPT_END, Math.floor(most / 2));
  return `${text.slice(0, Math.max(0, most - end - 1)).trimEnd()}…${text.slice(text.length - end)}`;
}

/**
 * Puts a drawing on paper: the largest usual scale at which it goes in, the work above its
 * dimensions and rather high on the page, the rod on its left, the key below. `tight` is for a page that shows it
 * at a width of its own: it ends below the key, and claims no scale.
 */
export function toSheet(drawing: Drawing, paper: Paper = A4_LANDSCAPE, tight = false): Sheet {
  const { extent, units } = drawing;
  const short = tight || paper.short;
  const below = roomBelow(drawing, paper);
  const width = paper.width - 2 * paper.margin - ROOM.rod - ROOM.heights[units];
  const height = paper.height - 2 * paper.margin - ROOM.title - below;
  const [long, tall] = [extent.right - extent.left, extent.top - extent.bottom];
  const scale = scaleFor(Math.max(long / width, tall / height), units);
  const high = tall / scale;
  const left = paper.margin + ROOM.rod + (width - long / scale) / 2;
  const base = paper.margin + ROOM.title + high + (short ? 0 : Math.max(0, height - high) / 4);
  const place: Place = {
    scale,
    x: (along) => left + (along - extent.left) / scale,
    y: (up) => base - (up - extent.bottom) / scale,
  };
  const end = base + below;
  const lettered = needLetters([drawing], scale);
  const keys = keyRow(withSizes(drawing.keys, [drawing], lettered), paper);
  return {
    title: drawing.title,
    description: drawing.description,
    width: paper.width,
    height: short ? end + paper.margin : paper.height,
    scale,
    origin: { x: place.x(0), y: place.y(0) },
    marks: [
      ...heading(drawing.title, scaleSaid(tight ? undefined : scale, units), paper),
      ...workMarks(drawing, place, lettered ? lettersFor([drawing]) : undefined),
      ...layRod(drawing, place),
      ...layChains(drawing, place),
      ...keys.marks(end, drawing.notes),
    ],
  };
}
