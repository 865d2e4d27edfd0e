/** Plinths and corbels round the corners of their walls: drawn as they are counted. UK bricks, joints of 10 mm. */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { behindOf, quoinsOf } from '../../server/documents/work-meets';
import { wallPlans } from '../../server/engine/drawing';
import { type SettingOut, tally } from '../../server/engine/setting-out';
import { jobOf } from '../engine/world';
import { worstOverlap } from '../setting-out/on-plan';

const wall = (name: string, length: number, ends: string, lines: string) =>
  `wall ${name}\n  bond english\n  thick 1 brick\n  length ${length} mm\n  height 12 courses\n${ends}${lines}`;

const ring = (lines: string, end = '', size = [4490, 3590]) => {
  const [long, short] = size as [number, number];
  const quoins = (left: string, right: string) =>
    `  left quoin ${left}${end}\n  right quoin ${right}${end}\n`;
  const job = jobOf(
    `perpend 1\nuse uk\n${wall('a', long, quoins('d', 'b'), lines)}${wall('b', short, quoins('a', 'c'), lines)}${wall('c', long, quoins('b', 'd'), lines)}${wall('d', short, quoins('c', 'a'), lines)}`,
  );
  const work = (name: string) => job.works.find((w) => w.name === name)!;
  const laid = (name: string): SettingOut => work(name).facts.laid ?? work(name).facts.settingOut!;
  const plans = (name: string, course?: number) => {
    const { plinth, corbel } = work(name).facts;
    const quoins = quoinsOf(work(name), job.works);
    return wallPlans(laid(name), { title: name, course, plinth, corbel, quoins });
  };
  const bricks = (name: string) =>
    drawingOf(work(name), job.env)!.boxes.filter((box) => box.style !== 'projecting');
  const outlines = (name: string) =>
    drawingOf(work(name), job.env)!
      .boxes.filter((box) => box.style === 'projecting')
      .map(({ x, y, width }) => [x, y, x + width]);
  return { job, work, laid, plans, bricks, outlines };
};

const BRICKS = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut'];

/** Boxes of every quoin on plan, course by course. */
const quoinBoxes = (set: ReturnType<ReturnType<typeof ring>['plans']>) =>
  set.groups
    .filter((g) => g.title.startsWith('Quoin'))
    .flatMap((g) => g.drawings)
    .map(({ title, boxes }) => ({
      title,
      boxes: boxes
        .filter((box) => BRICKS.includes(box.style))
        .map(({ x, y, width, height }) => ({ x, y, right: x + width, top: y + height })),
    }));

describe('a plinth round a ring of walls', () => {
  const PLINTH = '  plinth 3 courses project 1/2 brick front\n';

  test('in the elevation goes half a brick past both ends, of whole bricks and the ends of whole bricks', () => {
    const { bricks, outlines } = ring(PLINTH);
    expect(outlines('a')).toEqual([[-112.5, 0, 4602.5]]);
    const low = bricks('a').filter((box) => box.y < 225);
    const styles = new Set(low.map((box) => box.style));
    expect([...styles].sort()).toEqual(['header', 'stretcher']);
    // 4490 + 225 = 4715: 20 stretchers and the end of another in each course; 21 in none of a whole number of halves.
    for (const y of [10, 85, 160]) {
      const course = low.filter((box) => Math.abs(box.y - y) < 0.01);
      expect(Math.min(...course.map((b) => b.x))).toBeCloseTo(-112.5, 6);
      expect(Math.max(...course.map((b) => b.x + b.width))).toBeCloseTo(4602.5, 6);
    }
  });

  // 4490 + 2 x 112.5.
  test('is dimensioned from end to end, under the wall', () => {
    const { job, work } = ring(PLINTH);
    const below = (name: string) =>
      drawingOf(work(name), job.env)!.chains.filter(({ side }) => side === 'below');
    expect(below('a').map(({ stops }) => stops)).toEqual([
      [0, 4490],
      [-112.5, 4602.5],
    ]);
    const without = ring('').job;
    const plain = drawingOf(without.works[0]!, without.env)!.chains;
    expect(plain.filter(({ side }) => side === 'below')).toHaveLength(1);
  });

  test('shows the bricks that it is counted from: what is no end of another wall’s', () => {
    const { bricks, work } = ring(PLINTH);
    const shown = ['a', 'b', 'c', 'd'].flatMap(bricks).filter((b) => b.y < 225);
    const stretchers = shown.filter((b) => b.style === 'stretcher').length;
    const headers = shown.filter((b) => b.style === 'header').length;
    expect(stretchers).toBe(222);
    // One corner of four in every course shows one.
    expect(headers).toBe(4 * 3);
    expect(work('a').facts.plinth!.turned).toHaveLength(1);
  });

  test('in an inner corner stops in it, and nothing of the wall lies under it twice', () => {
    const { bricks, outlines } = ring(PLINTH, ' inside');
    const [[from, , to]] = outlines('a') as [[number, number, number]];
    // 215 + 10 mm from the end to the row of the other wall.
    expect([from, to]).toEqual([225, 4490 - 225]);
    const boxes = bricks('a').map(({ x, y, width, height }) => {
      return { x, y, right: x + width, top: y + height };
    });
    expect(worstOverlap(boxes)).toBeLessThan(1e-6);
  });

  test.each(['', ' inside'])('on plan lies round every quoin%s, nothing over anything', (end) => {
    const set = ring(PLINTH, end).plans('a', 0);
    expect(set.notes.join()).not.toContain('not drawn');
    const quoins = quoinBoxes(set);
    expect(quoins).toHaveLength(4);
    for (const { boxes } of quoins) {
      expect(worstOverlap(boxes)).toBeLessThan(1e-6);
      if (!end) expect(Math.min(...boxes.map((b) => b.y))).toBeCloseTo(-112.5, 6);
    }
    const sides = quoins.flatMap(({ boxes }) => boxes.flatMap((b) => [b.x, b.right]));
    expect(Math.min(...sides)).toBeCloseTo(end ? 0 : -112.5, 6);
    expect(Math.max(...sides)).toBeCloseTo(end ? 4490 : 4602.5, 6);
  });
});

describe('a corbel round a ring of walls', () => {
  const CORBEL = '  corbel 2 courses project 20 mm each\n';

  test('its courses are as long as their corners are far apart', () => {
    const { outlines, bricks } = ring(CORBEL);
    expect(outlines('a')).toEqual([
      [-20, 750, 4510],
      [-40, 825, 4530],
    ]);
    const top = bricks('a').filter((box) => box.y > 825);
    expect(Math.min(...top.map((b) => b.x))).toBeCloseTo(-40, 6);
    expect(Math.max(...top.map((b) => b.x + b.width))).toBeCloseTo(4530, 6);
  });

  test.each([
    ['', [4490, 3590]],
    [' inside', [4490, 3590]],
    ['', [2690, 1790]],
  ])('on plan goes round every quoin%s of %j mm, nothing over anything', (end, size) => {
    const { plans, work } = ring(CORBEL, end, size);
    for (const name of ['a', 'b']) {
      const set = plans(name);
      expect(set.notes.join()).not.toContain('not drawn');
      const quoins = quoinBoxes(set);
      const titles = set.groups.map((g) => g.title).filter((t) => t.endsWith(', corbel'));
      expect(titles).toHaveLength(4);
      for (const { boxes } of quoins) expect(worstOverlap(boxes)).toBeLessThan(1e-6);
      expect(work(name).remarks.map((r) => r.code)).not.toContain('corbel-corner');
    }
  });

  test.each([
    ['', 1],
    [' inside', -1],
  ])('is counted%s: the ring is wider by 20 and 40 mm on every side', (end, way) => {
    const gross = (lines: string) => {
      const { laid } = ring(lines, end);
      return ['a', 'b', 'c', 'd'].reduce((sum, n) => sum + tally(laid(n)).grossVolume, 0);
    };
    // Each of four walls 40 mm longer in one course and 80 in the other.
    const more = 4 * (40 + 80) * 215 * 75;
    expect(gross(CORBEL) - gross('')).toBeCloseTo(way * more, 0);
  });
});

describe('a skin of blocks at a quoin', () => {
  test('is drawn in two courses of blocks, and of bricks too: three courses apart', () => {
    const cavity = (name: string, ends: string) =>
      `wall ${name}\n  stands held\n  length 4490 mm\n  height 18 courses\n  backing block-100 cavity 75 mm\n${ends}`;
    const job = jobOf(
      `perpend 1\nuse uk\n${cavity('a', '  right quoin b\n')}${cavity('b', '  left quoin a\n')}`,
    );
    const [work] = job.works;
    const out = work!.facts.laid ?? work!.facts.settingOut!;
    const set = wallPlans(out, {
      title: 'a',
      behind: behindOf(work!, out),
      quoins: quoinsOf(work!, job.works),
    });
    const drawings = set.groups
      .filter((g) => g.title.startsWith('Quoin'))
      .flatMap((g) => g.drawings);
    expect(drawings.map((d) => d.title)).toEqual(['Course 1', 'Course 4']);
    const edges = drawings.map(({ boxes }) => {
      const blocks = boxes.filter((b) => b.style === 'block' || b.style === 'cut');
      return JSON.stringify(blocks.map((b) => [Math.round(b.x), Math.round(b.y)]).sort());
    });
    expect(edges[0]).not.toEqual(edges[1]);
    const [end] = set.groups.filter((g) => g.title === 'Left end');
    expect(end!.drawings.map((d) => d.title)).toEqual(['Course 4', 'Course 1']);
  });
});
