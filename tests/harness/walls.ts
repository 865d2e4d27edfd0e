/** Texts of walls that tests stand their own lines in: of half-brick stretchers of a brick “red”, where nothing else is said. */

/** A job that uses the firm beside it. */
export const JOB = 'perpend 1\nuse "firm.perp"\n';

export interface WallText {
  readonly name?: string;
  readonly length?: string;
  readonly height?: string;
  /** Lines before its length, such as how thick it is. */
  readonly facts?: string;
}

/** One block: a wall that a building holds, so that nobody is told how high it may stand. */
export function wallText(
  { name = 'north', length = '4490 mm', height = '8 courses', facts = '' }: WallText,
  lines = '',
): string {
  return `wall ${name}\n  brick red\n  stands held\n${facts}  length ${length}\n  height ${height}\n${lines}`;
}

/** A job of that wall alone. */
export function jobOfWall(wall: WallText, lines = ''): string {
  return JOB + wallText(wall, lines);
}
