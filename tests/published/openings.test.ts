/** What spans openings, against what is published of it. */
import { describe, expect, test } from 'vitest';
import { radiusOf } from '../../server/engine/setting-out';
import { jobOf } from '../examples/engine';

const wall = (width: string, lines: string) =>
  jobOf(
    `use uk\n\nwall w\n  stands held\n  length 6 m\n  height 20 courses\n  opening o\n    from left 2 m\n    width ${width}\n    height 8 courses\n${lines}`,
  ).works[0]!;

describe('bearing of lintels: NHBC Standards 2020, 6.1.12, Table 5, simple lintels', () => {
  const long = (width: string) => {
    const { note } = wall(width, '    lintel angle\n').needs.pieces[0]!.count;
    return Number(/^([\d.]+) mm long/.exec(note!)![1]);
  };
  test.each([
    ['0.6 m', 600 + 2 * 100],
    ['1.2 m', 1200 + 2 * 100],
    ['1.21 m', 1210 + 2 * 150],
    ['1.8 m', 1800 + 2 * 150],
  ])('over %s the lintel is %i mm long', (width, length) => expect(long(width)).toBe(length));
});

describe('a course of soldiers', () => {
  test('“the height of modular bricks means that a soldier course matches three running courses” (Wikipedia, Brickwork)', () => {
    const modular = jobOf(
      'use us\n\nwall w\n  stands held\n  length 12 ft\n  height 20 courses\n  opening o\n    from left 4 ft\n    width 3 ft\n    height 8 courses\n    lintel angle\n    head soldier\n',
    ).works[0]!;
    const soldier = modular.facts.shapes!.find(({ style }) => style === 'soldier')!;
    const heights = soldier.points.map(({ y }) => y);
    const gauge = modular.facts.settingOut!.gauge;
    expect(Math.round((Math.max(...heights) - Math.min(...heights)) / gauge)).toBe(3);
    expect(modular.remarks.map(({ code }) => code)).not.toContain('head-height');
  });
});

describe('arches', () => {
  test('radius = (a² + h²) / 2h with a half the span: 3.5 m and 1 m make 2.031 m (paramvisions.com, segmental arch)', () => {
    expect(radiusOf(3.5, 1)).toBeCloseTo(2.031, 3);
  });

  test('joints of 1/8 to 3/4 in (Modern Masonry, 2016, p. 317): a 6 ft semicircle of modular brick keeps them', () => {
    const arch = (width: string) =>
      jobOf(
        `use us\n\nwall w\n  stands held\n  length 20 ft\n  height 60 courses\n  opening o\n    from left 8 ft\n    width ${width}\n    height 20 courses\n    head semicircular rings 2\n`,
      ).works[0]!;
    const codes = (width: string) => arch(width).remarks.map(({ code }) => code);
    expect(codes('6 ft')).not.toContain('arch-joint');
    // “For short spans, tapered brick is recommended to avoid excessively wide joints at the extrados.”
    expect(codes('2 ft')).toContain('arch-joint');
  });

  test('depth of an inch to each foot of span (the same page): 8 in over 8 ft', () => {
    const codes = (rings: number) =>
      wall('2.4 m', `    head segmental rise 400 mm rings ${rings}\n`).remarks.map(
        ({ code }) => code,
      );
    // 8 in are 203 mm: one ring of 102.5 is not, two with their joint are.
    expect(codes(1)).toContain('arch-thin');
    expect(codes(2)).not.toContain('arch-thin');
  });
});
