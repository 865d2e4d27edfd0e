/** Bonds that say what stands behind their face, for tests of walls thicker than a brick. */
import { bondOf, halvesSetOut } from '../../server/engine/brickwork/wall/bond';
import { factsNamed } from '../../server/engine/resolve/env';
import type { BondPattern, Thickness } from '../../server/engine/setting-out';
import { jobOf, LIBRARIES } from '../engine/world';

const S = 'stretcher' as const;
const H = 'header' as const;
const headers = { units: [H], start: 0.25 };

/** English bond as Collinson, Brickwork and Bricklaying, has it in thicker walls. */
export const ENGLISH: Record<3 | 4, BondPattern> = {
  3: {
    name: 'english',
    lap: 0.25,
    courses: [
      { units: [S], back: headers },
      { ...headers, back: { units: [S] } },
    ],
  },
  4: {
    name: 'english',
    lap: 0.25,
    courses: [
      { units: [S], core: { units: [H] }, back: { units: [S] } },
      { ...headers, back: headers },
    ],
  },
};

/** Flemish in the face over English behind it: the headers of every second course are snapped. */
export const FLEMISH: BondPattern = {
  name: 'flemish',
  lap: 0.25,
  courses: [
    { units: [S, H], back: headers },
    { units: [S, H], start: 0.75, back: { units: [S] } },
  ],
};

export interface LibraryBond {
  readonly library: string;
  readonly name: string;
  readonly thickness: Thickness;
  /** The number that a wall may give, for a bond that asks for one. */
  readonly n: number | undefined;
  readonly bond: BondPattern;
}

/** As many of whatever a bond counts as a wall may sensibly ask for. */
const NUMBERS = [1, 2, 3, 4, 5, 6];

/** Every bond of every library at each thickness that it is given for; where it asks for a number, with each of 1 to 6. */
export function libraryBonds(): LibraryBond[] {
  return Object.keys(LIBRARIES).flatMap((library) => {
    const { book, env } = jobOf(`perpend 1\nuse ${library}\n`);
    return [...book.names('bond')].flatMap((name) => {
      const facts = factsNamed(env, 'bond', name)!;
      const numbers = facts.line('n') ? [undefined, ...NUMBERS] : [undefined];
      const thick = facts.lines('thick').map((line) => halvesSetOut(line.number('thick'))!);
      return thick.flatMap((thickness) =>
        numbers.map((n) => ({ library, name, thickness, n, bond: bondOf(facts, n, thickness)! })),
      );
    });
  });
}

/** Those that are laid alike, whatever they are called, once. */
export function unlike<T extends { readonly bond: BondPattern; readonly thickness: Thickness }>(
  all: readonly T[],
): T[] {
  const seen = new Map(
    all.map((each) => [JSON.stringify([each.thickness, each.bond.courses]), each]),
  );
  return [...seen.values()];
}
