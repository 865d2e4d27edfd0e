/**
 * Which lines of the files a figure depends on, the one that it depends on most first: the one that moves it most, by the
 * sums that it was made by. Of two alike, the one nearer to the end of its working.
 */
import type { Place } from '../../../shared/span';
import { RULES } from '../ranges/rules';
import type { Origin, Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';

/** Of one figure more lines are not told of. */
const MOST = 48;
/** A line that moves a figure less than this, of as much as it is moved itself, is none that a reader would look for. */
const LEAST = 0.1;
/** A line counts so much less for each step that it stands further down: what decides a sum stands near its end. */
const NEARER = 0.88;
/** What a library that ships says is the same in every job: a line of the reader’s own files is rather looked for. */
const SHIPPED = 0.3;
/** Of a sum of hundreds, parts this small come to nothing that is told. */
const NOTHING = 1e-4;
/** No working is so deep; it bounds the walk through one that somebody has made up. */
const DEEPEST = 80;

/** How far a figure moves with a line: 1 where it moves as much as the line does, less than nothing where the other way. */
interface Hold {
  readonly origin: Origin;
  readonly moves: number;
  /** From the figure to the line. */
  readonly steps: number;
}

type Holds = ReadonlyMap<string, Hold>;
const NONE: Holds = new Map();

/** A term never changes, so what it hangs on is found once; where its lines stand may change with every key. */
const known = new WeakMap<Term, Holds>();
const numbers = new WeakMap<SourceBlock, number>();
let blocks = 0;

/** The lines that a figure comes from. What it lacks comes first: the figure waits for that. */
export function linesBehind(term: Term): readonly Place[] {
  const lacks = term.gaps.flatMap(({ origin }) => origin ?? []);
  const found = [...holdsOf(term, 0).values()];
  const moving = found.filter(({ moves }) => Math.abs(moves) >= LEAST);
  // One pack is one pack, whatever is a little more: then what it was worked out from is told.
  const all = (moving.length ? ranked(moving) : nearest(found)).map(({ origin }) => origin);
  const seen = new Map([...lacks, ...all].map((origin) => [keyOf(origin), origin]));
  return [...seen.values()].slice(0, MOST).map(({ block, span }) => block.place(span));
}

function ranked(holds: readonly Hold[]): Hold[] {
  const by = holds.map((hold) => ({ hold, rank: rankOf(hold) }));
  return by.sort((a, b) => b.rank - a.rank).map(({ hold }) => hold);
}

function rankOf({ moves, steps, origin }: Hold): number {
  return Math.abs(moves) * NEARER ** steps * (origin.block.file.shipped ? SHIPPED : 1);
}

function nearest(holds: readonly Hold[]): Hold[] {
  return [...holds].sort((a, b) => a.steps - b.steps);
}

function keyOf({ block, span }: Origin): string {
  let number = numbers.get(block);
  if (number === undefined) {
    number = blocks++;
    numbers.set(block, number);
  }
  return `${number}:${span.line}`;
}

function holdsOf(term: Term, deep: number): Holds {
  const found = known.get(term);
  if (found) return found;
  if (deep > DEEPEST) return NONE;
  const holds = worked(term, deep);
  known.set(term, holds);
  return holds;
}

function worked(term: Term, deep: number): Holds {
  const { args, origin, op } = term;
  if (!args.length)
    return origin ? new Map([[keyOf(origin), { origin, moves: 1, steps: 0 }]]) : NONE;
  const by = movesOf(term);
  const step = op === 'named' || op === 'cents' || op === 'convert' ? 0 : 1;
  const all = new Map<string, Hold>();
  const either = saysNoHow(term);
  for (const [i, arg] of args.entries())
    for (const [key, of] of holdsOf(arg, deep + 1)) {
      const moves = of.moves * by[i]!;
      if (Math.abs(moves) < NOTHING && all.size >= MOST) continue;
      const more = { origin: of.origin, moves, steps: of.steps + step };
      all.set(key, together(all.get(key), more, either));
    }
  if (all.size <= MOST) return all;
  return new Map(
    ranked([...all.values()])
      .slice(0, MOST)
      .map((hold) => [keyOf(hold.origin), hold]),
  );
}

/** A line that a sum hangs on twice moves it by both: what it adds here it may take off there. */
function together(was: Hold | undefined, more: Hold, either: boolean): Hold {
  if (!was) return more;
  const both = was.moves + more.moves;
  const most = Math.abs(was.moves) > Math.abs(more.moves) ? was.moves : more.moves;
  return {
    origin: was.origin,
    moves: either ? most : both,
    steps: Math.min(was.steps, more.steps),
  };
}

/** What is counted tells what it is counted along, first of all, and not how far each of it counts. */
function saysNoHow({ op, again }: Term): boolean {
  return op !== 'sum' && op !== 'product' && !again && !RULES[op];
}

/** How far a figure moves with each of its parts. */
function movesOf(term: Term): readonly number[] {
  const { op, args } = term;
  if (saysNoHow(term)) return args.map((_, i) => 1 / (1 + i / 8));
  if (op === 'product') return args.map(() => 1);
  const values = args.map((arg) => arg.value.toNumber());
  return op === 'sum' ? partsOf(values) : tried(term.again ?? RULES[op]!, values);
}

const MORE = 1.25;

function partsOf(values: readonly number[]): readonly number[] {
  const all = values.reduce((sum, value) => sum + value, 0);
  return values.map((value) => (all ? value / all : 1 / values.length));
}

/** With each part a quarter more, and as much less: whole packs and pounds do not move with little. */
function tried(rule: (args: readonly number[]) => number, values: readonly number[]) {
  const all = rule(values);
  return values.map((_, i) => {
    const at = (by: number) => rule(values.map((value, k) => (k === i ? value * by : value)));
    const moves = (at(MORE) - at(1 / MORE)) / ((MORE - 1 / MORE) * all);
    return Number.isFinite(moves) ? moves : i ? 0 : 1;
  });
}
