import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FitQuestion, fitRun, type Way, type WayKind } from '../../server/engine/setting-out';

const KINDS: WayKind[] = ['joints', 'half-bond', 'length', 'cut', 'cap'];

/** Any run, with some of the kinds ranked, in any order. */
const question: fc.Arbitrary<FitQuestion> = fc
  .record({
    length: fc.integer({ min: 400, max: 60000 }).map((n) => n / 10),
    piece: fc.constantFrom(65, 73, 215, 240),
    halved: fc.boolean(),
    endJoints: fc.constantFrom(0 as const, 1 as const, 2 as const),
    slack: fc.constantFrom(0, 2, 3),
    wholeWorth: fc.constantFrom(0, 1, 2),
    cap: fc.boolean(),
    prefer: fc.shuffledSubarray(KINDS),
  })
  .map(({ piece, halved, slack, wholeWorth, ...q }) => {
    const limits = { least: 10 - slack, best: 10, most: 10 + slack, leastCut: 50, wholeWorth };
    return { ...q, piece, half: halved ? (piece - 10) / 2 : null, limits };
  });

const poor = (way: Way) =>
  way.kind === 'cut'
    ? way.short === true
    : (way.kind === 'joints' || way.kind === 'half-bond') && !way.acceptable;

test('ways stand as they are preferred: what is laid first, then the kinds in their order, poor joints last', () => {
  fc.assert(
    fc.property(question, (q) => {
      const { ways, works } = fitRun(q);
      const rest = works === 'no' ? ways : ways.slice(1);
      const place = (way: Way) => {
        const at = q.prefer!.indexOf(way.kind);
        return (poor(way) ? 100 : 0) + (at < 0 ? KINDS.length : at);
      };
      const places = rest.map(place);
      expect(places).toEqual([...places].sort((a, b) => a - b));
      if (works !== 'no') expect(poor(ways[0]!)).toBe(false);
      expect(ways.some((w) => w.kind === 'cap')).toBe(q.cap);
    }),
    { numRuns: 3000 },
  );
});

test('whole bricks win over an odd half that is nearer by no more than they are worth', () => {
  fc.assert(
    fc.property(question, (q) => {
      const { wholeWorth = 0, best } = q.limits;
      const { works, ways, pieces } = fitRun(q);
      fc.pre(works !== 'no');
      const off = (kind: WayKind) =>
        ways.flatMap((w) =>
          w.kind === kind && 'acceptable' in w && w.acceptable ? [Math.abs(w.joint - best)] : [],
        )[0] ?? Number.POSITIVE_INFINITY;
      const halfWins = off('half-bond') + wholeWorth < off('joints') - 1e-9;
      const wholeWins = off('joints') < off('half-bond') + wholeWorth - 1e-9;
      if (halfWins) expect(pieces.half).toBe(1);
      if (wholeWins) expect(pieces.half).toBe(0);
    }),
    { numRuns: 3000 },
  );
});

test('where no cut of a decent length goes in, the longest that does is offered, and said to be short', () => {
  // Brick on edge, 65 mm, over 80 mm: one and a cut leave 80 - 65 - 10 = 5 mm; two like cuts (80 - 10) / 2 = 35.
  const limits = { least: 8, best: 10, most: 13, leastCut: 50 };
  const over = (length: number) => fitRun({ length, piece: 65, half: null, endJoints: 0, limits });
  const cutsOf = (length: number) => over(length).ways.filter((w) => w.kind === 'cut');
  expect(cutsOf(80)).toEqual([
    { kind: 'cut', where: 'middle', cuts: 2, wholes: 0, cut: 35, joint: 10, short: true },
  ]);
  for (let mm = 66; mm < 130; mm += 0.5)
    if (over(mm).works === 'no') expect(cutsOf(mm).length, `${mm} mm`).toBeGreaterThan(0);
  expect(cutsOf(30)).toMatchObject([{ cuts: 1, wholes: 0, cut: 30, short: true }]);
});
