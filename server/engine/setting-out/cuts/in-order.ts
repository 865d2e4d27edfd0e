import { type Cutting, type Nesting, roomIn, type Share, sizeIn } from './stock';

/** Bricks or bats begun alike, with the room left in each. */
interface Begun {
  readonly bat?: number;
  readonly times: number;
  readonly room: number;
  readonly pieces: readonly Share[];
}

/**
 * Cut as they come: each piece from the first bat or begun brick that has room for it, else from a new
 * brick. `order` are the places of what is asked, in the order they are cut. Like pieces are dealt with
 * together, so the cost goes with the number of lengths, never with that of pieces.
 */
export function cutInOrder(nesting: Nesting, order: readonly number[]): Cutting[] {
  let begun: Begun[] = nesting.bats.map(({ length, count }, bat) => {
    return { bat, times: count, room: roomIn(nesting, length), pieces: [] };
  });
  const done: Begun[] = [];
  const least = Math.min(...order.map((i) => sizeIn(nesting, nesting.asked[i]!.length)));
  for (const asked of order) {
    const after = cutOne(nesting, asked, begun);
    done.push(...after.filter((b) => b.room < least));
    begun = after.filter((b) => b.room >= least);
  }
  return [...done, ...begun].filter((b) => b.pieces.length && b.times > 0);
}

function cutOne(nesting: Nesting, asked: number, begun: readonly Begun[]): Begun[] {
  const { length, count } = nesting.asked[asked]!;
  const size = sizeIn(nesting, length);
  const after: Begun[] = [];
  let left = count;
  for (const each of begun) {
    if (left < 1 || each.room < size) {
      after.push(each);
      continue;
    }
    const { cut, taken } = cutFrom(each, asked, size, left);
    after.push(...cut);
    left -= taken;
  }
  const room = roomIn(nesting, nesting.brick);
  const each = Math.max(1, Math.floor(room / size));
  const fresh = { times: Math.ceil(left / each), room, pieces: [] };
  return left > 0 ? [...after, ...cutFrom(fresh, asked, size, left).cut] : after;
}

/** As many as go into what is begun alike: full ones first, then one with the rest, then those left alone. */
function cutFrom(begun: Begun, asked: number, size: number, left: number) {
  const each = Math.max(1, Math.floor(begun.room / size));
  const full = Math.min(begun.times, Math.floor(left / each));
  const rest = full < begun.times ? left - full * each : 0;
  const parts: [number, number][] = [
    [full, each],
    [rest > 0 ? 1 : 0, rest],
    [begun.times - full - (rest > 0 ? 1 : 0), 0],
  ];
  const cut = parts
    .filter(([times]) => times > 0)
    .map(([times, pieces]) => withPieces(begun, times, asked, pieces, size));
  return { cut, taken: full * each + rest };
}

function withPieces(begun: Begun, times: number, asked: number, count: number, size: number) {
  const { bat, room, pieces } = begun;
  if (!count) return { ...begun, times };
  return { bat, times, room: room - count * size, pieces: [...pieces, { asked, count }] };
}
