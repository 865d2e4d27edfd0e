/** Every way to fill one course of a pier with pieces, within bounds. */
import type { CountedPiece } from '../types';
import { SHAPES, worth } from './craft';
import type { Region } from './region';
import type { GridPiece } from './types';

export interface Bounds {
  /** Of each piece, exactly so many; left out: any number of any. */
  readonly counts?: Readonly<Partial<Record<CountedPiece, number>>>;
  /** Nothing that costs more by the rules of {@link worth}. */
  readonly cost: number;
  /** So many plans are enough. */
  readonly enough: number;
  /** Pieces tried before the search gives up: it protects against plans that nobody would lay. */
  readonly tries: number;
  /** Plans and tries to each way the front can be closed: none is looked at so long that others are not. */
  readonly toFront?: { readonly enough: number; readonly tries: number };
  /**
   * Only plans that look the same from behind (`turned`), or in a mirror held across them (`mirrored`), as most good
   * ones do: far fewer to look at.
   */
  readonly alike?: 'turned' | 'mirrored';
  /** Pieces that may not lie where they would; left out: any may. */
  readonly barred?: (piece: GridPiece) => boolean;
}

export interface Filling {
  readonly pieces: readonly GridPiece[];
  readonly cost: number;
}

/** The plans found, the best first. */
export function fillings(region: Region, bounds: Bounds): Filling[] {
  return new Filler(region, bounds).all();
}

/** The same, and whether dearer plans may be had: it gave up, or left something out for what it cost alone. */
export function fillingsAndMore(
  region: Region,
  bounds: Bounds,
): { readonly plans: readonly Filling[]; readonly more: boolean } {
  const filler = new Filler(region, bounds);
  const plans = filler.all();
  return { plans, more: filler.more };
}

/** Where the search stands: the shape tried at a cell, whether that is in the front row, and the cost of what is laid. */
interface Step {
  readonly shape: number;
  readonly at: number;
  readonly inFront: boolean;
  readonly cost: number;
}

class Filler {
  private readonly found: Filling[] = [];
  private readonly laid: GridPiece[] = [];
  /** 1 for each cell that is still to fill. */
  private readonly open: Uint8Array;
  private readonly left: Partial<Record<CountedPiece, number>> | undefined;
  private readonly worths = new Map<number, number>();
  private tries = 0;
  /** Something was left out because it would have cost too much, or was never come to. */
  more = false;
  /** Plans found and pieces tried before the front that is looked at now. */
  private before = { found: 0, tries: 0 };

  constructor(
    private readonly region: Region,
    private readonly bounds: Bounds,
  ) {
    const { width, depth } = region;
    const isOpen = (i: number) => region.at(i % width, Math.floor(i / width)) === 'fill';
    this.open = Uint8Array.from({ length: width * depth }, (_, i) => (isOpen(i) ? 1 : 0));
    this.left = bounds.counts && { ...bounds.counts };
  }

  all(): Filling[] {
    this.fill(0, 0, true);
    return this.found.sort((a, b) => a.cost - b.cost);
  }

  private over(inFront: boolean): boolean {
    const { enough, tries, toFront } = this.bounds;
    if (this.found.length >= enough || this.tries > tries) return true;
    if (!toFront || inFront) return false;
    const { found, tries: tried } = this.before;
    return this.found.length - found >= toFront.enough || this.tries - tried > toFront.tries;
  }

  /** Goes on from a cell, row by row: the first open one is the near left corner of its piece. */
  private fill(from: number, cost: number, wasInFront: boolean): void {
    if (this.over(wasInFront)) {
      this.more = true;
      return;
    }
    const at = this.open.indexOf(1, from);
    if (at < 0) {
      this.keep(cost);
      return;
    }
    const inFront = at < this.region.width;
    if (wasInFront && !inFront) this.before = { found: this.found.length, tries: this.tries };
    const x = at % this.region.width;
    const y = (at - x) / this.region.width;
    for (const [shape, [piece, w, d]] of SHAPES.entries())
      if (!this.left || this.left[piece])
        this.lay({ piece, x, y, w, d }, { shape, at, inFront, cost });
  }

  private keep(cost: number): void {
    if (this.left && Object.values(this.left).some((n) => n > 0)) return;
    this.found.push({ pieces: [...this.laid], cost });
  }

  private lay(piece: GridPiece, { shape, at, inFront, cost: before }: Step): void {
    if (!this.hasRoom(piece)) return;
    this.tries++;
    const pair = this.bounds.alike ? this.withImage(piece, this.bounds.alike) : [piece];
    if (!pair) return;
    const cost = before + pair.length * this.worthOf(piece, shape, at);
    if (cost > this.bounds.cost) {
      if (cost < Number.POSITIVE_INFINITY) this.more = true;
      return;
    }
    for (const each of pair) this.take(each);
    if (!this.left || this.left[piece.piece]! >= 0) this.fill(at + 1, cost, inFront);
    for (const each of pair) this.giveBack(each);
  }

  /** With the piece that lies where its image would; nothing where the two are in each other's way. */
  private withImage(piece: GridPiece, alike: 'turned' | 'mirrored'): GridPiece[] | undefined {
    const { width, depth } = this.region;
    const { x, y, w, d } = piece;
    const other = { ...piece, x: width - x - w, y: alike === 'turned' ? depth - y - d : y };
    if (other.x === x && other.y === y) return [piece];
    const across = Math.abs(other.x - x) < w && Math.abs(other.y - y) < d;
    return across || !this.hasRoom(other) ? undefined : [piece, other];
  }

  private worthOf(piece: GridPiece, shape: number, at: number): number {
    const key = at * SHAPES.length + shape;
    let value = this.worths.get(key);
    if (value === undefined) {
      const barred = this.bounds.barred?.(piece);
      value = (barred ? undefined : worth(piece, this.region)) ?? Number.POSITIVE_INFINITY;
      this.worths.set(key, value);
    }
    return value;
  }

  private hasRoom({ x, y, w, d }: GridPiece): boolean {
    const { width, depth } = this.region;
    if (x + w > width || y + d > depth) return false;
    for (let row = y * width + x, j = 0; j < d; j++, row += width)
      for (let i = 0; i < w; i++) if (!this.open[row + i]) return false;
    return true;
  }

  private take(piece: GridPiece): void {
    this.mark(piece, 0);
    this.laid.push(piece);
    if (this.left) this.left[piece.piece]! -= 1;
  }

  private giveBack(piece: GridPiece): void {
    this.mark(piece, 1);
    this.laid.pop();
    if (this.left) this.left[piece.piece]! += 1;
  }

  private mark({ x, y, w, d }: GridPiece, value: number): void {
    for (let j = 0; j < d; j++) {
      const row = (y + j) * this.region.width + x;
      this.open.fill(value, row, row + w);
    }
  }
}
