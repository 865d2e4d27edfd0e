/** Drawings of a piece of work, put where a preview has room for them. */
import type { KeyShown, Room } from '../../../shared/protocol/preview';
import type { Drawing, DrawingSet, Key } from '../../engine/drawing';
import { eachChain, roomFor } from '../../engine/drawing/chains';
import { layRod } from '../../engine/drawing/rod/rod';
import { lettersFor, needLetters, withSizes } from '../../engine/drawing/sheet/cuts';
import { panelOf, placesIn } from '../../engine/drawing/sheet/panel';
import { type Mark, type Place, ROOM } from '../../engine/drawing/sheet/paper';
import { type TextMark, wordsOn } from '../../engine/drawing/work-marks';
import type { Asked, SetAsked } from './asked';
import { NOWHERE } from './lines';
import { Gathered, hundredths, Marks } from './picture';
import { addRows } from './rows';

export interface Drawn {
  readonly width: number;
  readonly height: number;
  readonly gathered: Gathered;
  readonly units: Drawing['units'];
  readonly keys: readonly KeyShown[];
}

/** Round a drawing, mm. */
const EDGE = 4;
/** From one group to the next, mm. */
const GAP = 9;
/** No larger than so much of its true size, and a wall of any length still has some. */
const LEAST_SCALE = 4;
const LEAST_ROOM = 40;

function roomBelow({ chains, units }: Drawing): number {
  const below = chains.filter(({ side }) => side === 'below');
  return below.reduce((sum, chain) => sum + roomFor(chain, units), 6);
}

/** A face, as large as goes into the room. */
export function drawFace(drawing: Drawing, asked: Asked, room: Room): Drawn {
  const { extent, units } = drawing;
  const side = { left: ROOM.rod + EDGE, right: ROOM.heights[units] + EDGE };
  const below = roomBelow(drawing);
  const wide = Math.max(LEAST_ROOM, room.width - side.left - side.right);
  const high = Math.max(LEAST_ROOM, room.height - 2 * EDGE - below - TOP);
  const [long, tall] = [extent.right - extent.left, extent.top - extent.bottom];
  const scale = Math.max(long / wide, tall / high, LEAST_SCALE);
  const base = EDGE + TOP + tall / scale;
  const place: Place = {
    scale,
    x: (along) => side.left + (along - extent.left) / scale,
    y: (up) => base - (up - extent.bottom) / scale,
  };
  const gathered = new Gathered();
  const lettered = needLetters([drawing], scale);
  const letters = lettered ? lettersFor([drawing]) : NONE;
  add({ drawing, place, key: 'f0', caption: drawing.title, asked }, letters, gathered);
  return {
    width: side.left + long / scale + side.right,
    height: base + below + EDGE,
    gathered,
    units,
    keys: keysOf(withSizes(drawing.keys, [drawing], lettered)),
  };
}

/** Over the work, for the word on its rod. */
const TOP = 4;

interface Placed {
  readonly drawing: Drawing;
  readonly place: Place;
  readonly key: string;
  readonly caption: string;
  readonly asked: Asked;
}

/** Several drawings, side by side while there is room, then below. */
export function drawSet(set: DrawingSet, asked: SetAsked, room: Room): Drawn {
  const wide = Math.max(LEAST_ROOM, room.width - 2 * EDGE);
  let { scale } = set;
  while (scale < 1000 && set.groups.some((group) => widthOf(group, scale) > wide)) scale *= 1.1;
  const all = set.groups.flatMap(({ drawings }) => drawings);
  const lettered = needLetters(all, scale);
  const letters = lettered ? lettersFor(all) : NONE;
  const gathered = new Gathered();
  const flow = new Flow(wide);
  for (const [i, group] of set.groups.entries()) {
    const panel = panelOf(group, scale);
    const { x, y } = flow.put(panel.width, panel.height);
    const { title, drawings } = placesIn(panel, x, y);
    addWords(`g${i}`, title, asked.title(group), gathered);
    for (const [j, { drawing, place, caption }] of drawings.entries()) {
      const key = `f${i}.${j}`;
      addWords(`${key}/c`, caption, asked.caption(drawing), gathered);
      const called = [group.title, drawing.title].filter(Boolean).join(', ');
      const own = asked.of(drawing);
      add({ drawing, place, key, caption: called, asked: own }, letters, gathered);
    }
  }
  const keys = [...new Map(all.flatMap((d) => d.keys).map((key) => [key.style, key])).values()];
  const { width, height } = flow;
  const { units } = set;
  return { width, height, gathered, units, keys: keysOf(withSizes(keys, all, lettered)) };
}

/** Of what is drawn: words over it are as wide at any scale. */
function widthOf({ drawings }: DrawingSet['groups'][number], scale: number): number {
  const plain = drawings.map((drawing) => ({ ...drawing, title: '' }));
  return panelOf({ title: '', drawings: plain }, scale).width;
}

class Flow {
  private x = EDGE;
  private y = EDGE;
  private row = 0;
  private far = 0;

  constructor(private readonly wide: number) {}

  put(width: number, height: number): { x: number; y: number } {
    if (this.x > EDGE && this.x + width > this.wide + EDGE) {
      this.y += this.row + GAP;
      this.x = EDGE;
      this.row = 0;
    }
    const at = { x: this.x, y: this.y };
    this.x += width + GAP;
    this.far = Math.max(this.far, at.x + width);
    this.row = Math.max(this.row, height);
    return at;
  }

  get width(): number {
    return this.far + EDGE;
  }

  get height(): number {
    return this.y + this.row + EDGE;
  }
}

function addWords(key: string, marks: readonly Mark[], from: number, into: Gathered): void {
  const words = new Marks('work');
  for (const mark of marks) if (mark.kind === 'text') words.text(mark, from);
  if (!words.isEmpty) into.add(key, words.part);
}

type Letters = ReadonlyMap<string, string>;
const NONE: Letters = new Map();

function add({ drawing, place, key, caption, asked }: Placed, letters: Letters, into: Gathered) {
  const origin = { x: hundredths(place.x(0)), y: hundredths(place.y(0)) };
  into.add(key, { kind: 'frame', ...origin, scale: place.scale, title: caption });
  addRows(drawing.boxes, key, asked, into);
  addOutlines(drawing, place, key, asked, into);
  addLabels(drawing, place, key, asked, letters, into);
  addRod(drawing, place, key, asked, into);
  addChains(drawing, place, key, asked, into);
}

function addOutlines(drawing: Drawing, place: Place, key: string, asked: Asked, into: Gathered) {
  const marks = new Marks('work');
  for (const shape of drawing.shapes)
    marks.shape(
      shape.style,
      asked.shape(shape),
      shape.points.flatMap(({ x, y }) => [place.x(x), place.y(y)]),
    );
  for (const stroke of drawing.strokes) {
    const { from, to } = stroke;
    const ends = [place.x(from.x), place.y(from.y), place.x(to.x), place.y(to.y)];
    marks.line(stroke.style, asked.stroke(stroke), ends);
  }
  if (!marks.isEmpty) into.add(`${key}/w`, marks.part);
}

/** Rows of words that change together, mm of the screen. */
const ROWS = 40;

/** In a few parts, by height: an edit changes some of them. */
function addLabels(
  drawing: Drawing,
  place: Place,
  key: string,
  asked: Asked,
  letters: Letters,
  into: Gathered,
) {
  const parts = new Map<number, Marks>();
  for (const { label, marks } of wordsOn(drawing, place, letters)) {
    const at = Math.floor(place.y(label.y) / ROWS);
    const part = parts.get(at) ?? new Marks('work');
    for (const mark of marks) part.text(mark, asked.label(label));
    parts.set(at, part);
  }
  for (const [at, part] of parts) if (!part.isEmpty) into.add(`${key}/t${at}`, part.part);
}

function addMarks(marks: Marks, all: readonly Mark[], fromOf: (text: TextMark) => number) {
  for (const mark of all) {
    if (mark.kind === 'line') marks.line(mark.ink, NOWHERE, [mark.x1, mark.y1, mark.x2, mark.y2]);
    else if (mark.kind === 'text') marks.text(mark, fromOf(mark));
  }
}

function addRod(drawing: Drawing, place: Place, key: string, asked: Asked, into: Gathered) {
  const all = layRod(drawing, place);
  if (!all.length) return;
  const marks = new Marks('figures');
  addMarks(marks, all, () => asked.rod());
  into.add(`${key}/rod`, marks.part);
}

function addChains(drawing: Drawing, place: Place, key: string, asked: Asked, into: Gathered) {
  for (const [i, { chain, marks: all }] of eachChain(drawing, place).entries()) {
    const marks = new Marks('figures');
    let count = 0;
    const along = (x: number) =>
      drawing.extent.left + (x - place.x(drawing.extent.left)) * place.scale;
    addMarks(marks, all, ({ x, turned, size }) =>
      asked.chain(chain, count++, along(turned ? x - size * 0.36 : x)),
    );
    into.add(`${key}/d${i}`, marks.part);
  }
}

function keysOf(keys: readonly Key[]): KeyShown[] {
  return keys.map(({ style, text, list = [] }) => ({
    ink: style,
    text: list.length ? `${text}: ${list.join(' ')}` : text,
  }));
}
