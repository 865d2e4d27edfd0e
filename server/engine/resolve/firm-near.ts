/** The file of a firm’s prices, which jobs of its folder and of those in it find by its name. */

export const FIRM = 'firm.perp';

/** Folders in one another, as deep as nobody keeps jobs. */
const DEEPEST = 16;

/** What stands where a way such as `../firm.perp` leads to. */
export type Look = (way: string) => 'there' | 'missing' | 'outside';

/** The way to the nearest one, beside a file or in a folder above it; nothing where the workspace ends before. */
export function firmNear(look: Look): string | undefined {
  for (let up = 0; up < DEEPEST; up++) {
    const way = `${'../'.repeat(up)}${FIRM}`;
    const found = look(way);
    if (found === 'there') return way;
    if (found === 'outside') return undefined;
  }
  return undefined;
}
