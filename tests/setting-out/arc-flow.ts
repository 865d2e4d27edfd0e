/**
 * The least number of bricks that any nesting could do with, by a solver that knows nothing of ours: cutting as
 * a flow from one end of a brick to the other (the arc-flow model of Valério de Carvalho, 1999), its linear
 * relaxation solved by HiGHS. Lengths are whole mm.
 */
import type highs from 'highs';

export type Solver = Awaited<ReturnType<typeof highs>>;

export interface Cut {
  length: number;
  count: number;
}

interface Arc {
  from: number;
  to: number;
  /** Place of the cut; -1 for what is thrown away. */
  cut: number;
}

/** Longest first, so that one way of cutting is one path. */
function arcsOf(sizes: readonly number[], counts: readonly number[], room: number): Arc[] {
  const arcs = new Map<string, Arc>();
  const reached = new Set([0]);
  for (const [cut, size] of sizes.entries())
    for (const start of [...reached].sort((a, b) => a - b)) {
      let from = start;
      for (let n = 0; n < counts[cut]! && from + size <= room; n++, from += size) {
        arcs.set(`${from} ${cut}`, { from, to: from + size, cut });
        reached.add(from + size);
      }
    }
  for (const from of reached)
    if (from > 0 && from < room) arcs.set(`${from} -`, { from, to: room, cut: -1 });
  return [...arcs.values()];
}

function program(cuts: readonly Cut[], brick: number, kerf: number): string {
  const room = brick + kerf;
  const arcs = arcsOf(
    cuts.map((c) => c.length + kerf),
    cuts.map((c) => c.count),
    room,
  );
  const nodes = new Map<number, string[]>();
  const served = cuts.map((): string[] => []);
  const at = (node: number) => nodes.get(node) ?? nodes.set(node, []).get(node)!;
  for (const [i, { from, to, cut }] of arcs.entries()) {
    at(from).push(`- x${i}`);
    at(to).push(`+ x${i}`);
    served[cut]?.push(`+ x${i}`);
  }
  const flow = [...nodes].filter(([node]) => node > 0 && node < room);
  return [
    'Minimize',
    ` obj: ${at(0)
      .map((term) => term.replace('-', '+'))
      .join(' ')}`,
    'Subject To',
    ...flow.map(([node, terms]) => ` n${node}: ${terms.join(' ')} = 0`),
    ...served.map((terms, i) => ` d${i}: ${terms.join(' ')} >= ${cuts[i]!.count}`),
    'End',
  ].join('\n');
}

/** A lower bound on whole bricks of `brick` mm for `cuts`, rounded up; bricks are whole. */
export function boundBy(solver: Solver, cuts: readonly Cut[], brick: number, kerf: number): number {
  const sorted = [...cuts].sort((a, b) => b.length - a.length);
  const solved = solver.solve(program(sorted, brick, kerf));
  if (solved.Status !== 'Optimal') throw new Error(`HiGHS: ${solved.Status}`);
  return Math.ceil(solved.ObjectiveValue - 1e-6);
}
