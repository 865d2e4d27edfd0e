import { describe, expect, test } from 'vitest';
import { bondOf, halvesSetOut } from '../../server/engine/brickwork/wall/bond';
import { factsNamed } from '../../server/engine/resolve/env';
import { proveBond } from '../../server/engine/setting-out';
import { jobOf, LIBRARIES } from '../engine/world';
import { findingsIn, silent, tells } from './tells';

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
    const [found] = findingsIn(
      bond(
        '  thick 1 brick\n  course stretcher\n  course header from 1/4 brick\n  lap 1/2 brick\n',
      ),
    ).filter((f) => f.code === 'bond-unsound');
    expect(found!.message).toContain('by only 1/4 of a brick where it asks for 1/2');
    expect(found!.ways.map((w) => w.title)).toEqual(['Ask for a lap of 1/4 brick']);
  });

  test('of Flemish bond begun alike in both courses', () => {
    const [found] = findingsIn(
      bond(
        '  thick 1 brick\n  course stretcher, header\n  course stretcher, header\n  lap 1/4 brick\n',
      ),
    ).filter((f) => f.code === 'bond-unsound');
    expect(found!.message).toContain('perpends of course 2 stand straight over those of course 1');
    expect(found!.ways.map((w) => w.title)).toContain('Let course 2 begin 3/4 brick from the end');
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

  test.each(Object.keys(LIBRARIES))(
    'every bond of %s is proved, at each of its thicknesses',
    (library) => {
      const { book, env } = jobOf(`perpend 1\nuse ${library}\n`);
      for (const name of book.names('bond')) {
        const facts = factsNamed(env, 'bond', name)!;
        for (const line of facts.lines('thick')) {
          const halves = halvesSetOut(line.number('thick'))!;
          const { pattern, lengths } = proveBond(bondOf(facts, undefined, halves)!, halves);
          expect([name, halves, pattern, lengths]).toEqual([name, halves, [], []]);
        }
      }
    },
  );
});
