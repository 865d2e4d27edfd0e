/** Walls whose top steps or falls, and footings that step. */
import { describe, expect, test } from 'vitest';
import { afterWay, findingsIn, findingsOf, silent, tells } from '../tells';
import { wallWith } from './wall';

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
    const found = findingsIn(wallWith('  top steps at 2240 mm down 8 courses\n'));
    const [all] = found.filter((f) => f.code === 'step-all');
    expect(all!.severity).toBe('error');
    expect(all!.message).toContain('from 2240 mm to 4490 mm');
    expect(all!.place.line).toBe(7);
    silent(wallWith('  top steps at 2240 mm down 7 courses\n'), 'step-all');
    silent(wallWith('  ground steps at 2240 mm up 7 courses\n'), 'step-outside');
  });

  test('more than forty steps are a slope', () => {
    const steps = (n: number) =>
      Array.from({ length: n }, (_, i) => `  ground steps at ${i * 10 + 10} mm down 1 course\n`);
    silent(wallWith(steps(40).join('')), 'too-many');
    expect(findingsIn(wallWith(steps(41).join(''))).map((f) => f.code)).toContain('too-many');
  });

  test('a run that does not work for a step is mended by moving the step', () => {
    const text = wallWith('  top steps at 2.3 m down 3 courses\n');
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
      const text = wallWith(`  footing 450 x 225 mm\n  ${line}\n`, '12 courses');
      const [found] = findingsOf('falls', text);
      const after = afterWay(text, found!.ways[0]!.edits);
      expect(after).toMatch(/(ground|top) steps at [\d.]+ mm (up|down) \d courses?\n/);
      for (const code of ['falls', 'fit-run', 'bond-broken', 'footing-step', 'step-all'])
        silent(after, code);
    }
  });

  test('less than half a course is no step', () => {
    const [found] = findingsOf('falls', wallWith('  ground falls 30 mm to right\n'));
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
      wallWith('  ground steps at 2250 mm up 3 courses\n  footing 450 x 225 mm\n'),
      'footing-step',
    );
    silent(wallWith('  footing 450 x 100 mm\n'), 'footing-step');
  });
});
