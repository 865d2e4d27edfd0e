import { describe, expect, test } from 'vitest';
import { proveBond } from '../../server/engine/setting-out';
import { libraryBonds } from '../setting-out/thick';
import { findingsIn, findingsOf, silent, tells } from './tells';

const bond = (lines: string) => `perpend 1\nuse uk\nbond ours "Our bond"\n${lines}`;

describe('bond-unsound', () => {
  test('is told of a course that stands on its like, with a start that mends it', () => {
    tells(
      `
        perpend 1
        use uk
        bond ours "Our bond"
          thick  1/2 brick
          course stretcher
          course stretcher from 1 brick
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ bond-unsound: Our bond does not bond as it is written. Wherever the pattern runs, perpends of course 2 stand straight over those of course 1
          lap    1/2 brick
      `,
      { ways: ['Let course 2 begin 1/2 brick from the end'] },
    );
  });

  test('of a lap that the courses do not keep, with the one they do', () => {
    const [found] = findingsOf(
      'bond-unsound',
      bond(
        '  thick 1 brick\n  course stretcher\n  course header from 1/4 brick\n  lap 1/2 brick\n',
      ),
    );
    expect(found!.message).toContain('by only 1/4 of a brick where it asks for 1/2');
    expect(found!.ways.map((w) => w.title)).toEqual(['Ask for a lap of 1/4 brick']);
  });

  test('of Flemish bond begun alike in both courses', () => {
    const [found] = findingsOf(
      'bond-unsound',
      bond(
        '  thick 1 brick\n  course stretcher, header\n  course stretcher, header\n  lap 1/4 brick\n',
      ),
    );
    expect(found!.message).toContain('perpends of course 2 stand straight over those of course 1');
    expect(found!.ways.map((w) => w.title)).toContain('Let course 2 begin 3/4 brick from the end');
  });

  test('of stretchers through and through: its leaves are not tied, and no start of a course ties them', () => {
    tells(`
      perpend 1
      use uk
      bond ours "Our bond"
           ^^^^ bond-unsound: Wherever the pattern runs, no brick goes through from the first half brick of its thickness into the next in any course, so that it stands in leaves side by side. Lay headers in one of its courses
        thick  1 brick
        course stretcher
        course stretcher from 1/2 brick
        lap    1/2 brick
    `);
    silent(
      bond(
        '  thick 1 brick\n  course stretcher\n  course header from 1/4 brick\n  lap 1/4 brick\n',
      ),
      'bond-unsound',
    );
  });

  test('of a back that nothing ties to the headers in front of it', () => {
    const [found] = findingsOf(
      'bond-unsound',
      bond(
        '  thick 1.5 bricks\n  course header back stretcher\n  course header from 1/4 brick back stretcher from 1/2 brick\n  lap 1/4 brick\n',
      ),
    );
    expect(found!.message).toContain('from the second half brick of its thickness');
    expect(found!.ways).toEqual([]);
  });

  test('half a brick thick nothing has to be tied, nor in a bond whose headers are far apart', () => {
    silent(
      bond('  course stretcher\n  course stretcher from 1/2 brick\n  lap 1/2 brick\n'),
      'bond-unsound',
    );
    const far = `  thick 1 brick\n  course stretcher 40, header\n  course stretcher 40, header from 3/4 brick\n`;
    const [found] = findingsOf('bond-unsound', bond(far));
    expect(found?.message ?? '').not.toContain('leaves');
  });

  test('is not told of a bond that is sound, that asks for no lap, or that is not finished', () => {
    silent(
      bond('  course stretcher\n  course stretcher from 1/2 brick\n  lap 1/2 brick\n'),
      'bond-unsound',
    );
    silent(bond('  course stretcher\n  lap 0 bricks\n'), 'bond-unsound');
    silent(bond('  course\n  lap 1/4 brick\n'), 'bond-unsound');
    silent(bond(''), 'bond-unsound');
  });

  test('whatever stands in it, an answer comes soon', () => {
    const units = Array.from({ length: 60 }, (_, i) => (i % 3 ? 'stretcher' : 'header')).join(', ');
    const long = `  course ${units}\n`.repeat(60);
    const start = process.cpuUsage();
    for (const lines of [
      `  thick 1 brick\n${long}  lap 1/4 brick\n`,
      `  course ${units}\n  lap 9999999 bricks\n`,
      '  course stretcher from 1e9 bricks\n  lap 1/4 brick\n',
    ])
      expect(findingsIn(bond(lines))).toBeDefined();
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(20);
  });

  test('of a back that stands on its like, and of a core that fills nothing', () => {
    const thick = (courses: string) =>
      findingsOf('bond-unsound', bond(`  thick 1.5 bricks\n${courses}  lap 1/4 brick\n`));
    const face = (back: string) =>
      `  course stretcher, header back ${back}\n  course stretcher, header from 3/4 brick back ${back}\n`;
    const [found] = thick(face('stretcher'));
    expect(found!.message).toContain('perpends of course 2 stand straight over those of course 1');
    expect(
      thick(
        '  course stretcher back header from 1/4 brick\n  course header from 1/4 brick back stretcher\n',
      ),
    ).toEqual([]);
  });

  test('where a wall may ask for a number, with that number', () => {
    const lines = (start: string) =>
      `  thick 1 brick\n  n 3\n  course header from 1/4 brick\n  courses n stretcher${start}\n  lap 1/4 brick\n`;
    silent(bond(lines(' from 1/2 brick')), 'bond-unsound');
    const [found] = findingsOf(
      'bond-unsound',
      bond(
        '  thick 1 brick\n  n 1\n  course header from 1/4 brick\n  courses n stretcher\n  lap 1/4 brick\n',
      ),
    );
    expect(found!.message).toContain(
      'does not bond as it is written, where a wall asks for ours 2.',
    );
  });

  test('every bond of every library is proved, at each of its thicknesses and with each number', () => {
    const bonds = libraryBonds();
    expect(bonds.length).toBeGreaterThan(50);
    for (const { library, name, thickness, n, bond: own } of bonds) {
      const { pattern, lengths } = proveBond(own, thickness, n === undefined ? 1 : 5);
      expect([library, name, thickness, n, pattern, lengths]).toEqual([
        library,
        name,
        thickness,
        n,
        [],
        [],
      ]);
    }
  });
});
