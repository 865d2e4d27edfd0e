import { describe, expect, test } from 'vitest';
import { afterWay, findingsOf, silent, tells } from './tells';

const wall = (height: string, more = '') =>
  `perpend 1\nuse "firm.perp"\nwall shed\n  stands held\n  length 4490 mm\n  height ${height}\n  backing block-100 cavity 75 mm\n${more}`;

describe('backing-courses', () => {
  test('is told where the backing does not come out with the face, and by how much', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall shed
          brick    red
          stands   held
          length   4490 mm
          height   16 courses
          backing  block-100 cavity 75 mm
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ backing-courses: 150 mm at the top of the wall is cut off in height
      `,
      {
        ways: ['Make the wall 15 courses high, 1125 mm', 'Make the wall 18 courses high, 1350 mm'],
      },
    );
  });

  test('each way out clears it', () => {
    const text = wall('16 courses');
    const [found] = findingsOf('backing-courses', text);
    for (const way of found!.ways) silent(afterWay(text, way.edits), 'backing-courses');
  });

  test('is told of the sill and the head of an opening', () => {
    const window =
      '  opening light\n    from left 1 m\n    width 910 mm\n    sill 5 courses\n    height 8 courses\n';
    const [found] = findingsOf('backing-courses', wall('18 courses', window));
    expect(found!.message).toContain('75 mm at the sill of light, 75 mm at the head of light');
  });

  test('is not told where three courses of brick make one of block', () => {
    silent(wall('18 courses'), 'backing-courses');
  });
});
