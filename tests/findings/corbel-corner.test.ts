/** A corbel that goes round a corner of walls whose courses are not level with one another. */
import { describe, expect, test } from 'vitest';
import { findingsOf, silent } from './tells';

const corner = (brick: string, corbel = '  corbel 2 courses project 20 mm each\n') =>
  `perpend 1\nuse "firm.perp"\nbrick low\n  size 215 x 102.5 x 50 mm\n  joint 10 mm\n  price £1 each\nwall a\n  brick red\n  stands held\n  length 4490 mm\n  height 12 courses\n  right quoin b\nwall b\n  brick ${brick}\n  stands held\n  length 3365 mm\n  height 12 courses\n  left quoin a\n${corbel}`;

describe('corbel-corner', () => {
  test('is told of the wall whose courses would have to be longer', () => {
    const found = findingsOf('corbel-corner', corner('low'));
    expect(found.map((f) => f.message.slice(0, 52))).toEqual([
      'The corbel of b goes round its corner with a, but th',
    ]);
  });

  test('is not told where courses are level, or there is no corbel', () => {
    silent(corner('red'), 'corbel-corner');
    silent(corner('low', ''), 'corbel-corner');
  });
});
