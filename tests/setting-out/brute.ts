/**
 * Layers that share nothing with the engine: they walk a wall brick by brick, as a textbook says
 * each bond is laid, and count as they go. Only for lengths that are a number of half bricks.
 */

export interface Count {
  wholes: number;
  halves: number;
  closers: number;
}

export interface Hole {
  /** Half bricks from the wall's left end. */
  from: number;
  width: number;
  sill: number;
  top: number;
}

/**
 * The holes of a wall as they lie from the end it is set out from: the one with the longer clear stretch
 * beside it, and the left where both see the same.
 */
export function fromItsEnd(halves: number, holes: readonly Hole[]): Hole[] {
  const behind = holes.map((h) => ({ ...h, from: halves - h.from - h.width }));
  const seen = (all: readonly Hole[]) =>
    all.flatMap((h) => [h.from, h.from + h.width]).sort((a, b) => a - b);
  const [left, right] = [seen(holes), seen(behind)];
  const at = left.findIndex((x, i) => x !== right[i]);
  return at >= 0 && right[at]! > left[at]! ? behind : [...holes];
}

/**
 * Half-brick stretcher bond, cell by cell of half a brick: wherever a brick of this course would
 * begin and both its cells are wall it is whole; a cell left alone is a half bat.
 */
export function stretcherBond(halves: number, courses: number, holes: readonly Hole[]): Count {
  const count = { wholes: 0, halves: 0, closers: 0 };
  const open = (cell: number, course: number) =>
    cell < 0 ||
    cell >= halves ||
    holes.some(
      (h) => cell >= h.from && cell < h.from + h.width && course >= h.sill && course < h.top,
    );
  for (let course = 0; course < courses; course++)
    for (let cell = 0; cell < halves; cell++) {
      if (open(cell, course)) continue;
      const begins = (cell + course) % 2 === 0;
      if (begins && !open(cell + 1, course)) {
        count.wholes++;
        cell++;
      } else count.halves++;
    }
  return count;
}

/**
 * One-brick English bond between two stopped ends: stretcher courses of two leaves with one header
 * where the length is an odd number of halves; header courses with a closer behind each quoin header.
 */
export function englishBond(halves: number, courses: number): Count {
  const count = { wholes: 0, halves: 0, closers: 0 };
  for (let course = 0; course < courses; course++) {
    let quarters = 2 * halves;
    if (course % 2 === 0) {
      for (; quarters >= 4; quarters -= 4) count.wholes += 2;
      if (quarters === 2) count.wholes++;
    } else {
      quarters -= 3 + 3;
      count.wholes += 2;
      count.closers += 2;
      for (; quarters >= 2; quarters -= 2) count.wholes++;
    }
  }
  return count;
}

/**
 * One-brick Flemish bond where it closes unbroken: stretcher, header, ... stretcher, over header,
 * closer, stretcher, header, ... stretcher, closer, header. Null for any other length.
 */
export function flemishBond(halves: number, courses: number): Count | null {
  const count = { wholes: 0, halves: 0, closers: 0 };
  for (let course = 0; course < courses; course++) {
    let quarters = 2 * halves;
    if (course % 2 === 1) {
      quarters -= 3 + 3;
      count.wholes += 2;
      count.closers += 2;
    }
    for (let stretcher = true; quarters > 0; stretcher = !stretcher) {
      quarters -= stretcher ? 4 : 2;
      count.wholes += stretcher ? 2 : 1;
      if (quarters === 0 && !stretcher) return null;
    }
    if (quarters < 0) return null;
  }
  return count;
}
