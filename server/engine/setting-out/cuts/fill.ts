/** What is still to be cut: sizes in rising order, each with how many are left and what it is worth. */
export interface Wanted {
  readonly sizes: readonly number[];
  readonly left: number[];
  readonly worth: readonly number[];
}

/** So many of the size in one place. */
export type Filling = readonly { readonly place: number; readonly count: number }[];

/** Looks at this many ways to fill one brick and no more, so that slivers cost no more than bricks. */
const MOST_TRIED = 500;

/**
 * Finds the pieces that fill a room best: those worth most together. They are tried from the longest
 * down, and a choice is given up once the room it leaves could not make good what it lacks. A brick
 * holds few pieces, so that nearly every way is looked at.
 */
export class Filler {
  private best: number[] = [];
  private bestWorth = 0;
  private tried = 0;
  /** All that was ever looked at. */
  spent = 0;
  /** Place of the best single piece among those up to each size. */
  private readonly single: Int32Array;
  /** Most that a mm of any size up to each is worth. */
  private readonly dearest: Float64Array;
  private least = 0;
  private readonly chosen: number[] = [];

  constructor(private readonly wanted: Wanted) {
    this.single = new Int32Array(wanted.sizes.length);
    this.dearest = new Float64Array(wanted.sizes.length);
  }

  /** Of what is left now; nothing when none of it goes in. */
  fill(room: number): Filling {
    this.lookOver();
    this.best = [];
    this.bestWorth = 0;
    this.tried = 0;
    this.grow(this.wanted.sizes.length - 1, room, 0);
    const places = [...new Set(this.best)];
    return places.map((place) => {
      return { place, count: this.best.filter((p) => p === place).length };
    });
  }

  private lookOver(): void {
    const { sizes, left, worth } = this.wanted;
    let best = -1;
    let dear = 0;
    this.least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < sizes.length; i++) {
      if (left[i]! > 0) {
        if (best < 0) this.least = sizes[i]!;
        if (best < 0 || worth[i]! > worth[best]!) best = i;
        dear = Math.max(dear, worth[i]! / sizes[i]!);
      }
      this.single[i] = best;
      this.dearest[i] = dear;
    }
  }

  private grow(high: number, room: number, worth: number): void {
    this.tried++;
    this.spent++;
    if (worth > this.bestWorth) this.keep(worth);
    let place = room < this.least ? -1 : this.longest(high, room);
    if (place >= 0 && room < 3 * this.least) this.lastTwo(place, room, worth);
    else
      for (; place >= 0 && this.worthwhile(place, room, worth); place--)
        if (this.tried <= MOST_TRIED && this.wanted.left[place]! > 0) this.take(place, room, worth);
  }

  /** At most two more go in: the first from the longest down, and beside each the best that then still does. */
  private lastTwo(high: number, room: number, worth: number): void {
    const { sizes, left, worth: worths } = this.wanted;
    let other = -1;
    for (let place = high; place >= 0 && this.worthwhile(place, room, worth); place--) {
      this.spent++;
      if (left[place]! < 1) continue;
      const rest = room - sizes[place]!;
      while (other < place && sizes[other + 1]! <= rest) other++;
      const beside = this.bestOf(Math.min(other, place), place);
      const both = worth + worths[place]! + (beside < 0 ? 0 : worths[beside]!);
      if (both > this.bestWorth) this.keep(both, place, beside);
    }
  }

  /** The best single piece up to a place that there is still one of beside the one `taken`; -1 when there is none. */
  private bestOf(high: number, taken: number): number {
    const { left } = this.wanted;
    for (let at = high; at >= 0; at--) {
      at = this.single[at]!;
      if (at >= 0 && left[at]! > (at === taken ? 1 : 0)) return at;
    }
    return -1;
  }

  private keep(worth: number, ...more: number[]): void {
    this.bestWorth = worth;
    this.best = [...this.chosen, ...more.filter((place) => place >= 0)];
  }

  /** Whether sizes up to a place could still better what was found: by the mm, or as many of the best as go in. */
  private worthwhile(place: number, room: number, worth: number): boolean {
    const byMm = room * this.dearest[place]!;
    const best = this.single[place]!;
    const byPiece = best < 0 ? 0 : Math.floor(room / this.least) * this.wanted.worth[best]!;
    return worth + Math.min(byMm, byPiece) > this.bestWorth + 1e-9;
  }

  private take(place: number, room: number, worth: number): void {
    const { sizes, left, worth: worths } = this.wanted;
    left[place]!--;
    this.chosen.push(place);
    this.grow(place, room - sizes[place]!, worth + worths[place]!);
    this.chosen.pop();
    left[place]!++;
  }

  /** Place of the longest of the sizes up to `high` that goes in; -1 when none does. */
  private longest(high: number, room: number): number {
    const { sizes } = this.wanted;
    let low = -1;
    let top = high;
    while (low < top) {
      const middle = (low + top + 1) >> 1;
      if (sizes[middle]! <= room) low = middle;
      else top = middle - 1;
    }
    return low;
  }
}
