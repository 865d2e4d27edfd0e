/** Copings that do not fill their wall, or do not keep the water off it. */
import { describe, expect, test } from 'vitest';
import { afterWay, findingsOf, silent, tells } from '../tells';
import { wallWith } from './wall';

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
    silent(wallWith('  coping precast 490 x 200 mm slab\n'), 'fit-coping');
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
    const [found] = findingsOf(
      'coping-overhang',
      wallWith('  coping precast 490 x 150 x 60 mm slab\n').replace('wall ', `${goods}wall `),
    );
    expect(found!.ways.map((w) => w.title)).toEqual([
      'Lengths of 600 x 200 x 60 mm once-weathered',
      'Lengths of 490 x 195 x 60 mm instead of slab',
    ]);
  });

  test('says when it does not cover the wall; is silent where it reaches far enough', () => {
    const [found] = findingsOf('coping-overhang', wallWith('  coping precast 490 x 100 mm slab\n'));
    expect(found!.message).toContain('does not cover a wall 102.5 mm thick');
    silent(wallWith('  coping precast 490 x 195 mm slab\n'), 'coping-overhang');
    silent(wallWith('  coping brick-on-edge\n'), 'coping-overhang');
  });
});

describe('coping-overhang over all of a wall', () => {
  const about = (more: string, height = '12 courses') =>
    findingsOf('coping-overhang', wallWith(more, height));

  test('over a skin behind the face: 102.5 + 75 + 100 = 277.5 mm', () => {
    const two = '  backing block-100 cavity 75 mm\n';
    const [found] = about(`${two}  coping precast 490 x 150 mm slab\n`);
    expect(found!.message).toContain('does not cover a wall 277.5 mm thick over all');
    expect(found!.severity).toBe('warning');
    // 277.5 + 2 x 45 = 367.5, to the next 5 mm.
    expect(found!.ways.map((w) => w.title)).toEqual(['Lengths of 490 x 370 mm instead of slab']);
    const text = wallWith(`${two}  coping precast 490 x 150 mm slab\n`, '12 courses');
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
