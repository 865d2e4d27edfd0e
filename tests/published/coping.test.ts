/** Bricks on edge: 65 mm and a joint of 10 mm each. Plain arithmetic; 13.33 to the metre is common practice. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../examples/engine';

describe('along a wall', () => {
  const job = jobOf(
    'use uk\n\nwall w\n  thick 1 brick\n  bond english\n  length 3 m\n  height 4 courses\n  right butted\n  coping brick-on-edge\n',
  );
  test('13.33 to the metre: 40 to three metres', () => {
    const top = job.works[0]!.facts.tops![0]!;
    expect(top.pieces).toHaveLength(40);
    expect(top.pieces.length / 3).toBeCloseTo(13.33, 2);
    expect(top.joint).toBeCloseTo(10, 9);
  });
});

describe('on a pier 330 mm wide', () => {
  const job = jobOf(
    'use uk\n\npier p\n  size 330 x 330 mm\n  height 10 courses\n  coping brick-on-edge\n',
  );
  const found = job.findings.filter((f) => f.code === 'fit-coping');
  const message = found[0]?.message.replaceAll('\u00a0', ' ') ?? '';
  test('it is told once', () => expect(found).toHaveLength(1));
  test('four leave a gap: 330 - 4 x 75 = 30 mm', () => {
    expect(message).toContain('4 bricks on edge leave a gap of 30 mm');
  });
  test('five do not go in: 5 x 65 + 4 x 10 = 365 mm', () => {
    expect(message).toContain('5 are 35 mm too long');
  });
  test('four spread out have joints of 70 / 3 = 23.3 mm', () => {
    expect(message).toContain('4 spread out have joints of 23.3 mm');
  });
  test('there are ways out, and a cap is one', () => {
    expect(found[0]!.ways.some((w) => w.title.includes('cap'))).toBe(true);
  });
});

test('CO-: a pier of two bricks, 440 mm, takes six exactly', () => {
  const job = jobOf(
    'use uk\n\npier p\n  size 2 x 2 bricks\n  height 10 courses\n  coping brick-on-edge\n',
  );
  expect(job.findings.filter((f) => f.code === 'fit-coping')).toEqual([]);
  expect(job.works[0]!.facts.tops![0]!.pieces).toHaveLength(6);
});

describe('a wall twenty bricks long (bricklaying text: Setting-out a brick-on-edge coping, zhclg.com)', () => {
  test('takes sixty bricks on edge with joints of 10 mm: three to each brick', () => {
    const job = jobOf(
      'use uk\n\nwall w\n  thick 1 brick\n  bond english\n  length 4490 mm\n  height 4 courses\n  coping brick-on-edge\n',
    );
    const top = job.works[0]!.facts.tops![0]!;
    expect(top.pieces).toHaveLength(60);
    expect(top.joint).toBeCloseTo(10, 9);
    expect(job.findings.filter((f) => f.code === 'fit-coping')).toEqual([]);
  });
});
