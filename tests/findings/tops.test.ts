/** Copings, bands, steps, plinths and corbels that are not what their lines say. */
import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { afterWay, findingsIn, silent, tells } from './tells';

const wall = (more: string, height = '8 courses') => jobOfWall({ height }, more);

describe('fit-coping of precast lengths', () => {
  test('is information, with the cut that is reckoned with', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          coping  precast 600 x 200 mm slab
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ fit-coping: Lengths of coping do not fill 4490 mm: each takes 610 mm with its joint; 7 lengths of coping leave a gap of 220 mm
      `,
      {
        ways: [
          '7 whole lengths of coping and one cut of 220 mm at the middle, joints of 10 mm',
          '7 lengths of coping with joints of 48.3 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    expect(found!.severity).toBe('information');
    // By hand: 7 x 610 = 4270, 220 left for the cut; 7 x 600 = 4200 leave 290 for six joints.
    expect(4490 - 7 * 610).toBe(220);
    expect((4490 - 4200) / 6).toBeCloseTo(48.3, 1);
  });

  test('is not told of lengths that fill it', () => {
    // 4490 = 9 x 490 + 8 x 10.
    silent(wall('  coping precast 490 x 200 mm slab\n'), 'fit-coping');
  });
});

describe('coping-overhang', () => {
  test('is told of a precast coping that does not throw water clear, and proposes one that does', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          coping  precast 490 x 150 x 60 mm slab
                          ^^^^^^^^^^^^^^^^^ coping-overhang: reaches 23.8 mm over each face of a wall 102.5 mm thick; 45 mm with a drip keeps water off it (BRE
      `,
      // 102.5 + 2 x 45 = 192.5, to the next 5 mm.
      { ways: ['Lengths of 490 x 195 x 60 mm instead of slab'] },
    );
  });

  test('names what the files sell that is wide enough', () => {
    const sold = (name: string, size: string) =>
      `material ${name}\n  size ${size}\n  price £30 each\n`;
    const goods = sold('once-weathered', '600 x 200 x 60 mm') + sold('sill', '900 x 140 mm');
    const [found] = findingsIn(
      wall('  coping precast 490 x 150 x 60 mm slab\n').replace('wall ', `${goods}wall `),
    ).filter((f) => f.code === 'coping-overhang');
    expect(found!.ways.map((w) => w.title)).toEqual([
      'Lengths of 600 x 200 x 60 mm once-weathered',
      'Lengths of 490 x 195 x 60 mm instead of slab',
    ]);
  });

  test('says when it does not cover the wall; is silent where it reaches far enough', () => {
    const [found] = findingsIn(wall('  coping precast 490 x 100 mm slab\n')).filter(
      (f) => f.code === 'coping-overhang',
    );
    expect(found!.message).toContain('does not cover a wall 102.5 mm thick');
    silent(wall('  coping precast 490 x 195 mm slab\n'), 'coping-overhang');
    silent(wall('  coping brick-on-edge\n'), 'coping-overhang');
  });
});

describe('coping-overhang over all of a wall', () => {
  const about = (more: string, height = '12 courses') =>
    findingsIn(wall(more, height)).filter((f) => f.code === 'coping-overhang');

  test('over a skin behind the face: 102.5 + 75 + 100 = 277.5 mm', () => {
    const two = '  backing block-100 cavity 75 mm\n';
    const [found] = about(`${two}  coping precast 490 x 150 mm slab\n`);
    expect(found!.message).toContain('does not cover a wall 277.5 mm thick over all');
    expect(found!.severity).toBe('warning');
    // 277.5 + 2 x 45 = 367.5, to the next 5 mm.
    expect(found!.ways.map((w) => w.title)).toEqual(['Lengths of 490 x 370 mm instead of slab']);
    const text = wall(`${two}  coping precast 490 x 150 mm slab\n`, '12 courses');
    silent(afterWay(text, found!.ways[0]!.edits), 'coping-overhang');
    expect(about(`${two}  coping precast 490 x 365 mm slab\n`)).toHaveLength(1);
  });

  test('a brick on edge does not cover two skins, nor one on end; tiles are laid over both', () => {
    const two = '  backing block-100 cavity 75 mm\n';
    const [edge] = about(`${two}  coping brick-on-edge\n`);
    expect(edge!.message).toContain('215 mm through it, does not cover a wall 277.5 mm thick');
    expect(about(`${two}  coping brick-on-end\n`)).toHaveLength(1);
    expect(about(`${two}  coping tiles 2 courses\n`)).toEqual([]);
    for (const kind of ['edge', 'end'])
      for (const thick of ['1/2', '1', '1 1/2', '2'])
        expect(about(`  thick ${thick} brick\n  coping brick-on-${kind}\n`)).toEqual([]);
  });

  test('over courses laid out at the top: 215 + 2 x 30 = 275 mm', () => {
    const out = '  thick 1 brick\n  bond english\n  corbel 2 courses project 30 mm each\n';
    const [found] = about(`${out}  coping precast 490 x 305 mm slab\n`);
    expect(found!.message).toContain(
      'reaches 15 mm over each face of a wall 275 mm thick over all',
    );
    // 275 + 90 = 365.
    expect(found!.ways.map((w) => w.title)).toEqual(['Lengths of 490 x 365 mm instead of slab']);
    expect(about(`${out}  coping precast 490 x 365 mm slab\n`)).toEqual([]);
  });
});

describe('band-off', () => {
  test('is told of courses above the wall, of the damp course, and of another band', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  4490 mm
        height  8 courses
        dpc     engineering 2 courses
        band    engineering courses 2 to 3
                                    ^ band-off: 1 course of this band is of the damp course or of a band before it already
        band    engineering courses 3 to 4
                                    ^ band-off: 1 course of this band
        band    engineering courses 8 to 9
                                         ^ band-off: reaches above the 8 courses of the wall
    `);
  });

  test('is told of a brick of another size', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick wide
        size   240 x 115 x 113 mm
        joint  10 mm
        price  £1 each
      wall north
        brick   red
        stands  held
        length  4490 mm
        height  8 courses
        band    wide courses 4
                ^^^^ band-off: of another size
    `);
  });

  test('is not told of bands clear of one another', () => {
    silent(
      wall(
        '  dpc engineering 2 courses\n  band engineering courses 3 to 4\n  band engineering courses 8\n',
      ),
      'band-off',
    );
  });

  test('twenty bands are enough', () => {
    const many = (n: number) =>
      findingsIn(wall('  band engineering courses 3\n'.repeat(n))).some(
        (f) => f.code === 'too-many',
      );
    expect([many(20), many(21)]).toEqual([false, true]);
  });
});

describe('steps', () => {
  test('step-outside is told of a step that is not within the wall', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  4490 mm
        height  8 courses
        ground  steps at 4.49 m down 1 course
                         ^^^^^^ step-outside: not within the wall, which is 4490 mm long
        top     steps at 5 m up 1 course
                         ^^^ step-outside: nothing steps here
    `);
  });

  test('step-all is told where nothing of the wall is left', () => {
    const found = findingsIn(wall('  top steps at 2240 mm down 8 courses\n'));
    const [all] = found.filter((f) => f.code === 'step-all');
    expect(all!.severity).toBe('error');
    expect(all!.message).toContain('from 2240 mm to 4490 mm');
    expect(all!.place.line).toBe(7);
    silent(wall('  top steps at 2240 mm down 7 courses\n'), 'step-all');
    silent(wall('  ground steps at 2240 mm up 7 courses\n'), 'step-outside');
  });

  test('more than forty steps are a slope', () => {
    const steps = (n: number) =>
      Array.from({ length: n }, (_, i) => `  ground steps at ${i * 10 + 10} mm down 1 course\n`);
    silent(wall(steps(40).join('')), 'too-many');
    expect(findingsIn(wall(steps(41).join(''))).map((f) => f.code)).toContain('too-many');
  });

  test('a run that does not work for a step is mended by moving the step', () => {
    const text = wall('  top steps at 2.3 m down 3 courses\n');
    const found = findingsIn(text).find((f) => f.code === 'fit-run' || f.code === 'bond-broken')!;
    const way = found.ways.find((w) => w.title.startsWith('Move the step to 2240 mm'))!;
    expect(afterWay(text, way.edits)).toContain('top steps at 2240 mm down 3 courses');
    silent(afterWay(text, way.edits), found.code);
  });
});

describe('falls', () => {
  test('is told of ground that falls, with steps to lay it in; no step is higher than the footing is thick', () => {
    const told = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick    red
          stands   held
          length   4490 mm
          height   8 courses
          footing  450 x 150 mm
          ground   falls 300 mm to right
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ falls: The ground falls 300 mm, the nearest to 4 courses. Brickwork falls in steps of whole courses: 2 steps of 2 courses are reckoned with
      `,
      { ways: ['2 steps of 2 courses', '4 steps of 1 course'] },
    );
    expect(told[0]!.severity).toBe('information');
  });

  test('what is reckoned with is what its first way out writes', () => {
    for (const line of [
      'ground falls 300 mm to right',
      'ground falls 225 mm to left',
      'top falls 300 mm to right',
      'top falls 150 mm to left',
    ]) {
      const text = wall(`  footing 450 x 225 mm\n  ${line}\n`, '12 courses');
      const [found] = findingsIn(text).filter((f) => f.code === 'falls');
      const after = afterWay(text, found!.ways[0]!.edits);
      expect(after).toMatch(/(ground|top) steps at [\d.]+ mm (up|down) \d courses?\n/);
      for (const code of ['falls', 'fit-run', 'bond-broken', 'footing-step', 'step-all'])
        silent(after, code);
    }
  });

  test('less than half a course is no step', () => {
    const [found] = findingsIn(wall('  ground falls 30 mm to right\n')).filter(
      (f) => f.code === 'falls',
    );
    expect(found!.message).toContain('No step is reckoned with');
    expect(found!.ways).toEqual([]);
  });
});

describe('footing-step', () => {
  test('is told of a step higher than the footing is thick (NHBC Standards 4.3.8)', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick    red
          stands   held
          length   4490 mm
          height   8 courses
          ground   steps at 2250 mm down 3 courses
          footing  450 x 200 mm
                   ^^^^^^^^^^^^ footing-step: The step at 2250 mm is 225 mm high, more than the footing is thick (200 mm)
      `,
      { ways: ['A footing of 450 x 225 mm'] },
    );
  });

  test('is not told of one as thick as its step', () => {
    silent(
      wall('  ground steps at 2250 mm up 3 courses\n  footing 450 x 225 mm\n'),
      'footing-step',
    );
    silent(wall('  footing 450 x 100 mm\n'), 'footing-step');
  });
});

describe('plinth-off', () => {
  test('is told of a plinth that is no number of half bricks thicker', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          plinth  3 courses project 40 mm in engineering
                                    ^^^^^ plinth-off: no bricks are counted for it
      `,
      {
        ways: [
          'Let it stand out 1/2 brick, in front',
          'Let it stand out 1/4 brick, from both faces',
        ],
      },
    );
  });

  test('is not told of half a brick, a quarter from both faces, or as much in millimetres', () => {
    for (const out of [
      '1/2 brick',
      '1/2 brick front',
      '1/4 brick both',
      '112.5 mm',
      '56 mm both',
      '1 brick',
    ])
      silent(wall(`  plinth 3 courses project ${out}\n`), 'plinth-off');
  });
});

describe('corbel-far', () => {
  test('is told of courses laid out too far, each and together (BIA Technical Note 36A)', () => {
    // 65 / 2 = 32.5 is less than 102.5 / 3 = 34.2; half of 102.5 is 51.25.
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          corbel  1 course project 40 mm each
                                   ^^^^^ corbel-far: Each course may be laid out 32.5 mm over the one below, and here it is 40 mm (BIA
      `,
      { ways: ['30 mm each'] },
    );
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  8 courses
          corbel  3 courses project 25 mm each
                  ^^^^^^^^^ corbel-far: Together they may be laid out 51.3 mm from a wall 102.5 mm thick, and here they are 75 mm
      `,
      { ways: ['Lay out 2 courses'] },
    );
  });

  test('is not told of courses within both', () => {
    silent(wall('  corbel 2 courses project 25 mm each\n'), 'corbel-far');
  });
});
