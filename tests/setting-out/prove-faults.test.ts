/** The checker itself: good layouts made by hand pass, and every fault sown into one is caught. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BuiltCourse,
  type BuiltPiece,
  type FaultKind,
  type ProofRules,
  proveFace,
} from '../../server/engine/setting-out/prove';
import { files, importsOf, read } from '../tree';

const QUARTER = 56.25;
const RULES: ProofRules = {
  joint: { least: 7, most: 13 },
  lap: QUARTER - 0.01,
  tooth: 112.5,
  leastCut: 50,
  sizes: { stretcher: 215, header: 102.5, closer: 46.25, 'three-quarter': 158.75, half: 102.5 },
};
const FACE = { S: 215, H: 102.5, c: 46.25, T: 158.75 } as const;
const PIECE = { S: 'stretcher', H: 'header', c: 'closer', T: 'three-quarter' } as const;

/** A course as a bricklayer would say it, at joints of 10 mm. */
function course(number: number, said: string): BuiltCourse {
  const pieces: BuiltPiece[] = [];
  let at = 0;
  for (const letter of said.split(' ') as (keyof typeof FACE)[]) {
    pieces.push({ piece: PIECE[letter], from: at, to: at + FACE[letter] });
    at += FACE[letter] + 10;
  }
  const outline = [{ from: 0, to: at - 10, left: 'stopped' as const, right: 'stopped' as const }];
  return { course: number, pieces, outline };
}

/** English and Flemish of four bricks as books lay them: Barry; Collinson, Brickwork and Bricklaying. */
const ENGLISH = [course(0, 'S S S S'), course(1, 'H c H H H H H c H'), course(2, 'S S S S')];
const FLEMISH = [course(0, 'S H S H S'), course(1, 'H c S H S c H'), course(2, 'S H S H S')];

const kinds = (courses: readonly BuiltCourse[], rules = RULES) =>
  [...new Set(proveFace(courses, rules).map(({ kind }) => kind))].sort();

/** The same face with one course changed. */
function withCourse(
  face: readonly BuiltCourse[],
  i: number,
  change: (pieces: BuiltPiece[]) => BuiltPiece[],
): BuiltCourse[] {
  return face.map((c, at) => (at === i ? { ...c, pieces: change([...c.pieces]) } : c));
}

const moved = (piece: BuiltPiece, by: number) => ({
  ...piece,
  from: piece.from + by,
  to: piece.to + by,
});

describe('what is sound', () => {
  test('English and Flemish bond as books lay them', () => {
    expect(kinds(ENGLISH)).toEqual([]);
    expect(kinds(FLEMISH)).toEqual([]);
  });

  test('pieces in any order, courses in any order', () => {
    const mixed = withCourse(FLEMISH, 1, (pieces) => pieces.reverse()).reverse();
    expect(kinds(mixed)).toEqual([]);
  });

  test('a stack bond, where no lap is asked for', () => {
    const stack = [course(0, 'S S S'), course(1, 'S S S')];
    expect(kinds(stack)).toEqual(['aligned']);
    expect(kinds(stack, { ...RULES, lap: 0 })).toEqual([]);
  });

  test('teeth that run on or stop short by half a brick, a plain end with its joint', () => {
    const toothed = (by: number): BuiltCourse => {
      const { pieces, outline } = course(0, 'S S S');
      const [{ to, ...rest }] = outline as [(typeof outline)[0]];
      return { course: 0, pieces, outline: [{ ...rest, to: to + by, right: 'toothed' }] };
    };
    expect([-112.5, -50, 0, 50, 112.5].map((by) => kinds([toothed(by)]))).toEqual(
      Array(5).fill([]),
    );
    expect(kinds([toothed(-150)])).toEqual(['outside']);
    expect(kinds([toothed(150)])).toEqual(['gap']);
    const against = course(0, 'S S S');
    const outline = against.outline.map((o) => ({ ...o, to: o.to + 10, right: 'butted' as const }));
    expect(kinds([{ ...against, outline }])).toEqual([]);
    expect(kinds([{ ...against, outline: outline.map((o) => ({ ...o, to: o.to - 9 })) }])).toEqual([
      'joint-out',
    ]);
  });

  test('where the bond is owned to be broken, the lap of a broken bond, and nowhere else', () => {
    const half = { ...RULES, lap: 112.5 };
    const broken = [{ from: 200, to: 800, lap: QUARTER - 0.01 }];
    const face = [course(0, 'S S S S'), course(1, 'H c H H H H H c H')];
    const places = proveFace([{ ...face[0]!, broken }, face[1]!], half).map(({ at }) => at);
    expect(places.length).toBeGreaterThan(0);
    expect(places.every((at) => at < 200 || at > 800)).toBe(true);
  });
});

/** Each fault by name, how it is sown, and what must be told of it, beside anything that follows from it. */
const SOWN: readonly [FaultKind, string, BuiltCourse[]][] = [
  [
    'overlap',
    'a brick moved onto the next',
    withCourse(ENGLISH, 0, (p) => p.with(1, moved(p[1]!, 12))),
  ],
  ['joint-out', 'a joint closed up', withCourse(ENGLISH, 0, (p) => p.with(1, moved(p[1]!, 5)))],
  ['joint-out', 'a joint opened', withCourse(ENGLISH, 1, (p) => p.with(3, moved(p[3]!, -5)))],
  ['gap', 'a brick left out', withCourse(ENGLISH, 0, (p) => p.filter((_, i) => i !== 2))],
  ['gap', 'a closer left out', withCourse(ENGLISH, 1, (p) => p.filter((_, i) => i !== 1))],
  ['gap', 'an end not filled', withCourse(ENGLISH, 0, (p) => p.slice(1))],
  ['gap', 'a course with nothing in it', withCourse(ENGLISH, 1, () => [])],
  ['outside', 'a brick past the end', withCourse(ENGLISH, 2, (p) => [...p, moved(p[3]!, 225)])],
  ['outside', 'an end run over', withCourse(ENGLISH, 2, (p) => p.map((b) => moved(b, 4)))],
  ['aligned', 'stretchers on stretchers', [ENGLISH[0]!, { ...ENGLISH[2]!, course: 1 }]],
  ['aligned', 'Flemish begun alike in two courses', [FLEMISH[0]!, { ...FLEMISH[2]!, course: 1 }]],
  [
    'lap-short',
    'a course shifted by an eighth of a brick',
    [course(0, 'S S S S'), { ...course(1, 'T T T T T'), outline: [] }].map((c, i) =>
      i === 0
        ? c
        : { ...c, pieces: c.pieces.map((b) => moved(b, 28)), outline: ENGLISH[0]!.outline },
    ),
  ],
  [
    'closer-missing',
    'headers on stretchers from the quoin on',
    [ENGLISH[0]!, course(1, 'H H H H H H H H')],
  ],
  [
    'closer-missing',
    'a Flemish header course without its closers',
    [FLEMISH[0]!, course(1, 'H S H S H H')],
  ],
  ['closer-at-end', 'a closer at the very end', [course(0, 'c H H H H H H c H')]],
  ['closer-misplaced', 'a closer two headers in', [course(0, 'H H c H H H H c H')]],
  [
    'cut-too-short',
    'a sliver',
    withCourse(ENGLISH, 0, (p) => {
      const { from } = p[3]!;
      return [
        ...p.slice(0, 3),
        { piece: 'cut', from, to: from + 30 },
        { piece: 'cut', from: from + 40, to: from + 215 },
      ];
    }),
  ],
  [
    'size-off',
    'a brick stretched',
    withCourse(ENGLISH, 0, (p) => p.with(1, { ...p[1]!, to: p[1]!.to + 2 })),
  ],
  [
    'no-piece',
    'a brick of no length',
    withCourse(ENGLISH, 0, (p) => p.with(1, { ...p[1]!, to: p[1]!.from })),
  ],
];

describe('every fault sown is caught', () => {
  test.each(SOWN)('%s: %s', (kind, _, face) => {
    expect(kinds(face)).toContain(kind);
  });

  test('a header that begins a course of stretchers wants no closer, nor does one under a bat', () => {
    expect(kinds([course(0, 'S S S S'), course(1, 'H S S S H')])).toEqual([]);
    expect(kinds([course(0, 'H S S S H'), course(1, 'T H H H H H H T')])).toEqual([]);
  });

  test('in the course and at the place where it is', () => {
    const [fault] = proveFace(
      withCourse(ENGLISH, 0, (p) => p.filter((_, i) => i !== 2)),
      RULES,
    );
    expect(fault).toMatchObject({ kind: 'gap', course: 0, at: 440, measured: 235, wanted: 13 });
  });

  test('wherever a brick of a sound face is moved, changed or dropped', () => {
    const where = fc.record({
      face: fc.constantFrom(ENGLISH, FLEMISH),
      course: fc.nat(2),
      piece: fc.nat(100),
      by: fc.oneof(fc.double({ min: 3.01, max: 400, noNaN: true }), fc.constant(null)),
      back: fc.boolean(),
    });
    fc.assert(
      fc.property(where, ({ face, course: i, piece, by, back }) => {
        const changed = withCourse(face, i, (pieces) => {
          const at = piece % pieces.length;
          if (by === null) return pieces.filter((_, k) => k !== at);
          return pieces.with(at, moved(pieces[at]!, back ? -by : by));
        });
        expect(proveFace(changed, RULES)).not.toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});

describe('whatever it is given', () => {
  const any = fc.oneof(
    fc.constantFrom(0, -1, 1e300, -1e300, Number.NaN, Infinity, -Infinity),
    fc.double({ min: -1e4, max: 1e4 }),
  );

  test('an answer comes', () => {
    const piece = fc.record({
      piece: fc.constantFrom('stretcher', 'header', 'closer', 'cut') as fc.Arbitrary<
        BuiltPiece['piece']
      >,
      from: any,
      to: any,
    });
    const end = fc.constantFrom('stopped' as const, 'toothed' as const, 'butted' as const);
    const built = fc.record({
      course: fc.nat(3),
      pieces: fc.array(piece, { maxLength: 12 }),
      outline: fc.array(fc.record({ from: any, to: any, left: end, right: end }), { maxLength: 4 }),
      broken: fc.array(fc.record({ from: any, to: any, lap: any }), { maxLength: 3 }),
    });
    fc.assert(
      fc.property(fc.array(built, { maxLength: 4 }), (face) => {
        expect(proveFace(face, RULES).length).toBeLessThan(1000);
      }),
      { numRuns: 2000, interruptAfterTimeLimit: 180_000, markInterruptAsFailure: true },
    );
  });

  test('a course of 50,000 pieces, every one on another, is soon judged', () => {
    const pieces = Array.from({ length: 50_000 }, (_, i) => ({
      piece: 'stretcher' as const,
      from: (i * 7919) % 1000,
      to: ((i * 7919) % 1000) + 215,
    }));
    const heap = { ...ENGLISH[0]!, pieces };
    const start = process.cpuUsage();
    expect(proveFace([heap, { ...heap, course: 1 }], RULES).length).toBeGreaterThan(0);
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(20);
  });
});

test('the checker knows nothing of how a layout is made: it imports only plain types', () => {
  const own = files().filter((f) => f.startsWith('server/engine/setting-out/prove/'));
  expect(own.length).toBeGreaterThan(5);
  const imported = new Set(own.flatMap((f) => importsOf(read(f))));
  expect([...imported].filter((each) => each.startsWith('../'))).toEqual(['../types']);
  expect([...imported].filter((each) => !/^\.\.?\//.test(each))).toEqual([]);
});
