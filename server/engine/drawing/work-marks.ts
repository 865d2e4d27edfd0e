import type { Drawing, Label } from './model';
import { type Mark, type Place, textWidth } from './sheet/paper';

/** The least letters that are read on paper, mm. */
const LEAST = 1.2;

export type TextMark = Extract<Mark, { kind: 'text' }>;

function ways({ text, size, room }: Label, scale: number): { level: boolean; turned: boolean } {
  if (!room) return { level: true, turned: true };
  const wide = textWidth(text, size);
  const [width, height] = [room.width / scale, room.height / scale];
  return { level: wide <= width && size <= height, turned: size <= width && wide <= height };
}

/** Whether it goes into its room at a scale, level or turned. */
export function labelFits(label: Label, scale: number): boolean {
  const { level, turned } = ways(label, scale);
  return level || turned;
}

/** A label where there is room for it: level, else turned, else not at all. */
function labelMark(label: Label, place: Place): TextMark[] {
  const { text, x, y, size, align = 'middle' } = label;
  const { level, turned } = ways(label, place.scale);
  const at = { kind: 'text' as const, size, text, align, backed: true };
  const [px, py] = [place.x(x), place.y(y)];
  if (level) return [{ ...at, x: px, y: py + size * 0.36 }];
  if (turned) return [{ ...at, x: px + size * 0.36, y: py, turned: true }];
  return [];
}

/** Letters on cuts, none on another: they are moved along where they would lie so. */
class Letters {
  private readonly taken = new Map<number, TextMark[]>();

  constructor(
    private readonly letters: ReadonlyMap<string, string>,
    private readonly place: Place,
  ) {}

  /** In the middle of its cut, as high as that where it can be read so, else over its edges. */
  put({ text: length, x, y, size: most, room }: Label): TextMark[] {
    const text = this.letters.get(length);
    if (!text) return [];
    const size = Math.max(LEAST, Math.min(most, (room?.height ?? 0) / this.place.scale));
    const wide = textWidth(text, size) + 0.3;
    const [px, py] = [this.place.x(x), this.place.y(y) + size * 0.36];
    const tries = [0, 1, -1, 2, -2].map((step): TextMark => {
      return {
        kind: 'text',
        x: px + step * wide,
        y: py,
        size,
        text,
        align: 'middle',
        backed: true,
      };
    });
    const mark = tries.find((one) => this.isFree(one)) ?? tries[0]!;
    this.near(mark.y, 0).push(mark);
    return [mark];
  }

  private near(y: number, by: number): TextMark[] {
    const row = Math.round(y / 2) + by;
    return this.taken.get(row) ?? this.taken.set(row, []).get(row)!;
  }

  private isFree({ x, y, size, text }: TextMark): boolean {
    const wide = textWidth(text, size);
    return [-1, 0, 1].every((by) =>
      this.near(y, by).every(
        (other) =>
          Math.abs(other.y - y) >= 0.75 * size ||
          Math.abs(other.x - x) >= (wide + textWidth(other.text, other.size)) / 2,
      ),
    );
  }
}

/** What is written on the work: the size of a cut that has no room for it by its letter, where there are letters. */
export function wordsOn(
  drawing: Pick<Drawing, 'labels'>,
  place: Place,
  letters: ReadonlyMap<string, string>,
): { label: Label; marks: TextMark[] }[] {
  const lettered = new Letters(letters, place);
  return drawing.labels.map((label) => {
    const plain = label.cut === undefined || labelFits(label, place.scale);
    return { label, marks: plain ? labelMark(label, place) : lettered.put(label) };
  });
}

/** The work itself on paper: boxes, shapes, lines, words. */
export function workMarks(
  drawing: Drawing,
  place: Place,
  letters: ReadonlyMap<string, string> = new Map(),
): Mark[] {
  const boxes = drawing.boxes.map(({ style, x, y, width, height }): Mark => {
    const [left, top] = [place.x(x), place.y(y + height)];
    const [w, h] = [width / place.scale, height / place.scale];
    return { kind: 'box', ink: style, x: left, y: top, width: w, height: h };
  });
  const shapes = drawing.shapes.map(({ style, points }): Mark => {
    const placed = points.map((p) => ({ x: place.x(p.x), y: place.y(p.y) }));
    return { kind: 'shape', ink: style, points: placed };
  });
  const strokes = drawing.strokes.map(({ style, from, to }): Mark => {
    const [x1, y1, x2, y2] = [place.x(from.x), place.y(from.y), place.x(to.x), place.y(to.y)];
    return { kind: 'line', ink: style, x1, y1, x2, y2 };
  });
  const words = wordsOn(drawing, place, letters).flatMap(({ marks }) => marks);
  return [...boxes, ...shapes, ...strokes, ...words];
}
