import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { afterWay, FIRM, findingsIn, silent, tells } from './tells';

const pier = (size: string, more = '') =>
  `perpend 1\nuse "firm.perp"\npier gate\n  brick red\n  size ${size}\n  height 12 courses\n  coping brick-on-edge\n${more}`;

describe('fit-coping', () => {
  test('a pier of 330 mm: 4 leave 30 mm, 5 do not go in, 4 spread have joints of 23.3 mm', () => {
    const told = tells(
      `
        perpend 1
        use "firm.perp"
        pier gate
          brick   red
          size    330 x 330 mm
                  ^^^^^^^^^^^^ pier-size: 1.5 x 1.5 bricks make 327.5 x 327.5 mm
          height  12 courses
          coping  brick-on-edge
          ^^^^^^^^^^^^^^^^^^^^^ fit-coping: 4 bricks on edge leave a gap of 30 mm, 5 are 35 mm too long, and 4 spread out have joints of 23.3 mm
      `,
      {
        ways: [
          'Make it 1.5 x 1.5 bricks',
          '3 whole bricks on edge and 2 cuts of 50 mm at the middle, joints of 8.8 mm',
          'A cap of 420 x 420 mm instead of bricks on edge',
          'Another size of pier, 1 x 1.5 bricks: 3 bricks on edge',
          'Another size of pier, 2 x 1.5 bricks: 6 bricks on edge',
          '4 bricks on edge with joints of 23.3 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    // By hand: a brick on edge is 65 mm; n of them with joints of 10 mm take 75 n - 10.
    expect(330 - (75 * 4 - 10) - 10).toBe(30);
    expect(75 * 5 - 10 - 330).toBe(35);
    expect((330 - 4 * 65) / 3).toBeCloseTo(23.3, 1);
    expect((330 - 3 * 65 - 2 * 50) / 4).toBe(8.75);
    // A cap reaches 45 mm over each face (BRE, in the library).
    expect(330 + 2 * 45).toBe(420);
    const coping = told.find((f) => f.code === 'fit-coping')!;
    expect(coping.severity).toBe('warning');
    expect(coping.ways.filter((w) => w.preferred).map((w) => w.title)).toEqual([
      '3 whole bricks on edge and 2 cuts of 50 mm at the middle, joints of 8.8 mm',
    ]);
  });

  test('the widths of pier that are offered are those of the library, or of a firm', () => {
    const sizes = (line: string) =>
      findingsIn(pier('330 x 330 mm', line))
        .find((f) => f.code === 'fit-coping')!
        .ways.flatMap((w) => /^Another size of pier, ([\d.]+)/.exec(w.title)?.[1] ?? []);
    expect(sizes('')).toEqual(['1', '2']);
    expect(sizes('defaults\n  pier-widths 1.5..2.5 bricks\n')).toEqual(['2']);
    expect(sizes('defaults\n  pier-widths 3..9000000 bricks\n')).toEqual([]);
  });

  test('a size in bricks stays as the bricks make it: no other face is proposed', () => {
    const found = findingsIn(pier('1.5 x 1.5 bricks')).find((f) => f.code === 'fit-coping')!;
    expect(found.message).toContain('do not fill 327.5 mm');
    expect(found.ways.some((w) => w.title.includes('face'))).toBe(false);
    // 327.5 + 2 x 45 = 417.5, to the next 5 mm.
    expect(found.ways.map((w) => w.title)).toContain(
      'A cap of 420 x 420 mm instead of bricks on edge',
    );
  });

  test('over a wall, each stretch by its name, and no cap in its place', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2015 mm
          height  4 courses
          coping  brick-on-edge
          ^^^^^^^^^^^^^^^^^^^^^ fit-coping: do not fill 327.5 mm
          opening gate
            from   left 327.5 mm
            width  1022.5 mm
      `,
      {
        ways: [
          '3 whole bricks on edge and 2 cuts of 50 mm at the middle, joints of 8.1 mm',
          '4 bricks on edge with joints of 22.5 mm, wider or tighter than anyone would accept',
        ],
      },
    );
  });

  test('what is settled is what is counted', () => {
    const bricks = (line: string) =>
      jobOf(pier('330 x 330 mm', line), {
        'firm.perp': FIRM,
      }).works[0]!.needs.bricks[0]!.bricks.value.toNumber();
    const none = jobOf(pier('330 x 330 mm').replace('brick-on-edge', 'none'), {
      'firm.perp': FIRM,
    }).works[0]!.needs.bricks[0]!.bricks.value.toNumber();
    // 1.5 bricks deep: each row takes one brick and a half, two halves from one.
    expect(bricks('  fit coping joints\n') - none).toBe(4 + 2);
    expect(bricks('  fit coping cut 50 mm at left\n') - none).toBe(5 + 3);
  });

  test('a cap in its place, or a fit line, settles it', () => {
    const text = pier('330 x 330 mm');
    const found = findingsIn(text).find((f) => f.code === 'fit-coping')!;
    const cap = found.ways.find((w) => w.title.startsWith('A cap'))!;
    const after = afterWay(text, cap.edits);
    expect(after).toContain('\n  cap 420 x 420 mm\n');
    expect(after).not.toContain('coping');
    silent(after, 'cap-overhang');
    silent(pier('330 x 330 mm', '  fit coping joints\n'), 'fit-coping');
    silent(pier('330 x 330 mm', '  fit coping cut 50 mm at left\n'), 'fit-coping');
  });

  test('is not told of piers that are so many bricks on edge, nor of one without a coping', () => {
    // By hand: 3 and 6 bricks on edge take 75 n - 10 mm, as piers of one and two bricks do.
    expect([75 * 3 - 10, 75 * 6 - 10]).toEqual([215, 440]);
    for (const mm of [215, 440]) silent(pier(`${mm} x ${mm} mm`), 'fit-coping');
    silent(pier('2 x 2 bricks'), 'fit-coping');
    silent(pier('1 x 1 bricks'), 'fit-coping');
    silent(pier('330 x 330 mm').replace('brick-on-edge', 'none'), 'fit-coping');
  });

  test('over a top too narrow for one and a decent cut, two short cuts are counted and said to be short', () => {
    const text =
      'perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  length 80 mm\n  height 2 courses\n  coping brick-on-edge\n';
    const found = findingsIn(text).find((f) => f.code === 'fit-coping')!;
    // By hand: one of 65 mm and a joint leave 5 mm; two like cuts are (80 - 10) / 2 = 35 mm.
    const title = '2 cuts of 35 mm at the middle, joints of 10 mm, shorter than anyone would lay';
    expect(found.ways.map((w) => w.title)).toContain(title);
    const bricks = (of: string) => {
      const { works } = jobOf(of, { 'firm.perp': FIRM });
      return works[0]!.needs.bricks[0]!.bricks.value.toNumber();
    };
    const bare = bricks(text.replace('  coping brick-on-edge\n', ''));
    expect(bricks(text) - bare).toBe(2);
    silent(afterWay(text, found.ways.find((w) => w.title === title)!.edits), 'fit-coping');
  });
});
