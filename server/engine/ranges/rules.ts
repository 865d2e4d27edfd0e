/** The ops of `working/term.ts` in plain numbers; a billionth more or less is the arithmetic’s. */

/** A value in every lane, or one that is the same in all. */
export type Column = number | Float64Array;

type Rule = (args: readonly number[]) => number;

export const RULES: Readonly<Record<string, Rule | undefined>> = {
  named: ([a]) => a!,
  difference: ([a, b]) => a! - b!,
  quotient: ([a, b]) => (b ? a! / b : 0),
  share: ([percent, of]) => (of! * percent!) / 100,
  raised: ([of, percent]) => of! + (of! * percent!) / 100,
  whole: ([of, percent]) => (percent! > 0 ? (of! * 100) / percent! : 0),
  up: ([of, step = 1]) => (step ? Math.ceil(of! / step - 5e-10) * step : of!),
  nearest: ([of, step]) => (step ? halfAway(of! / step) * step : of!),
  most: ([a, b]) => Math.max(a!, b!),
  least: ([a, b]) => Math.min(a!, b!),
  down: ([of]) => Math.floor(of! + 5e-10),
};

/** To the nearest whole, half away from zero. */
function halfAway(value: number): number {
  return Math.sign(value) * Math.floor(Math.abs(value) + 0.5 + 1e-7);
}

/** Long sums and products are most of a price: they are added up column by column. */
export function sumOf(args: readonly Column[], count: number): Float64Array {
  const out = new Float64Array(count);
  let same = 0;
  for (const arg of args) {
    if (typeof arg === 'number') same += arg;
    else for (let lane = 0; lane < count; lane++) out[lane]! += arg[lane]!;
  }
  if (same) for (let lane = 0; lane < count; lane++) out[lane]! += same;
  return out;
}

export function productOf(args: readonly Column[], count: number): Float64Array {
  const out = new Float64Array(count).fill(1);
  let same = 1;
  for (const arg of args) {
    if (typeof arg === 'number') same *= arg;
    else for (let lane = 0; lane < count; lane++) out[lane]! *= arg[lane]!;
  }
  for (let lane = 0; lane < count; lane++) out[lane]! *= same;
  return out;
}

export function laneByLane(rule: Rule, args: readonly Column[], count: number): Float64Array {
  const out = new Float64Array(count);
  const values = args.map((arg) => (typeof arg === 'number' ? arg : 0));
  const moving = args.flatMap((arg, i) => (typeof arg === 'number' ? [] : [{ i, lanes: arg }]));
  for (let lane = 0; lane < count; lane++) {
    for (const { i, lanes } of moving) values[i] = lanes[lane]!;
    out[lane] = rule(values);
  }
  return out;
}
