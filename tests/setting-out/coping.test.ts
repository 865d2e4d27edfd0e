import { describe, expect, test } from 'vitest';
import { fitCoping, fitRun } from '../../server/engine/setting-out';
import { LIMITS, UK } from './fixtures';

const onEdge = {
  unit: UK,
  thickness: 2,
  endJoints: 0,
  limits: { ...LIMITS, leastCut: 30 },
} as const;

describe('brick on edge over a pier 330 mm over the face (common practice)', () => {
  const { fit } = fitCoping({ ...onEdge, length: 330, cap: true });

  test('four leave a gap of 30 mm, five do not go in, four spread have joints of 70/3 mm', () => {
    expect(fit.works).toBe('no');
    expect(fit.numbers.goIn).toBe(4);
    expect(fit.numbers.gap).toBeCloseTo(30, 9);
    expect(fit.numbers.over).toBeCloseTo(35, 9);
    expect(fit.numbers.spread).toBeCloseTo(70 / 3, 9);
    expect(fit.numbers.squeezed).toBeCloseTo(1.25, 9);
  });

  test('the ways out: another pier, a cut, a cap; spread joints last, and not acceptable', () => {
    expect(fit.ways.map((way) => way.kind)).toEqual(['length', 'length', 'cut', 'cap', 'joints']);
    expect(fit.ways[0]).toMatchObject({ wholes: 5, length: 365, change: 35 });
    expect(fit.ways[1]).toMatchObject({ wholes: 4, length: 290, change: -40 });
    expect(fit.ways[2]).toMatchObject({ wholes: 4, cuts: 1, cut: 30, joint: 10 });
    expect(fit.ways[4]).toMatchObject({ wholes: 4, acceptable: false });
  });

  test('with a least cut of 35 the joints close up for it, and two cuts of 47.5 are the other way', () => {
    const limits = { ...LIMITS, leastCut: 35 };
    const cuts = fitCoping({ ...onEdge, length: 330, limits }).fit.ways.filter(
      (way) => way.kind === 'cut',
    );
    expect(cuts).toMatchObject([
      { cuts: 1, wholes: 4, cut: 35, joint: 8.75 },
      { cuts: 2, wholes: 3, cut: 47.5, joint: 10 },
    ]);
  });

  test('whoever prefers a cut to another pier says so', () => {
    const fit = fitRun({
      piece: 65,
      half: null,
      endJoints: 0,
      limits: onEdge.limits,
      length: 330,
      prefer: ['joints', 'cut', 'length'],
    });
    expect(fit.ways[0]!.kind).toBe('cut');
  });
});

describe('runs of 65 mm on edge, joints 7 to 13: HiGHS 1.15.3 gave these optima', () => {
  test.each([
    [4490, 60, 10.0],
    [4500, 60, 10.169],
    [2000, 27, 9.423],
    [1000, 13, 12.917],
    [950, 13, 8.75],
  ])('%d mm: %d bricks with joints of %d', (length, wholes, joint) => {
    const { fit } = fitCoping({ ...onEdge, length });
    expect(fit.works).not.toBe('no');
    expect(fit.pieces).toEqual({ wholes, half: 0 });
    expect(fit.joint).toBeCloseTo(joint, 3);
    expect(fit.ways[0]).toMatchObject({ kind: 'joints', wholes, acceptable: true });
  });
});

describe('brick on edge across and along', () => {
  test('13.33 to a metre (75 mm each: arithmetic on the UK brick)', () => {
    const metres = 300;
    const { fit } = fitCoping({ ...onEdge, endJoints: 1, length: metres * 1000 });
    expect(fit.works).toBe('exactly');
    expect(fit.pieces.wholes / metres).toBeCloseTo(13.333, 3);
  });

  test('one brick reaches over half a brick and one; then one and a half, and two', () => {
    const across = ([1, 2, 3, 4] as const).map(
      (thickness) => fitCoping({ ...onEdge, thickness, length: 965 }).across,
    );
    expect(across).toEqual([
      { wholes: 1, halves: 0 },
      { wholes: 1, halves: 0 },
      { wholes: 1, halves: 1 },
      { wholes: 2, halves: 0 },
    ]);
  });
});
