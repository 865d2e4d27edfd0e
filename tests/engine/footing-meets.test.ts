/** Strips of concrete that cross under walls that meet: their outline on plan by its corners (shoelace), times the depth. */
import { describe, expect, test } from 'vitest';
import { evaluated } from './evaluate';
import { jobOf } from './world';

const wall = (name: string, length: number, lines: string) =>
  `wall ${name}\n  stands held\n  length ${length} mm\n  height 8 courses\n${lines}`;

const worksOf = (text: string) => jobOf(`perpend 1\nuse uk\n${text}`).works;

const termOf = (works: ReturnType<typeof worksOf>, name: string) =>
  works.find((w) => w.name === name)!.figures.find((f) => f.key === 'concrete')!.term;

/** Litres of all footings. */
const concrete = (text: string, names: readonly string[]) => {
  const works = worksOf(text);
  return names.reduce((sum, name) => sum + termOf(works, name).value.toNumber(), 0);
};

type Point = readonly [number, number];

/** Area of a polygon by its corners, m². */
const areaOf = (corners: readonly Point[]) =>
  Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [u, v] = corners[(i + 1) % corners.length]!;
      return sum + x * v - u * y;
    }, 0),
  ) / 2e6;

const box = (x: number, y: number, right: number, top: number): Point[] => [
  [x, y],
  [right, y],
  [right, top],
  [x, top],
];

/** Two walls to their outer corner at (4490, 0), the first 4490 long on x, the second 3365 on y: the outline of both strips. */
function corner(w1: number, w2: number, t1: number, t2: number): Point[] {
  const [p1, p2] = [(w1 - t1) / 2, (w2 - t2) / 2];
  return [
    [0, -p1],
    [4490 + p2, -p1],
    [4490 + p2, 3365],
    [4490 - t2 - p2, 3365],
    [4490 - t2 - p2, t1 + p1],
    [0, t1 + p1],
  ];
}

describe('a corner of two strips', () => {
  const at = (first: string, second: string) =>
    concrete(
      `${wall('a', 4490, `  right quoin b\n${first}`)}${wall('b', 3365, `  left quoin a\n${second}`)}`,
      ['a', 'b'],
    );
  const ONE = '  thick 1 brick\n  bond english\n';

  test('450 and 450 mm wide under half a brick', () => {
    const litres = at('  footing 450 x 225 mm\n', '  footing 450 x 225 mm\n');
    expect(litres).toBeCloseTo(areaOf(corner(450, 450, 102.5, 102.5)) * 225, 6);
    // By mean girth: 4490 + 3365 - 2 x 51.25 = 7752.5 mm.
    expect(litres).toBeCloseTo(0.45 * 225 * 7.7525, 6);
  });

  test('600 and 450 mm wide, under a brick and half a brick', () => {
    const litres = at(`  footing 600 x 225 mm\n${ONE}`, '  footing 450 x 225 mm\n');
    expect(litres).toBeCloseTo(areaOf(corner(600, 450, 215, 102.5)) * 225, 6);
  });

  test('of two depths: the deeper goes through', () => {
    const litres = at('  footing 600 x 200 mm\n', '  footing 450 x 300 mm\n');
    const [p1, p2] = [(600 - 102.5) / 2, (450 - 102.5) / 2];
    const deep = areaOf(box(0, 0 - p1, 450, 3365)) * 300;
    const shallow = areaOf(box(0, 0, 4490 - 102.5 - p2, 600)) * 200;
    expect(litres).toBeCloseTo(deep + shallow, 6);
  });

  test('of a wall that says a footing and one that says none: its whole length', () => {
    const works = worksOf(
      `${wall('a', 4490, '  right quoin b\n  footing 450 x 225 mm\n')}${wall('b', 3365, '  left quoin a\n')}`,
    );
    expect(termOf(works, 'a').value.toNumber()).toBeCloseTo(0.45 * 225 * 4.49, 6);
  });

  test('its working tells what is taken off, and comes to the figure', () => {
    const works = worksOf(
      `${wall('a', 4490, '  right quoin b\n  footing 450 x 225 mm\n')}${wall('b', 3365, '  left quoin a\n  footing 600 x 225 mm\n')}`,
    );
    const term = termOf(works, 'a');
    expect(evaluated(term).minus(term.value).abs().lessThan('1e-20')).toBe(true);
    const labels: string[] = [];
    const walk = (t: typeof term): void => {
      labels.push(t.label);
      t.args.forEach(walk);
    };
    walk(term);
    expect(labels).toContain('in the footing of b');
    expect(labels).toContain('width of the footing of b');
  });

  test('four round a yard, by the outer side less the inner', () => {
    const foot = '  footing 450 x 225 mm\n';
    const ring = [
      wall('s', 4490, `  left quoin w\n  right quoin e\n${foot}`),
      wall('e', 3365, `  left quoin s\n  right quoin n\n${foot}`),
      wall('n', 4490, `  left quoin e\n  right quoin w\n${foot}`),
      wall('w', 3365, `  left quoin n\n  right quoin s\n${foot}`),
    ].join('');
    const p = (450 - 102.5) / 2;
    const outer = (4490 + 2 * p) * (3365 + 2 * p);
    const inner = (4490 + 2 * p - 900) * (3365 + 2 * p - 900);
    expect(concrete(ring, ['s', 'e', 'n', 'w'])).toBeCloseTo(((outer - inner) * 225) / 1e6, 6);
  });
});

describe('cavity walls, the skin behind on either side of the corner', () => {
  // 102.5 + 50 + 100 = 252.5 mm through.
  const SKIN = '  backing block-100 cavity 50 mm\n  footing 600 x 225 mm\n';
  const p = (600 - 252.5) / 2;
  const at = (inside: string) =>
    concrete(
      `${wall('a', 4490, `  right quoin b${inside}\n${SKIN}`)}${wall('b', 3365, `  left quoin a${inside}\n${SKIN}`)}`,
      ['a', 'b'],
    );

  test('inside: lengths are to the outer corner of the footing’s walls', () => {
    const area = 600 * (4490 + p) + 600 * (3365 + p - 600);
    expect(at('')).toBeCloseTo((area * 225) / 1e6, 6);
  });

  test('outside: the skins go on 150 mm past the ends', () => {
    const area = 600 * (4490 + 150 + p) + 600 * (3365 + 150 + p - 600);
    expect(at(' inside')).toBeCloseTo((area * 225) / 1e6, 6);
  });
});

describe('a strip that runs into the face of another', () => {
  const at = (first: string, second: string) =>
    concrete(`${wall('a', 4490, first)}${wall('b', 2240, `  left tee a 2.25 m\n${second}`)}`, [
      'a',
      'b',
    ]);
  const foot = (width: number, depth: number) => `  footing ${width} x ${depth} mm\n`;
  const OUT = (600 - 102.5) / 2;

  test.each([
    ['stops at its side', 225, 225, (2240 - OUT) * 225],
    ['stops at the side of a deeper one', 300, 225, (2240 - OUT) * 225],
    ['goes on under a shallower one', 150, 225, 2240 * 225 - OUT * 150],
  ])('%s', (_what, deep, own, section) => {
    const litres = at(foot(600, deep), foot(450, own));
    expect(litres).toBeCloseTo((600 * 4490 * deep + 450 * section) / 1e6, 6);
  });

  test('a wall shorter than what the other footing stands out adds nothing, and never less', () => {
    const text = `${wall('a', 4490, foot(1200, 225))}${wall('b', 440, `  left tee a 2.25 m\n${foot(450, 225)}`)}`;
    expect(concrete(text, ['b'])).toBe(0);
  });
});
