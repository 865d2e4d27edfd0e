import { fewestBricks } from './bound';
import { cutByWorth, valued } from './by-worth';
import { cutInOrder } from './in-order';
import { bricksIn, type Cutting, type Nesting } from './stock';

/** Rounds of learning what each length is worth; the most that is spent on pieces that are hard to place. */
const ROUNDS = 150;
/** Fillings looked at in all of them, so that many lengths take no longer than few. Protects the tool. */
const MOST_SPENT = 700_000;
/** Shares of what a filling could serve that are cut before another is looked for, by turns. */
const PORTIONS = [1, 1 / 2, 1 / 4];
/** What was learnt is forgotten after so many, and learnt from another beginning. */
const AFRESH = 9;
/** One brick over what nothing goes under is looked into no longer than this. */
const NEAR_ROUNDS = 3;
/** With more lengths than this nobody waits for rounds: they are cut longest first. Protects the tool. */
const MOST_LENGTHS = 600;

/**
 * Which bricks to cut into what, so that few are cut: never more than cutting in order would, nor than
 * cutting the longest first, and nearly always the fewest there are (held against a solver in the tests).
 * Bats at hand are used before a brick is. A piece that goes into no brick has one to itself.
 */
export function nest(nesting: Nesting): readonly Cutting[] {
  const key = keyOf(nesting);
  const known = shelf.get(key);
  if (known) return known;
  const found = nested(nesting);
  if (shelf.size >= MOST_KEPT) shelf.clear();
  shelf.set(key, found);
  return found;
}

/** Nestings by all they depend on: most edits of a wall, and most ways out that are tried, leave its cuts as they were. */
const shelf = new Map<string, readonly Cutting[]>();
const MOST_KEPT = 500;

function keyOf({ brick, kerf, asked, bats }: Nesting): string {
  const list = (all: Nesting['asked']) => all.map(({ length, count }) => `${length}*${count}`);
  return `${brick} ${kerf} ${list(asked)} ${list(bats)}`;
}

function nested(nesting: Nesting): readonly Cutting[] {
  const asked = nesting.asked.map((_, i) => i).filter((i) => nesting.asked[i]!.count > 0);
  const falling = [...asked].sort((a, b) => nesting.asked[b]!.length - nesting.asked[a]!.length);
  const plain = [cutInOrder(nesting, falling), cutInOrder(nesting, asked)];
  let best = plain.reduce((a, b) => (bricksIn(b) < bricksIn(a) ? b : a));
  if (asked.length > MOST_LENGTHS || !allGoIn(nesting)) return best;
  const least = fewestBricks(nesting);
  let values = valued(nesting);
  for (let round = 0; round < ROUNDS; round++) {
    const over = bricksIn(best) - least;
    if (over <= 0 || (over <= 1 && round >= NEAR_ROUNDS) || values.spent > MOST_SPENT) break;
    if (round % AFRESH === AFRESH - 1) values = valued(nesting, round / AFRESH, values.spent);
    const found = cutByWorth(values, PORTIONS[round % PORTIONS.length]);
    if (bricksIn(found) < bricksIn(best)) best = found;
  }
  return best;
}

function allGoIn({ asked, brick }: Nesting): boolean {
  return asked.every(({ length }) => length <= brick);
}
