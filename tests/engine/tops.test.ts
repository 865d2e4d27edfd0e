/** Copings, bands, steps and plinths of a wall, counted by hand: UK bricks, joints of 10 mm. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wallAlone } from '../../server/engine/brickwork/wall/meet/alone';
import { tallyPiers, tallyZones, zonesOf } from '../../server/engine/brickwork/wall/zones';
import { sumTallies, tally, tallyPier } from '../../server/engine/setting-out';
import { FIRM } from '../findings/tells';
import { jobOfWall } from '../harness/walls';
import { jobOf } from './world';

const MORE = `material creasing-tile
  price £0.60 each
`;

const wall = (lines: string, height = '8 courses', thick = '1/2 brick') => {
  const bond = thick === '1/2 brick' ? '' : '  bond english\n';
  const text = jobOfWall({ name: 'w', height, facts: `  thick ${thick}\n${bond}` }, lines);
  return jobOf(text, { 'firm.perp': FIRM + MORE });
};

const work = (...of: Parameters<typeof wall>) => wall(...of).works[0]!;
const brickOf = (name: string, ...of: Parameters<typeof wall>) =>
  work(...of)
    .needs.bricks.filter((b) => b.brick === name)
    .reduce((sum, b) => sum + b.bricks.value.toNumber(), 0);
const pieces = (...of: Parameters<typeof wall>) =>
  work(...of).needs.pieces.map((p) => [p.material, p.count.value.toNumber()]);
const figure = (key: string, ...of: Parameters<typeof wall>) =>
  work(...of)
    .figures.find((f) => f.key === key)!
    .term.value.toNumber();

// 4490 mm are 20 bricks of 225 mm less a joint: 20 a course in stretcher bond, half brick thick.
const PLAIN = 8 * 20;

describe('bricks on end and on edge', () => {
  // 4490 = 60 x 65 + 59 x 10.
  test('60 over 4490 mm, one through half a brick on end, two through one brick', () => {
    expect(brickOf('red', '  coping brick-on-end\n')).toBe(PLAIN + 60);
    const one = brickOf('red', '', '8 courses', '1 brick');
    expect(brickOf('red', '  coping brick-on-end\n', '8 courses', '1 brick')).toBe(one + 120);
    expect(brickOf('red', '  coping brick-on-edge\n', '8 courses', '1 brick')).toBe(one + 60);
  });

  test('in another brick they are bought apart, and all kinds together are the bricks of the wall', () => {
    for (const kind of ['brick-on-end', 'brick-on-edge']) {
      expect(brickOf('engineering', `  coping ${kind} engineering\n`)).toBe(60);
      expect(brickOf('red', `  coping ${kind} engineering\n`)).toBe(PLAIN);
      expect(figure('bricks', `  coping ${kind} engineering\n`)).toBe(PLAIN + 60);
    }
  });

  test('stand 215 mm and 102.5 mm high on a bed', () => {
    expect(work('  coping brick-on-end\n').facts.height).toBe(8 * 75 + 10 + 215);
    expect(work('  coping brick-on-edge\n').facts.height).toBe(8 * 75 + 10 + 102.5);
  });

  test('take mortar for their beds and joints', () => {
    const plain = figure('mortar', '');
    // On end, half a brick thick: a bed of 4490 x 102.5 x 10 and 59 joints of 10 x 102.5 x 215.
    const onEnd = (4490 * 102.5 * 10 + 59 * 10 * 102.5 * 215) / 1e6;
    expect(figure('mortar', '  coping brick-on-end\n') - plain).toBeCloseTo(onEnd, 6);
    // On edge a brick reaches 215 mm through: 4490 x 215 x 10 and 59 of 10 x 215 x 102.5.
    const onEdge = (4490 * 215 * 10 + 59 * 10 * 215 * 102.5) / 1e6;
    expect(figure('mortar', '  coping brick-on-edge\n') - plain).toBeCloseTo(onEdge, 6);
  });

  test('on piers too, in their own brick', () => {
    const pier = (coping: string) =>
      jobOf(
        `perpend 1\nuse "firm.perp"\npier p\n  brick red\n  number 2\n  size 2 x 2 bricks\n  height 10 courses\n  coping ${coping}\n`,
        { 'firm.perp': FIRM },
      ).works[0]!;
    const count = (coping: string) =>
      pier(coping).needs.bricks.map((b) => [b.brick, b.bricks.value.toNumber()]);
    const [[, none]] = count('none') as [[string, number]];
    // 440 = 6 x 65 + 5 x 10; two through on edge (440), four on end (4 x 102.5 + 3 x 10), two piers.
    expect(count('brick-on-edge')).toEqual([['red', none + 2 * 12]]);
    expect(count('brick-on-end engineering')).toEqual([
      ['red', none],
      ['engineering', 2 * 24],
    ]);
    expect(pier('brick-on-end').facts.height).toBe(10 * 75 + 10 + 215);
  });
});

describe('a precast coping', () => {
  test('whole lengths and one cut, each bought', () => {
    // 7 x 610 = 4270, and 220 left.
    expect(pieces('  coping precast 600 x 200 mm slab\n')).toEqual([['slab', 8]]);
    // 4490 = 9 x 490 + 8 x 10.
    expect(pieces('  coping precast 490 x 200 mm\n')).toEqual([['coping', 9]]);
  });

  test('two cuts from one length where the saw leaves room', () => {
    const gate = (length: string) =>
      pieces(
        `  coping precast ${length} x 200 mm slab\n  opening gate\n    from left 1790 mm\n    width 910 mm\n`,
      );
    // Two stretches of 1790: two of 610 leave 570 each, which do not go into one length of 600.
    expect(gate('600')).toEqual([['slab', 6]]);
    // Two of 760 leave 270 each: 270 + 3 + 270 go into one of 750.
    expect(gate('750')).toEqual([['slab', 5]]);
  });

  test('its height counts where it is said, its bed and joints are mortar', () => {
    expect(work('  coping precast 490 x 200 mm\n').facts.height).toBe(600);
    expect(work('  coping precast 490 x 200 x 60 mm\n').facts.height).toBe(670);
    const mortar = figure('mortar', '  coping precast 490 x 200 x 60 mm\n') - figure('mortar', '');
    expect(mortar).toBeCloseTo((4490 * 200 * 10 + 8 * 10 * 200 * 60) / 1e6, 6);
  });

  test('takes hours by the piece', () => {
    const tasks = work('  coping precast 490 x 200 mm\n').needs.tasks;
    expect(tasks.find((t) => t.task === 'precast')!.hours.value.toNumber()).toBeCloseTo(9 / 5, 9);
  });
});

describe('tile creasing', () => {
  // Over one brick each tile is 165 mm along: 25 whole and a half fill 4490 with 25 joints of 11.5 mm.
  const lines = '  coping tiles\n';
  test('two courses of 25 and a half, and the bricks on edge over them', () => {
    expect((4490 - 25 * 165 - 77.5) / 25).toBe(11.5);
    expect(pieces(lines, '8 courses', '1 brick')).toEqual([['creasing-tile', 51]]);
    const plain = brickOf('red', '', '8 courses', '1 brick');
    expect(brickOf('red', lines, '8 courses', '1 brick')).toBe(plain + 60);
    const under = '  coping tiles 3 courses creasing-tile under engineering\n';
    expect(brickOf('engineering', under, '8 courses', '1 brick')).toBe(60);
    // 78 whole and three halves: two from one tile.
    expect(pieces(under, '8 courses', '1 brick')).toEqual([['creasing-tile', 75 + 2]]);
  });

  test('adds two tiles of 11 mm on beds of 10 to the height', () => {
    expect(work(lines).facts.height).toBe(600 + 2 * 21 + 112.5);
  });

  test('its mortar is the joints and beds of its tiles, 265 mm wide', () => {
    const edge = figure('mortar', '  coping brick-on-edge\n', '8 courses', '1 brick');
    const byHand = (2 * 4490 * 265 * 21 - 2 * (25 * 165 + 77.5) * 265 * 11) / 1e6;
    const mortar = figure('mortar', lines, '8 courses', '1 brick') - edge;
    expect(mortar).toBeCloseTo(byHand, 6);
  });

  test('a tile without a size is a gap in the total', () => {
    const job = wall('  coping tiles 2 courses slab\n');
    expect(job.findings.map((f) => f.message).join()).toContain(
      'the size of the tile slab is not known',
    );
  });
});

describe('bands and the damp course', () => {
  test('each course in its brick: by hand', () => {
    const lines = '  dpc engineering 2 courses\n  band engineering courses 5 to 6\n';
    expect(brickOf('engineering', lines)).toBe(4 * 20);
    expect(brickOf('red', lines)).toBe(4 * 20);
    expect(figure('bricks', lines)).toBe(PLAIN);
  });

  test('whatever the bands, every piece of the wall and its piers is in one brick', () => {
    const band = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }));
    const shape = fc.constantFrom(
      '',
      '  ground steps at 2240 mm down 3 courses\n',
      '  top steps at 2240 mm down 3 courses\n  ground steps at 1 m up 2 courses\n',
    );
    const parts =
      '  opening gate\n    from left 2 m\n    width 910 mm\n  pier p\n    at gate left\n    size 1.5 x 1.5 bricks\n    height 11 courses\n';
    fc.assert(
      fc.property(
        fc.array(band, { maxLength: 4 }),
        fc.integer({ min: 0, max: 4 }),
        shape,
        (bands, damp, steps) => {
          const lines = bands.map(([a, b]) => `  band engineering courses ${a} to ${b}\n`).join('');
          const dpc = damp ? `  dpc engineering ${damp} courses\n` : '';
          const job = wall(`${dpc}${lines}${steps}${parts}`, '10 courses');
          const { masonry, laid } = wallAlone(job.works[0]!.block, job.env);
          const { plan, out } = laid!;
          const zones = zonesOf(masonry, plan);
          const all = [...zones.own, ...zones.damp, ...zones.bands.flatMap((b) => b.zones)];
          const sum = sumTallies([...tallyZones(out, all, plan), ...tallyPiers(all, plan)]);
          const { unit, joints, piers } = plan.spec;
          const whole = sumTallies([tally(out), ...piers.map((p) => tallyPier(p, unit, joints))]);
          const { brickVolume, grossVolume, ...counts } = sum;
          expect(counts).toEqual({ ...counts, ...plainly(whole) });
          expect(brickVolume).toBeCloseTo(whole.brickVolume, 0);
          expect(grossVolume).toBeCloseTo(whole.grossVolume, 0);
        },
      ),
      { numRuns: 40 },
    );
  });
});

function plainly({ wholes, halves, threeQuarters, closers }: ReturnType<typeof tally>) {
  return { wholes, halves, threeQuarters, closers };
}

describe('steps', () => {
  test('the damp course follows the ground: two courses of every stretch', () => {
    const ground = '  ground steps at 2250 mm down 2 courses\n  dpc engineering 2 courses\n';
    // Right of the step 2240 mm: 10 stretchers, and 9 between two half bats. Left of it, where a piece belongs if its
    // middle does: 10 stretchers, and 10 after a half bat. 39 whole, and three half bats from two bricks.
    expect(brickOf('engineering', ground)).toBe(10 + 9 + 10 + 10 + 2);
    // 20 bricks in 8 courses and 10 in two, ten of them cut for half bats: three from two, seven from four.
    expect(figure('bricks', ground)).toBe(8 * 20 + 2 * 10 - 5 + 2 + 4);
    expect(figure('height', ground)).toBeCloseTo(0.75, 9);
    expect(figure('area', ground)).toBeCloseTo(4.49 * 0.6 + 2.24 * 0.15, 9);
  });

  test('a coping runs along each level, and butts against the higher part', () => {
    const { tops } = work('  top steps at 2240 mm down 2 courses\n  coping brick-on-edge\n').facts;
    // 2240 = 30 x 65 + 29 x 10; below it 2250 = 30 x 65 + 30 x 10, a joint at the upper wall.
    expect(tops!.map((t) => [t.from, t.to, t.on, t.pieces.length, t.joint])).toEqual([
      [0, 2240, 8, 30, 10],
      [2240, 4490, 6, 30, 10],
    ]);
  });

  test('the footing goes on under its upper part by the lap (NHBC Standards 4.3.8)', () => {
    const level = figure('concrete', '  footing 450 x 225 mm\n');
    const lines = '  footing 450 x 225 mm\n  ground steps at 2250 mm down 3 courses\n';
    // S = 225, T = 225: a lap of 450 mm, 225 high.
    expect(figure('concrete', lines) - level).toBeCloseTo((450 * 450 * 225) / 1e6, 6);
  });

  test('a gate and a pier stand on the ground where they are', () => {
    const lines =
      '  ground steps at 1350 mm down 2 courses\n  opening gate\n    from left 2.24 m\n    width 910 mm\n  opening window\n    from left 440 mm\n    width 460 mm\n    sill 2 courses\n    height 3 courses\n  pier p\n    at gate left\n    size 1 x 1 bricks\n  pier q\n    at left\n    size 1 x 1 bricks\n';
    const { spec } = work(lines).facts.settingOut!;
    expect(spec.openings.map((o) => [o.name, o.sill, o.top])).toEqual([
      ['gate', 0, null],
      ['window', 4, 7],
    ]);
    // Eight courses from the left end’s ground up; two more where the ground is lower.
    expect(spec.piers.map((p) => [p.name, p.base ?? 0, p.courses])).toEqual([
      ['p', 0, 10],
      ['q', 2, 8],
    ]);
  });

  test('is told in the client’s words', () => {
    const { says } = work(
      '  top steps at 2240 mm down 2 courses\n  band engineering courses 4\n',
    ).facts;
    expect(says).toContain('Step its top in whole courses, 2240 mm from its left end.');
    expect(says).toContain('Lay course 4 in Class B engineering brick.');
  });
});

describe('a plinth', () => {
  test.each([
    ['1/2 brick', 60],
    ['1/4 brick both', 60],
    ['56 mm both', 60],
    ['1 brick front', 120],
  ])('three courses that stand out %s: %d bricks more', (out, more) => {
    expect(brickOf('red', `  plinth 3 courses project ${out}\n`)).toBe(PLAIN + more);
    expect(brickOf('engineering', `  plinth 3 courses project ${out} in engineering\n`)).toBe(more);
  });

  test('its mortar is that of a wall half a brick thick', () => {
    const more = figure('mortar', '  plinth 4 courses project 1/2 brick\n') - figure('mortar', '');
    // Half of the eight courses of the wall.
    expect(more).toBeCloseTo(figure('mortar', '', '4 courses'), 6);
  });
});

test('a corbel is the wall’s own bricks', () => {
  expect(brickOf('red', '  corbel 2 courses project 20 mm each\n')).toBe(PLAIN);
});

test('in a corbel there is no bed under what stands out', () => {
  // Two beds of 10 mm, 20 mm less across, over 4490 mm.
  const less = figure('mortar', '') - figure('mortar', '  corbel 2 courses project 20 mm each\n');
  expect(less).toBeCloseTo((2 * 4490 * 20 * 10) / 1e6, 9);
});

describe('copings where two walls meet in a corner', () => {
  const corner = (north: string, east: string) => {
    const of = (name: string, length: number, more: string) =>
      `wall ${name}\n  brick red\n  stands held\n  thick 1 brick\n  bond english\n  length ${length} mm\n${more}`;
    const text = `perpend 1\nuse "firm.perp"\n${of('north', 2240, `  right quoin east\n${north}`)}${of('east', 1790, `  left quoin north\n${east}`)}`;
    const { works } = jobOf(text, { 'firm.perp': FIRM });
    return works.map((w) => w.facts.tops!.map((t) => [t.from, t.to, t.pieces.length, t.joint]));
  };
  const high = (courses: number) => `  height ${courses} courses\n  coping brick-on-edge\n`;

  test('the longer runs through, the other butts against its side: 2240 and 1790 - 215 mm', () => {
    // 2240 = 30 x 65 + 29 x 10; 1575 = 21 x 75.
    expect(corner(high(8), high(8))).toEqual([[[0, 2240, 30, 10]], [[215, 1790, 21, 10]]]);
  });

  test('the lower butts against the face of the higher', () => {
    // 2025 = 27 x 75; 1790 = 24 x 65 + 23 x 10.
    expect(corner(high(8), high(10))).toEqual([[[0, 2025, 27, 10]], [[0, 1790, 24, 10]]]);
  });
});

test('what is still to be measured is a gap, and the rest stands', () => {
  const told = (line: string) =>
    wall(`  ${line}\n`)
      .findings.filter((f) => f.code === 'incomplete')
      .map((f) => f.message)
      .join();
  expect(told('ground steps at ? down 2 courses')).toContain('a step of the ground of w');
  expect(told('top steps at 2 m down ?')).toContain('a step of the top of w');
  expect(told('band engineering courses ?')).toContain('a band of w');
  expect(told('plinth ? project 1/2 brick')).toContain('the plinth of w');
  expect(told('coping precast ? slab')).toContain('the coping of w');
  expect(brickOf('red', '  ground steps at ? down 2 courses\n')).toBe(PLAIN);
});

test('a skin behind a stepped face steps with it', () => {
  const skin = (lines: string) =>
    brickOf('engineering', `  backing engineering cavity 50 mm\n${lines}`);
  expect(skin('') - skin('  top steps at 2240 mm down 2 courses\n')).toBe(2 * 10);
  expect(skin('  ground steps at 2250 mm down 2 courses\n') - skin('')).toBe(2 * 10);
});
