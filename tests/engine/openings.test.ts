/** Lintels, heads, arches and sills in a wall: counts by hand, what they leave of it, and how they are drawn. */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { bricksOf, placeCourse } from '../../server/engine/setting-out';
import type { Term } from '../../server/engine/working/term';
import { FIRM, findingsIn } from '../findings/tells';
import { took } from '../harness/took';
import { agree, allTerms, evaluated } from './evaluate';
import { jobOf } from './world';

/** Half-brick wall, ten bricks long, an opening of four bricks and a joint between six halves on each side. */
const wall = (lines: string, courses = 14) => `perpend 1
use "firm.perp"
wall north
  brick   red
  stands  held
  length  2240 mm
  height  ${courses} courses
  opening window
    from    left 665 mm
    width   910 mm
    sill    2 courses
    height  3 courses
${lines}`;

const job = (text: string) => jobOf(text, { 'firm.perp': FIRM });
const work = (lines: string, courses?: number) => job(wall(lines, courses)).works[0]!;
const figure = (lines: string, key: string, courses?: number) => {
  const found = work(lines, courses).figures.find((f) => f.key === key);
  if (!found) throw new Error(`there is no ${key}`);
  return found.term.value.toNumber();
};
/** Bricks of one part of the work, by the label of its count. */
const counted = (lines: string, label: string) => {
  const { needs } = work(lines);
  const terms = [...allTerms(needs.bricks[0]!.bricks)];
  return terms.find((t) => t.label === label)!.value.toNumber();
};

describe('a lintel', () => {
  test('on perpends takes exactly the bricks that would stand there', () => {
    // 562.5 to 1677.5 mm is five stretchers and four joints of the course on half bricks: 5 x 215 + 4 x 10.
    const lines = '    lintel 100 x 65 mm slab\n    bearing 102.5 mm\n';
    expect(1677.5 - 562.5).toBe(5 * 215 + 4 * 10);
    expect(figure('', 'bricks') - figure(lines, 'bricks')).toBe(5);
  });

  test('elsewhere cuts the bricks beside it', () => {
    // Bearing 150 mm: 515 to 1725. On the left the brick 337.5 to 552.5 is cut to 505; on the right, from 1735.
    const { carved } = work('    lintel 100 x 65 mm slab\n    bearing 150 mm\n').facts;
    const course = carved!.bands
      .filter((band) => band.from <= 5 && band.to > 5)
      .flatMap((band) => band.segments.flatMap((segment) => [...bricksOf(segment, 5)]));
    const cuts = course.filter((p) => p.piece === 'cut').map((p) => p.to - p.from);
    expect(cuts).toEqual([505 - 337.5, 1902.5 - 1735]);
  });

  test('two courses high takes two, and its area is no longer wall', () => {
    const plain = figure('', 'area');
    const high = figure('    lintel 100 x 140 mm slab\n    bearing 102.5 mm\n', 'area');
    expect(plain - high).toBeCloseTo(1.115 * 0.15, 9);
  });

  test('is bought by the piece, two side by side in a one-brick wall, and takes time', () => {
    const thick = wall('    lintel 100 x 65 mm slab\n').replace(
      '  stands',
      '  thick   1 brick\n  bond    english\n  stands',
    );
    const { pieces, tasks } = job(thick).works[0]!.needs;
    expect(pieces.map((p) => [p.material, p.count.value.toNumber()])).toEqual([['slab', 2]]);
    expect(tasks.find((t) => t.task === 'lintel')!.hours.value.toNumber()).toBe(1);
    expect(work('    lintel 100 x 65 mm slab\n').needs.pieces[0]!.count.value.toNumber()).toBe(1);
  });

  test('that is an angle takes no brick’s place', () => {
    expect(figure('    lintel angle slab\n', 'bricks')).toBe(figure('', 'bricks'));
  });
});

describe('soldiers', () => {
  const lines = '    lintel angle slab\n    bearing 102.5 mm\n    head soldier\n';

  test('over 1115 mm are fifteen, with joints of 8.75 mm', () => {
    expect((1115 - 15 * 65) / 16).toBe(8.75);
    expect(figure(lines, 'window.head')).toBe(15);
    expect(counted(lines, 'Over window')).toBe(15);
  });

  test('take the place of three courses', () => {
    // Courses on half bricks lose five each; the one between loses 4 whole and has two cut to 102.5, from one brick.
    const before = counted('', 'Bricks in the wall');
    expect(before - counted(lines, 'Bricks in the wall')).toBe(5 + 5 + (4 + 2 - 1));
  });

  test('stand two deep in a wall of one brick', () => {
    const thick = wall(lines).replace('  stands', '  thick   1 brick\n  bond    english\n  stands');
    const { bricks } = job(thick).works[0]!.needs;
    const found = [...allTerms(bricks[0]!.bricks)].find((t) => t.label === 'Over window');
    expect(found!.value.toNumber()).toBe(30);
  });
});

describe('bricks on edge', () => {
  test('over an opening are half bats in a wall of half a brick, with split bricks over them', () => {
    // 1115 mm again: 15 half bats from 8 bricks; over them a row cut to 27.5 mm high that goes on in the perpends of its
    // course, so that it laps the course above: half a brick, four bricks and half a brick, 102.5 + 4 x 225 + 10 + 102.5.
    expect(102.5 + 4 * 225 + 10 + 102.5).toBe(1115);
    const lines =
      '    lintel angle slab\n    bearing 102.5 mm\n    head brick-on-edge\n    fit head-height cut\n';
    expect(counted(lines, 'Over window')).toBe(8 + 6);
  });

  test('at the foot are whole bricks and take no brick’s place: 12 over 910 mm', () => {
    // (910 - 12 x 65) / 13 = 10 mm.
    const lines = '    subsill brick-on-edge\n';
    expect(figure(lines, 'window.subsill')).toBe(12);
    expect(figure(lines, 'bricks') - figure('', 'bricks')).toBe(12);
  });
});

describe('an arch', () => {
  const lines = '    head segmental rise 115 mm rings 2\n';

  test('by hand: 13 and 15 bricks in rings struck from 957.6 and 1070.1 mm', () => {
    const radius = (455 ** 2 + 115 ** 2) / 230;
    const lean = Math.asin(455 / radius);
    const odd = (arc: number) => {
      const most = Math.floor((arc - 5) / 70);
      return most % 2 ? most : most - 1;
    };
    const rings = [odd(2 * lean * radius), odd(2 * lean * (radius + 112.5))];
    expect(figure(lines, 'window.voussoirs')).toBe(rings[0]! + rings[1]!);
    expect(figure(lines, 'window.radius')).toBeCloseTo(radius, 6);
    // In half-brick work each is a half bat, two from a brick.
    expect(counted(lines, 'Arch over window')).toBe(Math.ceil((rings[0]! + rings[1]!) / 2));
  });

  test('with its opening is no part of the face of the wall: to a millionth of a square metre', () => {
    const radius = (455 ** 2 + 115 ** 2) / 230;
    const lean = Math.asin(455 / radius);
    const opening = (radius ** 2 * (2 * lean - Math.sin(2 * lean))) / 2;
    const rings = lean * ((radius + 215) ** 2 - radius ** 2);
    const lost = figure('', 'area') - figure(lines, 'area');
    expect(lost).toBeCloseTo((opening + rings) / 1e6, 6);
    const round = figure('', 'area') - figure('    head semicircular\n', 'area');
    expect(round).toBeCloseTo((Math.PI * 557.5 ** 2) / 2 / 1e6, 6);
  });

  test('axed has every brick cut, and asks for care with dust', () => {
    const axed = work('    head semicircular\n    fit arch cut\n');
    expect([...axed.facts.does]).toEqual(expect.arrayContaining(['arch', 'cutting']));
    const codes = findingsIn(wall('    head semicircular\n    fit arch cut\n')).map((f) => f.code);
    expect(codes).toEqual(expect.arrayContaining(['caution-arch', 'caution-silica']));
  });

  test('takes a centre, bought where a line says which', () => {
    const hours = work(lines).needs.tasks.find((t) => t.task === 'centre')!.hours;
    expect(hours.value.toNumber()).toBe(1);
    expect(work(lines).needs.pieces).toEqual([]);
    const [bought] = work(`${lines}    centre slab\n`).needs.pieces;
    expect([bought!.material, bought!.count.value.toNumber()]).toEqual(['slab', 1]);
  });

  test('cuts bricks on both sides alike in a wall that is the same from both ends', () => {
    const cuts = figure(lines, 'window.cuts');
    expect(cuts).toBeGreaterThan(4);
    // Skewbacks of 215 mm along a lean of 28.4 degrees rise 189 mm: three courses on each side.
    const radius = (455 ** 2 + 115 ** 2) / 230;
    expect(Math.ceil((215 * (radius - 115)) / radius / 75)).toBe(3);
    const [detail] = [...allTerms(work(lines).needs.bricks[0]!.bricks)]
      .filter((t) => t.label === 'Arch over window')
      .map((t) => t.detail!().find((line) => line.includes('skewbacks'))!);
    const said = Number(/(\d+) to the skewbacks/.exec(detail!)![1]);
    expect(said).toBeGreaterThanOrEqual(6);
    expect(said % 2).toBe(0);
  });
});

describe('in thicker walls', () => {
  const thick = (bricks: string, lines: string) =>
    job(wall(lines).replace('  stands', `  thick   ${bricks}\n  bond    english\n  stands`))
      .works[0]!;

  test.each(['1 brick', '1.5 bricks', '2 bricks'])(
    '%s: no row of any course reaches into a lintel, and each side of it has a joint',
    (bricks) => {
      const { carved } = thick(bricks, '    lintel 100 x 140 mm slab\n    bearing 150 mm\n').facts;
      for (const course of [5, 6]) {
        const pieces = placeCourse(carved!, course);
        expect(pieces.length).toBeGreaterThan(4);
        const near = pieces.filter((p) => p.x < 1725 + 9.9 && p.x + p.along > 515 - 9.9);
        expect(near).toEqual([]);
      }
    },
  );

  test('an arch takes a brick to each place for every two half bricks of the wall', () => {
    const bricks = (size: string) => {
      const { needs, figures } = thick(size, '    head segmental rise 130 mm\n');
      const round = figures.find((f) => f.key === 'window.voussoirs')!.term.value.toNumber();
      const terms = [...allTerms(needs.bricks[0]!.bricks)];
      return terms.find((t) => t.label === 'Arch over window')!.value.toNumber() / round;
    };
    expect(bricks('1 brick')).toBe(1);
    expect(bricks('2 bricks')).toBe(2);
    // A brick and a half: one whole and one half bat to a place, two bats from a brick.
    expect(bricks('1.5 bricks')).toBeCloseTo(1.5, 0);
  });
});

describe('mortar and workings', () => {
  const ALL = [
    '    lintel 100 x 65 mm slab\n    head soldier\n    subsill brick-on-edge\n',
    '    lintel 100 x 100 mm slab\n    fit lintel-height cut\n',
    '    head segmental rise 130 mm rings 2\n',
    '    head semicircular\n    fit arch joints\n',
    '    head semicircular\n    fit arch cut\n    subsill brick-on-edge\n',
  ];

  test.each(ALL)('of %j: there is mortar, in the share of a wall', (lines) => {
    const mortar = figure(lines, 'mortar');
    const plain = figure('', 'mortar');
    expect(mortar).toBeGreaterThan(plain * 0.7);
    expect(mortar).toBeLessThan(plain * 1.5);
  });

  test.each(ALL)('of %j: every figure is its working', (lines) => {
    for (const { key, term } of work(lines).figures)
      for (const part of allTerms(term as Term))
        expect(agree(part.value, evaluated(part)), `${key}: ${part.label}`).toBe(true);
  });

  test.each(ALL)('of %j: the client is told', (lines) => {
    const says = work(lines).facts.says.join(' ');
    expect(says).toMatch(/Bed a|Turn an? /);
    expect(says).not.toMatch(/undefined|NaN/);
  });
});

describe('in the elevation', () => {
  const shapes = (lines: string) => {
    const found = job(wall(lines));
    return drawingOf(found.works[0]!, found.env)!;
  };
  const styles = (lines: string) => {
    const all: Record<string, number> = {};
    for (const { style } of shapes(lines).shapes) all[style] = (all[style] ?? 0) + 1;
    return all;
  };

  test('every piece is drawn', () => {
    expect(
      styles(
        '    lintel 100 x 65 mm slab\n    bearing 102.5 mm\n    head soldier\n    subsill brick-on-edge\n',
      ),
    ).toEqual({
      lintel: 1,
      soldier: 15,
      'on-edge': 12,
    });
    const arch = styles('    head segmental rise 115 mm rings 2\n');
    expect(arch.voussoir).toBe(
      figure('    head segmental rise 115 mm rings 2\n', 'window.voussoirs'),
    );
    expect(arch).toMatchObject({ mortar: 1, opening: 1 });
  });

  // A joint beside a head is one joint: 10 mm with a bearing that keeps to the bricks, 8 to 13 mm is accepted (library).
  test.each([
    ['on a lintel that keeps to the bricks', '    lintel 100 x 65 mm slab\n    bearing 102.5 mm\n'],
    ['on a lintel that does not', '    lintel 100 x 65 mm slab\n    bearing 100 mm\n'],
    ['on a lintel that cuts them', '    lintel 100 x 65 mm slab\n    bearing 150 mm\n'],
    ['between the reveals', ''],
  ])('soldiers %s have a joint that anyone would accept at either end', (_where, lines) => {
    const { boxes, shapes: drawn } = shapes(`${lines}    head soldier\n`);
    const row = drawn.filter(({ style }) => style === 'soldier');
    const xs = row.flatMap(({ points }) => points.map(({ x }) => x));
    const { y } = row[0]!.points[0]!;
    const beside = boxes.filter((box) => Math.abs(box.y - y) < 1);
    const left = Math.max(...beside.map((b) => b.x + b.width).filter((x) => x < xs[0]! + 1));
    const right = Math.min(...beside.map((b) => b.x).filter((x) => x > Math.max(...xs) - 1));
    for (const joint of [Math.min(...xs) - left, right - Math.max(...xs)]) {
      expect(joint).toBeGreaterThan(8 - 1e-6);
      expect(joint).toBeLessThan(13 + 1e-6);
    }
  });

  test('between the reveals no brick of the courses is cut for soldiers', () => {
    // By hand: 910 mm from 665: each course ends at a reveal, and every other course is cut back to it on half bricks.
    const cut = shapes('    head soldier\n').boxes.filter(({ style }) => style === 'cut');
    expect(cut).toEqual([]);
  });

  test('no brick of the wall stands where the lintel or the soldiers are', () => {
    const { boxes, shapes: drawn } = shapes('    lintel 100 x 65 mm slab\n    head soldier\n');
    for (const { style, points } of drawn) {
      if (style !== 'lintel' && style !== 'soldier') continue;
      const [left, right] = [
        Math.min(...points.map((p) => p.x)),
        Math.max(...points.map((p) => p.x)),
      ];
      const [low, high] = [
        Math.min(...points.map((p) => p.y)),
        Math.max(...points.map((p) => p.y)),
      ];
      const over = boxes.filter(
        (b) =>
          b.style !== 'opening' &&
          b.x < right - 1 &&
          b.x + b.width > left + 1 &&
          b.y < high - 1 &&
          b.y + b.height > low + 1,
      );
      expect(over).toEqual([]);
    }
  });

  test('bricks of an arch are round its centre, and none lies in another', () => {
    const { shapes: drawn } = shapes('    head segmental rise 115 mm\n');
    const radius = (455 ** 2 + 115 ** 2) / 230;
    const centre = { x: 1120, y: 5 * 75 + 115 - radius };
    const middles = drawn
      .filter(({ style }) => style === 'voussoir')
      .map(({ points }) => ({
        x: points.reduce((sum, p) => sum + p.x, 0) / 4 - centre.x,
        y: points.reduce((sum, p) => sum + p.y, 0) / 4 - centre.y,
      }));
    for (const { x, y } of middles) expect(Math.hypot(x, y)).toBeCloseTo(radius + 51.25, 3);
    const sorted = middles.map(({ x }) => x).sort((a, b) => a - b);
    for (const [i, x] of sorted.slice(1).entries()) expect(x - sorted[i]!).toBeGreaterThan(50);
    // The key stands over the middle.
    expect(Math.min(...sorted.map(Math.abs))).toBeLessThan(1e-6);
  });
});

describe('numbers that nobody means', () => {
  test.each([
    '    head segmental rise 0 mm\n',
    '    head segmental rise 1 mm rings 12\n',
    '    head segmental rise 999999999 m\n',
    '    head semicircular rings 999999999\n',
    '    lintel 0 x 0 mm slab\n',
    '    lintel 1 x 999999999 m slab\n',
    '    lintel 100 x 65 x 1 mm slab\n',
    '    lintel 100 x 65 mm slab\n    bearing 999999999 m\n',
    '    lintel angle slab\n    bearing 0 mm\n    head soldier\n',
    '    head segmental rise ? rings 2\n',
    '    lintel ?\n    bearing ?\n',
    '    subsill brick-on-edge\n    head soldier\n    lintel angle slab\n    bearing 660 mm\n',
  ])('%j: are read, and every figure is a number', (lines) => {
    for (const { key, term } of work(lines).figures) expect(term.value.isFinite(), key).toBe(true);
    findingsIn(wall(lines));
  });

  test('a gateway a thousand kilometres wide is worked out at once', () => {
    const far = wall('    lintel 100 x 65 mm slab\n    head soldier\n    subsill brick-on-edge\n')
      .replace('2240 mm', '1002 km')
      .replace('width   910 mm', 'width   1000 km');
    const work = () => {
      const found = job(far);
      drawingOf(found.works[0]!, found.env);
    };
    expect(took(work, 2)).toBeLessThan(3000);
  });
});
