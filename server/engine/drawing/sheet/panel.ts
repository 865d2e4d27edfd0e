/** A group of drawings as a block on a sheet: its title, then each with its caption and its dimensions. */
import { layChains, roomFor } from '../chains';
import type { Drawing } from '../model';
import { layRod } from '../rod/rod';
import { workMarks } from '../work-marks';
import { type Mark, type Place, ROOM, textWidth } from './paper';
import type { Group } from './set';

const TITLE = { size: 3.4, room: 7 };
const CAPTION = { size: 2.8, room: 6.5 };
/** Left of a drawing without a rod, and right of one without heights; under its last row of dimensions. */
const EDGE = { side: 3, under: 3 };

export interface Panel {
  group: Group;
  scale: number;
  width: number;
  height: number;
}

/** Titles come from a job: one of any length may not push the drawings off the page. */
const LONGEST = 60;

function short(words: string): string {
  return words.length > LONGEST ? `${words.slice(0, LONGEST - 1)}…` : words;
}

function edges({ rod, chains, units }: Drawing) {
  const heights = chains.some((chain) => chain.side === 'right');
  return {
    left: rod ? ROOM.rod : EDGE.side,
    right: heights ? ROOM.heights[units] : EDGE.side,
  };
}

/** Above a drawing without a caption there is room for its ticks. */
function captionRoom(title: string): number {
  return title ? CAPTION.room : 2;
}

/** Mm on paper that one drawing takes up and down, its caption included. */
function heightOf({ title, extent, chains, units }: Drawing, scale: number): number {
  const below = chains.filter((chain) => chain.side === 'below');
  const rows = below.reduce((sum, chain) => sum + roomFor(chain, units), below.length ? 5 : 0);
  return captionRoom(title) + (extent.top - extent.bottom) / scale + rows + EDGE.under;
}

function widthOf(drawing: Drawing, scale: number): number {
  const { left, right } = edges(drawing);
  const work = left + (drawing.extent.right - drawing.extent.left) / scale + right;
  return Math.max(work, textWidth(short(drawing.title), CAPTION.size));
}

export function panelOf(group: Group, scale: number): Panel {
  const widths = group.drawings.map((drawing) => widthOf(drawing, scale));
  const heights = group.drawings.map((drawing) => heightOf(drawing, scale));
  return {
    group,
    scale,
    width: Math.max(textWidth(short(group.title), TITLE.size), ...widths),
    height: heights.reduce((sum, height) => sum + height, group.title ? TITLE.room : 0),
  };
}

/** `x` and `y` are its upper left corner, mm on paper. */
export function panelMarks(
  panel: Panel,
  x: number,
  y: number,
  letters?: ReadonlyMap<string, string>,
): Mark[] {
  const { title, drawings } = placesIn(panel, x, y);
  return [
    ...title,
    ...drawings.flatMap(({ drawing, place, caption }) => {
      const work = workMarks(drawing, place, letters);
      return [...caption, ...work, ...layRod(drawing, place), ...layChains(drawing, place)];
    }),
  ];
}

/** The same, told apart: its title, and where each of its drawings goes. */
export function placesIn({ group, scale }: Panel, x: number, y: number) {
  const text = (words: string, at: number, size: number, bold: boolean): Mark[] =>
    words ? [{ kind: 'text', x, y: at, size, align: 'start', bold, text: short(words) }] : [];
  let top = y + (group.title ? TITLE.room : 0);
  const drawings = group.drawings.map((drawing) => {
    const { extent, title } = drawing;
    const left = x + edges(drawing).left;
    const base = top + captionRoom(title) + (extent.top - extent.bottom) / scale;
    const place: Place = {
      scale,
      x: (along) => left + (along - extent.left) / scale,
      y: (up) => base - (up - extent.bottom) / scale,
    };
    const caption = text(title, top + CAPTION.size, CAPTION.size, false);
    top += heightOf(drawing, scale);
    return { drawing, place, caption };
  });
  return { title: text(group.title, y + TITLE.size, TITLE.size, true), drawings };
}
