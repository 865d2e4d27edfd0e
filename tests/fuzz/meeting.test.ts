/** Walls that meet as no walls do: each is worked with, in time, and no figure is ever no number. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import { sound } from './sound';

const HEAD = 'perpend 1\nuse "firm.perp"\n';
const wall = (name: string, lines: string) =>
  `wall ${name}\n  brick red\n  stands held\n  length 2240 mm\n  height 4 courses\n${lines}`;
const thick = (text: string) =>
  text.replace('brick red', 'brick red\n  bond english\n  thick 2 bricks');
const many = (n: number, line: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => line(i)).join('');

/** Ms of processor time: twelve times what was measured for the slowest of these on a machine under load, 5 s. */
const LIMIT = 60_000;

const CASES: readonly (readonly [string, string])[] = [
  [
    'a hundred walls round one yard',
    many(100, (i) =>
      wall(`w${i}`, `  left quoin w${(i + 99) % 100}\n  right quoin w${(i + 1) % 100}\n`),
    ),
  ],
  [
    'a hundred walls bonded each into the next, and the last into the first',
    many(100, (i) => wall(`w${i}`, `  left tee w${(i + 1) % 100} 1 m bonded\n`)),
  ],
  [
    'a hundred walls that run into one',
    wall('w', '') + many(100, (i) => wall(`w${i}`, `  left tee w ${i * 17} mm bonded\n`)),
  ],
  [
    'thirty walls where nothing bonds into one of two bricks, and as many that are too near them',
    thick(wall('w', '').replace('2240 mm', '300 m')) +
      many(30, (i) => thick(wall(`w${i}`, `  left tee w ${2 + i * 1.8} m bonded\n`))) +
      many(30, (i) => wall(`n${i}`, `  left tee w ${2.1 + i * 1.8} m bonded\n`)),
  ],
  [
    'a hundred of each into a short one: most of them beyond its end',
    thick(wall('w', '').replace('2240 mm', '30 m')) +
      many(100, (i) => thick(wall(`w${i}`, `  left tee w ${2 + i * 1.8} m bonded\n`))) +
      many(100, (i) => wall(`n${i}`, `  left tee w ${2.1 + i * 1.8} m bonded\n`)),
  ],
  [
    'a hundred walls bonded into one of two bricks, and as many that are too near them',
    thick(wall('w', '').replace('2240 mm', '299915 mm')) +
      many(100, (i) => thick(wall(`w${i}`, `  left tee w ${2025 + i * 1800} mm bonded\n`))) +
      many(100, (i) => wall(`n${i}`, `  left tee w ${2125 + i * 1800} mm bonded\n`)),
  ],
  [
    'a hundred thick walls bonded each into the next, and the last into the first',
    many(100, (i) => thick(wall(`w${i}`, `  left tee w${(i + 1) % 100} 1 m bonded\n`))),
  ],
  [
    'thick walls of a million courses, one bonded into the other',
    thick(wall('a', '')).replace('height 4 courses', 'height 1000000 courses') +
      thick(wall('b', '  left tee a 0.9 m bonded\n')).replace(
        'height 4 courses',
        'height 1000000 courses',
      ),
  ],
  ['a wall that meets itself', wall('w', '  left quoin w\n  right tee w 1 m bonded\n')],
  [
    'two walls that meet at both ends',
    wall('a', '  left quoin b\n  right quoin b\n') + wall('b', '  left quoin a\n  right quoin a\n'),
  ],
  [
    'a wall shorter than the other is thick',
    wall('a', '  right quoin b\n').replace('2240', '100') +
      wall('b', '  left quoin a\n').replace(
        'brick red',
        'brick red\n  thick 2 bricks\n  bond english',
      ),
  ],
  ['blocks of a million courses', wall('w', '  left block-bonded 1000000 courses\n')],
  ['a movement joint every micron', wall('w', '  movement-joint every 0.001 mm\n')],
  ['a movement joint ten kilometres wide', wall('w', '  movement-joint left 1 m wide 10 km\n')],
  [
    'two thousand movement joints',
    wall(
      'w',
      many(2000, (i) => `  movement-joint left ${i * 4 + 1} m\n`),
    ).replace('2240 mm', '9 km'),
  ],
  [
    'a wall that nobody measured',
    wall('a', '  right quoin b\n').replace('2240 mm', '?') + wall('b', '  left quoin a\n'),
  ],
];

describe('walls that meet as none do', () => {
  test.each(CASES)('%s', (_, text) => {
    const start = process.cpuUsage();
    const job = jobOf(HEAD + text, { 'firm.perp': FIRM });
    sound(job);
    expect(job.findings.length).toBeGreaterThan(0);
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(LIMIT);
  });
});
