/** Every drawing of a piece of work, from the text of a job. */
import { describe, expect, test } from 'vitest';
import { sheetsToSvg } from '../../server/documents/svg';
import { canDraw, sheetsOf, VIEWS, type View } from '../../server/documents/work-sheets';
import { A4_LANDSCAPE, LETTER_LANDSCAPE, type Sheet } from '../../server/engine/drawing';
import { cornersOf } from '../drawing/marks';
import { exampleJob, JOBS } from '../engine/examples';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import { readXml } from './xml';

const wallOf = (lines: readonly string[], name = 'yard', title = 'Yard wall') =>
  [`wall ${name} "${title}"`, 'brick red', ...lines].join('\n  ');

function sheets(lines: readonly string[], view: View, more = ''): Sheet[] {
  const text = `perpend 1\n\nuse "firm.perp"\n\n${wallOf(lines)}\n\n${more}\n`;
  const job = jobOf(text, { 'firm.perp': FIRM });
  const { works, env } = job;
  return sheetsOf(works[0]!, env, view, { paper: A4_LANDSCAPE, works });
}

const textsOf = (all: readonly Sheet[]) =>
  all.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? mark.text : [])));

/** Boxes of bricks on a sheet that lie on one another, mm on paper. */
function overlapping({ marks }: Sheet): number {
  const inks = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut', 'core'];
  const boxes = marks.flatMap((m) =>
    m.kind === 'box' && inks.includes(m.ink) && !m.key ? [cornersOf(m)] : [],
  );
  let count = 0;
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1)) {
      const wide = Math.min(a.xs[1]!, b.xs[1]!) - Math.max(a.xs[0]!, b.xs[0]!);
      const high = Math.min(a.ys[1]!, b.ys[1]!) - Math.max(a.ys[0]!, b.ys[0]!);
      if (wide > 0.01 && high > 0.01) count++;
    }
  return count;
}

const PLAIN = ['length 4490 mm', 'height 16 courses', 'bond english', 'thick 1 brick'];

describe('plans of a wall', () => {
  test.each([
    ['half a brick', ['length 4490 mm', 'height 16 courses']],
    ['one brick', PLAIN],
    ['one and a half', [...PLAIN.slice(0, 3), 'thick 1.5 bricks']],
    ['two, in Flemish bond', [...PLAIN.slice(0, 2), 'bond flemish', 'thick 2 bricks']],
    ['with a pier in it', [...PLAIN, 'pier a', '  at left 1350 mm', '  size 1.5 x 1.5 bricks']],
    [
      'with an attached pier',
      [...PLAIN, 'pier a', '  at left 1350 mm', '  size 1.5 x 1.5 bricks', '  projects front'],
    ],
    ['with a backing', ['length 4490 mm', 'height 16 courses', 'backing block-100 cavity 75 mm']],
  ])('%s: no brick lies on another', (_, lines) => {
    const pages = sheets(lines, 'plan');
    expect(pages.length).toBeGreaterThan(0);
    expect(pages.map(overlapping)).toEqual(pages.map(() => 0));
  });

  test('a quoin shows both walls, one course over the other, and not the end', () => {
    const corner = [...PLAIN, 'right quoin side'];
    const side = wallOf(
      ['length 3365 mm', 'height 16 courses', 'bond english', 'thick 1 brick', 'left quoin yard'],
      'side',
      'Side wall',
    );
    const pages = sheets(corner, 'plan', side);
    const texts = textsOf(pages);
    expect(texts.filter((text) => text === 'Quoin with Side wall')).toHaveLength(2);
    expect(texts).toContain('Left end');
    expect(texts).not.toContain('Right end');
    expect(pages.map(overlapping)).toEqual(pages.map(() => 0));
  });

  test('a backing stands behind its cavity', () => {
    const cavity = ['length 4490 mm', 'height 16 courses', 'backing block-100 cavity 75 mm'];
    // 102.5 mm of brick, 75 mm of cavity, 100 mm of block, each a dimension of its own.
    const texts = textsOf(sheets(cavity, 'plan'));
    for (const size of ['102.5', '75', '100']) expect(texts).toContain(size);
    expect(texts).toContain('block');
  });

  test('a course of blocks goes behind three of bricks, and then the next', () => {
    const cavity = ['length 4490 mm', 'height 16 courses', 'backing block-100 cavity 75 mm'];
    const job = jobOf(`perpend 1\n\nuse "firm.perp"\n\n${wallOf(cavity)}\n`, {
      'firm.perp': FIRM,
    });
    const { works, env } = job;
    const blocks = (course: number) => {
      const wishes = { paper: A4_LANDSCAPE, works, course };
      const pages = sheetsOf(works[0]!, env, 'plan', wishes);
      // Whole or cut: the face is in whole bricks and halves. Those of the course asked for, which is the lower.
      const drawn = pages[0]!.marks.filter((m) => m.kind === 'box' && !m.key);
      const found = drawn.flatMap((m) =>
        m.kind === 'box' && (m.ink === 'block' || m.ink === 'cut') ? [m] : [],
      );
      const lowest = Math.max(...found.map(({ y }) => y));
      return found.filter(({ y }) => y > lowest - 20).map(({ x }) => Math.round(x));
    };
    // Courses 1 to 3 lie before the first of blocks, 4 to 6 before the second.
    expect(blocks(3)).toEqual(blocks(1));
    expect(blocks(4)).not.toEqual(blocks(3));
    expect(blocks(5)).toEqual(blocks(4));
    expect(blocks(6)).toEqual(blocks(4));
  });

  test('the back of a wall with a backing is the backing: in blocks, higher than bricks', () => {
    const cavity = ['length 4490 mm', 'height 18 courses', 'backing block-100 cavity 75 mm'];
    const [page] = sheets(cavity, 'back');
    const boxes = page!.marks.flatMap((m) => (m.kind === 'box' && !m.key ? [m] : []));
    // 440 by 215 mm at the scale of the sheet.
    const whole = boxes.filter(({ ink }) => ink === 'block');
    expect(Math.max(...whole.map(({ width }) => width * page!.scale))).toBeCloseTo(440, 6);
    expect(new Set(whole.map(({ height }) => Math.round(height * page!.scale)))).toEqual(
      new Set([215]),
    );
    expect(boxes.filter(({ ink }) => ink === 'stretcher')).toEqual([]);
  });
});

describe('the gauge rod', () => {
  test('names sills, heads, springings, the damp course, bands, piers and tops', () => {
    const lines = [
      ...PLAIN,
      'dpc red 2 courses',
      'coping brick-on-edge',
      'band red courses 12 to 13',
      'opening win "Window"',
      '  from left 1125 mm',
      '  width 910 mm',
      '  sill 4 courses',
      '  height 5 courses',
      '  lintel 100 x 65 mm',
      'opening door "Door"',
      '  from left 2700 mm',
      '  width 910 mm',
      '  height 7 courses',
      '  head segmental rise 130 mm rings 1',
    ];
    const texts = textsOf(sheets(lines, 'rod'));
    for (const name of [
      'damp-proof course',
      'Window sill',
      'Window head',
      'Door springing',
      'band of red begins',
      'band of red ends',
      'wall top',
      // 16 courses of 75 mm, a bed of 10 mm and a brick on edge.
      'coping top 1312.5',
    ])
      expect(texts).toContain(name);
  });

  test('a band of absurd courses leaves it as it is', () => {
    const lines = [...PLAIN, 'band red courses 900000000 to 999999999'];
    const pages = sheets(lines, 'rod');
    expect(pages).toHaveLength(1);
    expect(textsOf(pages).join()).not.toContain('band');
  });
});

describe('the coping from above', () => {
  test.each([
    ['coping brick-on-edge', 'Brick on edge, 0 mm to 4490 mm', '215'],
    ['coping precast 600 x 275 x 75 mm', 'Precast coping, 0 mm to 4490 mm', '30'],
  ])('%s', (line, title, overhang) => {
    const texts = textsOf(sheets([...PLAIN, line], 'top'));
    expect(texts).toContain(title);
    expect(texts).toContain(overhang);
  });

  test('is none where there is none', () => {
    expect(sheets([...PLAIN, 'coping none'], 'top')).toEqual([]);
  });
});

describe.each(JOBS)('of %s', (name) => {
  test('everything is drawn, well-formed and on the paper', () => {
    const { works, env } = exampleJob(name);
    const paper = env.imperial ? LETTER_LANDSCAPE : A4_LANDSCAPE;
    for (const work of works.filter(canDraw)) {
      const all = VIEWS.flatMap((view) => sheetsOf(work, env, view, { paper, works }));
      expect(all.length).toBeGreaterThan(0);
      const root = readXml(sheetsToSvg(all));
      expect(root.attributes.width).toBe(`${paper.width}mm`);
      for (const { marks, width, height } of all)
        for (const { xs, ys } of marks.map(cornersOf)) {
          expect(Math.min(...xs)).toBeGreaterThan(0);
          expect(Math.max(...xs)).toBeLessThan(width);
          expect(Math.min(...ys)).toBeGreaterThan(0);
          expect(Math.max(...ys)).toBeLessThan(height);
        }
    }
  });
});
