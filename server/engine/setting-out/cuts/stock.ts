/** What the saw is asked for, what it is given, and how one is cut from the other. Plain numbers, mm. */

/** So many like pieces. */
export interface Asked {
  readonly length: number;
  readonly count: number;
}

/** Bats at hand, all of one length: offcuts, salvaged halves. They are used before a brick is cut. */
export interface Bats {
  readonly length: number;
  readonly count: number;
}

/** `count` pieces of what was asked for in place `asked`. */
export interface Share {
  readonly asked: number;
  readonly count: number;
}

/** `times` bricks or bats, each cut into the same pieces. `bat` is its place among the bats; none for a whole brick. */
export interface Cutting {
  readonly bat?: number;
  readonly times: number;
  readonly pieces: readonly Share[];
}

/**
 * A question of nesting. Every cut takes `kerf`. Pieces that fill a brick of `brick` mm side by side need
 * one cut fewer than there are pieces, since the last one ends where the brick does; one that leaves
 * less than a kerf over needs one more, but the saw then takes only what is there. So pieces go into a
 * brick when they and the kerfs between them do: sum + (n - 1) kerf <= brick.
 */
export interface Nesting {
  readonly brick: number;
  readonly kerf: number;
  readonly asked: readonly Asked[];
  readonly bats: readonly Bats[];
}

/** Lengths within this are equal, mm. */
const SAME = 1e-6;

/** The rule above, with a kerf added to both sides: what a piece takes of {@link roomIn}. */
export function sizeIn(nesting: Nesting, length: number): number {
  return length + nesting.kerf;
}

/** Room of a brick or bat for pieces that each bring a kerf along. */
export function roomIn(nesting: Nesting, length: number): number {
  return length + nesting.kerf + SAME;
}

/** Whole bricks that some cuttings take. */
export function bricksIn(cuttings: readonly Cutting[]): number {
  return cuttings.reduce((sum, c) => sum + (c.bat === undefined ? c.times : 0), 0);
}
