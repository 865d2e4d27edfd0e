/** Several small drawings that belong together, on as many sheets as they take. */

import { phrase } from '../../../../shared/phrase';
import { keyRank } from '../keys';
import type { Units } from '../lengths';
import type { Drawing, Key } from '../model';
import { lettersFor, needLetters, withSizes } from './cuts';
import { type Panel, panelMarks, panelOf } from './panel';
import { A4_LANDSCAPE, type Paper, ROOM, type Sheet } from './paper';
import { scaleFor, scaleSaid } from './scales';
import { heading } from './sheet';
import { keyRow, ROW } from './sheet-keys';

/** Drawings that stand one over another and are never parted. */
export interface Group {
  title: string;
  drawings: readonly Drawing[];
}

export interface DrawingSet {
  title: string;
  /** What a reader who cannot see it is told. */
  description: string;
  units: Units;
  /** The least scale, 1 to this: no larger, however much room there is. */
  scale: number;
  groups: readonly Group[];
  notes: readonly string[];
}

/** From one group to the next, mm on paper. */
const GAP = 8;

interface Placed {
  panel: Panel;
  x: number;
  y: number;
}

/** Side by side while there is room, then in a row below, then on a page of their own. */
function pagesOf(panels: readonly Panel[], width: number, height: number): Placed[][] {
  const pages: Placed[][] = [[]];
  let [x, y, row] = [0, 0, 0];
  for (const panel of panels) {
    if (x > 0 && x + panel.width > width) [x, y, row] = [0, y + row + GAP, 0];
    if (y > 0 && y + panel.height > height) {
      pages.push([]);
      [x, y, row] = [0, 0, 0];
    }
    pages.at(-1)!.push({ panel, x, y });
    row = Math.max(row, panel.height);
    x += panel.width + GAP;
  }
  return pages;
}

/** Of all drawings given, each style once, whole bricks first. */
function keysIn(groups: readonly Group[]): Key[] {
  const keys = new Map<string, Key>();
  for (const { drawings } of groups)
    for (const key of drawings.flatMap((drawing) => drawing.keys))
      if (!keys.has(key.style)) keys.set(key.style, key);
  return [...keys.values()].sort((a, b) => keyRank(a) - keyRank(b));
}

/** The largest usual scale, from the set's own down, at which every group goes on a page. */
function scaleOf(set: DrawingSet, width: number, height: number): number {
  const fits = (scale: number) =>
    set.groups.every((group) => {
      const panel = panelOf(group, scale);
      return panel.width <= width && panel.height <= height;
    });
  let { scale } = set;
  // Words take room at any scale: what does not go in at 1 to 10,000 will not at all.
  while (!fits(scale) && scale < 10_000) scale = scaleFor(scale + 1, set.units);
  return scale;
}

/** All sheets at one scale, the same key on each, numbered where there are several. */
export function toSheets(set: DrawingSet, paper: Paper = A4_LANDSCAPE): Sheet[] {
  const drawings = set.groups.flatMap((group) => group.drawings);
  const keysWith = (lettered: boolean) =>
    keyRow(withSizes(keysIn(set.groups), drawings, lettered), paper);
  const below = ROW * (keysWith(true).rows + set.notes.length);
  const width = paper.width - 2 * paper.margin;
  const height = paper.height - 2 * paper.margin - ROOM.title - below;
  const scale = scaleOf(set, width, height);
  const lettered = needLetters(drawings, scale);
  const letters = lettered ? lettersFor(drawings) : undefined;
  const keys = keysWith(lettered);
  const panels = set.groups.map((group) => panelOf(group, scale));
  const pages = pagesOf(panels, width, height);
  const [left, top] = [paper.margin, paper.margin + ROOM.title];
  return pages.map((page, i): Sheet => {
    const of = pages.length > 1 ? phrase` (sheet ${i + 1} of ${pages.length})` : '';
    const filled = Math.max(0, ...page.map(({ panel, y }) => y + panel.height));
    const end = paper.short ? top + filled + below : paper.height - paper.margin;
    const marks = page.flatMap(({ panel, x, y }) => panelMarks(panel, left + x, top + y, letters));
    return {
      title: set.title + of,
      description: set.description,
      width: paper.width,
      height: end + paper.margin,
      scale,
      origin: { x: 0, y: end + paper.margin },
      marks: [
        ...heading(set.title + of, scaleSaid(scale, set.units), paper),
        ...marks,
        ...keys.marks(end, set.notes),
      ],
    };
  });
}
