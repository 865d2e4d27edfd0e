import { Filler, type Filling, type Wanted } from './fill';
import { type Cutting, type Nesting, roomIn, sizeIn } from './stock';

/** What a piece is worth at first rises a little faster than its length: long ones are hard to place. */
const RISE = 1.03;

/** Pieces put in rising order of size, with what each is worth as far as rounds have taught. */
export interface Valued {
  readonly nesting: Nesting;
  /** Place among what is asked, of each size. */
  readonly asked: readonly number[];
  readonly sizes: readonly number[];
  readonly worth: number[];
  /** Fillings looked at so far. */
  spent: number;
}

/** `turn` makes another beginning: long pieces worth more still. */
export function valued(nesting: Nesting, turn = 0, spent = 0): Valued {
  const asked = nesting.asked.map((_, i) => i);
  asked.sort((a, b) => nesting.asked[a]!.length - nesting.asked[b]!.length);
  const sizes = asked.map((i) => sizeIn(nesting, nesting.asked[i]!.length));
  const room = roomIn(nesting, nesting.brick);
  return {
    nesting,
    asked,
    sizes,
    worth: sizes.map((size) => (size / room) ** (RISE + turn / 20)),
    spent,
  };
}

/**
 * One round (`portion` of what a filling could serve is cut before another is looked for): bats, then bricks, each filled with what is worth most of what is left. A piece that ends up
 * in a brick with much waste is worth more in the next round, so that it is placed earlier (the method
 * of sequential value correction: Mukhacheva and others, Belov and Scheithauer; from memory).
 */
export function cutByWorth(values: Valued, portion = 1): Cutting[] {
  const { nesting, asked, sizes, worth } = values;
  const left = asked.map((i) => nesting.asked[i]!.count);
  const wanted: Wanted = { sizes, left, worth };
  const filler = new Filler(wanted);
  const cuttings: Cutting[] = [];
  const cutAll = (length: number, count: number, bat?: number) => {
    const room = roomIn(nesting, length);
    for (let stock = count; stock > 0; ) {
      const filling = filler.fill(room);
      if (!filling.length) return;
      const most = Math.min(stock, ...filling.map((f) => Math.floor(left[f.place]! / f.count)));
      const times = Math.ceil(most * portion);
      for (const { place, count: each } of filling) left[place]! -= each * times;
      const pieces = filling.map((f) => ({ asked: asked[f.place]!, count: f.count }));
      cuttings.push({ bat, times, pieces });
      if (bat === undefined) learn(values, filling, left, times, room);
      stock -= times;
    }
  };
  for (const [bat, { length, count }] of nesting.bats.entries()) cutAll(length, count, bat);
  cutAll(nesting.brick, Number.POSITIVE_INFINITY);
  values.spent += filler.spent;
  return cuttings;
}

/** Moves the worth of what was cut from a brick towards the share of that brick it took up, waste and all. */
function learn(
  { nesting, asked, sizes, worth }: Valued,
  filling: Filling,
  left: readonly number[],
  times: number,
  room: number,
) {
  const used = filling.reduce((sum, f) => sum + f.count * sizes[f.place]!, 0);
  for (const { place, count } of filling) {
    const took = (sizes[place]! / room) ** RISE * (room / used);
    const cut = times * count;
    const trust = cut / (cut + left[place]! + nesting.asked[asked[place]!]!.count);
    worth[place] = worth[place]! * (1 - trust) + took * trust;
  }
}
