/** The drawing that a page has: a whole one, and changes of it since. Nothing in it is trusted to be well formed. */
import {
  type FramePart,
  INKS,
  type MarksPart,
  type Part,
  type PatternPart,
  type Picture,
  type PictureChange,
  type RowPart,
} from '../../../shared/protocol/preview';

const isNumber = (value: unknown): value is number => Number.isFinite(value);
const areNumbers = (value: unknown): value is number[] =>
  Array.isArray(value) && value.every(isNumber);
const isInk = (value: unknown): value is number =>
  Number.isInteger(value) && (value as number) >= 0 && (value as number) < INKS.length;

function isFrame(part: Partial<FramePart>): boolean {
  return isNumber(part.x) && isNumber(part.y) && isNumber(part.scale) && part.scale > 0;
}

function isRow(part: Partial<RowPart>): boolean {
  return (
    typeof part.frame === 'string' &&
    typeof part.pattern === 'string' &&
    isNumber(part.y) &&
    isNumber(part.height)
  );
}

/** Four numbers to a piece, the third of them an ink. */
function isPattern({ pieces }: Partial<PatternPart>): boolean {
  if (!areNumbers(pieces) || pieces.length % 4) return false;
  for (let i = 2; i < pieces.length; i += 4) if (!isInk(pieces[i])) return false;
  return true;
}

function isMarks({ lines, shapes, texts }: Partial<MarksPart>): boolean {
  if (!Array.isArray(lines) || !Array.isArray(shapes) || !Array.isArray(texts)) return false;
  const drawn = [...lines, ...shapes].every((mark) => isInk(mark?.ink) && areNumbers(mark?.at));
  return drawn && texts.every((mark) => isText(mark));
}

const ALIGNS: readonly unknown[] = ['start', 'middle', 'end'];

function isText(mark: Partial<MarksPart['texts'][number]> | undefined): boolean {
  if (!mark || typeof mark.text !== 'string' || !ALIGNS.includes(mark.align)) return false;
  return isNumber(mark.x) && isNumber(mark.y) && isNumber(mark.size);
}

const IS: Readonly<Record<Part['kind'], (part: object) => boolean>> = {
  frame: isFrame,
  row: isRow,
  pattern: isPattern,
  marks: isMarks,
};

function isPart(part: Part | null | undefined): boolean {
  return !!part && Object.hasOwn(IS, part.kind) && IS[part.kind](part);
}

export class Store {
  order: readonly string[] = [];
  readonly parts = new Map<string, Part>();
  width = 0;
  height = 0;
  /** The name of the state that is here. */
  is: string | undefined;

  /**
   * @returns keys of parts that are new or other; nothing when it changes a state that is not here, or is no change at
   * all: then the whole is to be asked for
   */
  take(change: PictureChange): ReadonlySet<string> | undefined {
    if (change.since === undefined) {
      this.parts.clear();
      this.order = [];
    } else if (change.since !== this.is) return undefined;
    const taken = this.put(change);
    if (taken) this.is = change.is;
    return taken;
  }

  /** A drawing that is shown once and never changed. */
  static of(picture: Picture): Store | undefined {
    const store = new Store();
    return store.put(picture) && store;
  }

  private put({ width, height, order, parts }: Omit<Picture, 'order'> & Partial<Picture>) {
    if (!isNumber(width) || !isNumber(height) || typeof parts !== 'object' || !parts)
      return undefined;
    const keys = Object.keys(parts);
    if (!keys.every((key) => isPart(parts[key]))) return undefined;
    for (const key of keys) this.parts.set(key, parts[key]!);
    if (Array.isArray(order)) this.order = order.filter((key) => typeof key === 'string');
    this.width = Math.max(1, width);
    this.height = Math.max(1, height);
    this.forget();
    return new Set(keys);
  }

  /** Parts that are in no order any more, and patterns that no row has. */
  private forget(): void {
    const live = new Set(this.order);
    for (const key of this.order) {
      const part = this.parts.get(key);
      if (part?.kind === 'row') live.add(part.pattern);
    }
    for (const key of this.parts.keys()) if (!live.has(key)) this.parts.delete(key);
  }

  frame(key: string): FramePart | undefined {
    const part = this.parts.get(key);
    return part?.kind === 'frame' ? part : undefined;
  }

  pieces(key: string): readonly number[] {
    const part = this.parts.get(key);
    return part?.kind === 'pattern' ? part.pieces : [];
  }
}
