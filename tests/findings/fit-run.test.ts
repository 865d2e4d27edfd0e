import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { afterWay, findingsIn, findingsOf, silent, tells } from './tells';

const wall = (length: string, more = '') => jobOfWall({ length, height: '4 courses' }, more);

/** Half a brick and a joint is 112.5 mm; n halves between two free ends are n x 112.5 mm less a joint of 10. */
const SIZE = (halves: number) => halves * 112.5 - 10;

describe('fit-run', () => {
  test('says what goes in and offers every way, the whole bricks first', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  1840 mm
                  ^^^^^^^ fit-run: 8 bricks leave a gap of 40 mm, 9 are 175 mm too long, and 8 spread out have joints of 17.1 mm
          height  4 courses
      `,
      {
        ways: [
          'Make the wall 1790 mm: the run is 50 mm shorter, 8 bricks',
          'Make the wall 1902.5 mm: the run is 62.5 mm longer, 8½ bricks',
          'Make the wall 2015 mm: the run is 175 mm longer, 9 bricks',
          // By hand: 7 bricks, a half bat and the cut with 8 joints: 1505 + 102.5 + 152.5 + 80 = 1840.
          'A cut of 152.5 mm in each course at the middle, joints of 10 mm',
          '8 bricks with joints of 17.1 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    expect(found!.severity).toBe('warning');
    expect(found!.ways.map((w) => w.preferred ?? false)).toEqual([true, ...Array(4).fill(false)]);
  });

  test('names the nearest number of half bricks, and offers it at a joint a little tighter than is liked', () => {
    const job = jobOfWall(
      { length: '4490 mm', height: '12 courses' },
      `  opening door
    from   left 890 mm
    width  1010 mm
  opening win
    from   left 2225 mm
    width  912.5 mm
    sill   3 courses
    height 6 courses
`,
    );
    const [found, ...more] = findingsOf('fit-run', job);
    expect(more).toEqual([]);
    // By hand: 325 less 215 and 102.5 is 7.5; a brick and a joint are 225, and 100 are left.
    expect(found!.message).toContain(
      '325 mm) does not work in whole or half bricks: 1½ bricks are 2.5 mm too long, 1 brick leaves a gap of 100 mm, 2 are 115 mm too long. A cut of 100 mm in each course',
    );
    expect(found!.ways.map((way) => way.title)).toEqual([
      'Move the opening win to 2227.5 mm: the run is 2.5 mm longer, 1½ bricks',
      'Move the opening win to 2115 mm: the run is 110 mm shorter, 1 brick',
      'Move the opening win to 2340 mm: the run is 115 mm longer, 2 bricks',
      'A cut of 100 mm in each course at either end, joints of 10 mm',
      '1½ bricks (half-bond) with joints of 7.5 mm, wider or tighter than anyone would accept',
    ]);
    for (const way of found!.ways) silent(afterWay(job, way.edits), 'fit-run');
  });

  test('what its bricks leave may be no wider than a joint: nothing is cut to go in there', () => {
    // By hand: two bricks and a joint are 440; of 447 are left 7, less than the joint before a third.
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  447 mm
                  ^^^^^^ fit-run: 2 bricks leave 7 mm, no more than a joint, 3 are 218 mm too long, and 2 spread out have joints of 17 mm
          height  4 courses
      `,
      {
        ways: [
          'Make the wall 440 mm: the run is 7 mm shorter, 2 bricks',
          'Make the wall 552.5 mm: the run is 105.5 mm longer, 2½ bricks',
          'Make the wall 665 mm: the run is 218 mm longer, 3 bricks',
          'Cuts of 165.8 mm and 109.5 mm by turns at the right, joints of 10 mm',
          '2 bricks with joints of 17 mm, wider or tighter than anyone would accept',
        ],
      },
    );
  });

  test('the sizes it proposes are brickwork sizes: so many halves, less a joint', () => {
    const [found] = findingsOf('fit-run', wall('1840 mm'));
    const lengths = found!.ways.flatMap((way) => {
      const made = /^Make the wall ([\d.]+) mm/.exec(way.title);
      return made ? [Number(made[1])] : [];
    });
    expect(lengths).toEqual([SIZE(16), SIZE(17), SIZE(18)]);
  });

  test('lengths on which the bond closes come first, the nearest of them before all', () => {
    const flemish = wall('1840 mm').replace(
      '  stands',
      '  bond flemish\n  thick 1 brick\n  stands',
    );
    const [found] = findingsOf('fit-run', flemish);
    const lengths = found!.ways.filter((w) => w.title.startsWith('Make the wall'));
    // By hand: stretchers and headers by turns, a stretcher at both ends, are 3 k + 2 halves; 17 is one, 16 and 18 are none.
    expect([16, 17, 18].filter((halves) => halves % 3 === 2)).toEqual([17]);
    expect(lengths.map((w) => /[\d.]+ mm/.exec(w.title)![0])).toEqual(
      [17, 16, 18].map((halves) => `${SIZE(halves)} mm`),
    );
    expect(lengths.map((w) => w.preferred ?? false)).toEqual([true, false, false]);
    silent(afterWay(flemish, lengths[0]!.edits), 'bond-broken');
    expect(() => silent(afterWay(flemish, lengths[1]!.edits), 'bond-broken')).toThrow();
  });

  test.each([
    // 8 bricks have 7 joints, 7½ have 7: (1840 - 1720) / 7 = 17.1, (1840 - 1607.5) / 7 = 33.2.
    ['1840 mm', 8, 17.1],
    // 8 bricks: (1875 - 1720) / 7 = 22.1; 8½ have 8 joints: (1875 - 1822.5) / 8 = 6.6, nearer to 8 than 22.1 to 13.
    ['1875 mm', 8.5, 6.6],
    // 2 bricks: (600 - 430) / 1 = 170; 2½ have 2 joints: (600 - 532.5) / 2 = 33.8.
    ['600 mm', 2.5, 33.8],
  ])(
    'of %s in whole bricks or with half-bond, at joints nobody accepts, only the nearer is offered',
    (length, bricks, joint) => {
      const [found] = findingsOf('fit-run', wall(length));
      const poor = found!.ways.filter((w) => w.title.includes('than anyone would accept'));
      const said = bricks % 1 ? `${Math.floor(bricks)}½ bricks (half-bond)` : `${bricks} bricks`;
      expect(poor.map((w) => w.title)).toEqual([
        `${said} with joints of ${joint} mm, wider or tighter than anyone would accept`,
      ]);
    },
  );

  test('beside an opening, the opening moves', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2155 mm
          height  4 courses
          opening gate
            from   left 580 mm
                        ^^^^^^ fit-run: from the left end to the opening gate (run-1, 580 mm)
            width  910 mm
      `,
      {
        ways: [
          // Moving the gate would leave the run on its other side not working: those come after the cut.
          // By hand: two bricks, 2 x 215 + 130 + 20 = 580; and between two half bats a three-quarter bat and
          // the cut, 2 x 102.5 + 158.75 + 186.25 + 30 = 580.
          'Cuts of 130 mm and 186.3 mm by turns at the middle, joints of 10 mm',
          'Move the opening gate to 552.5 mm: the run is 27.5 mm shorter, 2½ bricks',
          'Move the opening gate to 665 mm: the run is 85 mm longer, 3 bricks',
          'Move the opening gate to 440 mm: the run is 140 mm shorter, 2 bricks',
          '2½ bricks (half-bond) with joints of 23.8 mm, wider or tighter than anyone would accept',
        ],
      },
    );
  });

  test('a fit line that no longer answers the length is told, and the way out rewrites it', () => {
    const marked = wall('1840 mm', '  fit run-1 cut 90 mm at middle\n');
    const found = findingsIn(marked).find((f) => f.code === 'fit-run')!;
    expect(found.message).toContain('no longer answers this length');
    const way = found.ways.find((w) => w.title.startsWith('A cut'))!;
    const after = afterWay(marked, way.edits);
    expect(after.match(/fit /g)).toHaveLength(1);
    // Where it was to lie stays as it was said.
    expect(after).toContain('  fit run-1 cut 152.5 mm at middle\n');
    silent(after, 'fit-run');
  });

  test.each([1790, 1902.5, 2015, 1797, 1806].map((mm) => [mm]))(
    'is not told of %d mm, which works in whole or half bricks with joints of 8 to 13 mm',
    (mm) => silent(wall(`${mm} mm`), 'fit-run'),
  );
});
