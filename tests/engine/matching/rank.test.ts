/** The order of candidates and why: by gauge, then by size, then by price, or as the defaults say. */
import { describe, expect, test } from 'vitest';
import { candidatesOf, matchingOf, namesOf } from './compared';

const LINES = (gauge: string, order = 'even, tall, inch') =>
  `brick plain\nmix general\ngauge ${gauge}\nrebuild 100 bricks\nsalvage 60 bricks\ncandidates ${order}`;

/** Why each stands before the next, without its no-break spaces. */
const reasons = (lines: string, before = '') =>
  matchingOf(lines, before).candidates.map(({ why }) => why?.replaceAll('\u00a0', ' '));

describe('candidates are ranked', () => {
  test('first by whether they keep the gauge', () => {
    // A course of 310 / 4 = 77.5: 12.5, 10.5 and 9.5 mm, all accepted; of 330 / 4 = 82.5: 17.5, 15.5 and 14.5.
    expect(namesOf(matchingOf(LINES('4 courses 310 mm')))).toEqual(['even', 'tall', 'inch']);
    expect(namesOf(matchingOf(LINES('4 courses 330 mm')))).toEqual(['inch', 'tall', 'even']);
    // Of 316 / 4 = 79: 14, 12 and 11 mm: only the even one does not.
    expect(namesOf(matchingOf(LINES('4 courses 316 mm')))).toEqual(['tall', 'inch', 'even']);
  });

  test('then by size, and then by price, each with its reason', () => {
    // Beside 215 x 102.5 x 65 mm the tall one is 2 mm higher: T2 of 67 mm allows 2. They differ in price, £42 and £124.
    expect(reasons(LINES('4 courses 310 mm'))).toEqual([
      'Before Tall antique: alike in gauge and size; it costs £82.00 less for what is short.',
      'Before Inch stock: alike in gauge; its size is within T2 of what stands, the other’s within none.',
      undefined,
    ]);
    expect(reasons(LINES('4 courses 316 mm'))[1]).toBe(
      'Before Even red: it keeps the gauge with bed joints of 11 mm, and the other needs 14 mm.',
    );
    expect(reasons(LINES('4 courses 330 mm'))[0]).toBe(
      'Before Tall antique: neither keeps the gauge at a joint anyone would accept, and it is nearer to one.',
    );
    expect(reasons(LINES('4 courses 280 mm', 'tall, even')).at(0)).toBe(
      // 70 mm: 5 and 3 mm.
      'Before Tall antique: neither keeps the gauge at a joint anyone would accept, and it is nearer to one.',
    );
  });

  test('those that are alike in all of it stand as the line names them', () => {
    const twin =
      'brick twin "Twin"\n  size 215 x 102.5 x 65 mm\n  joint 10 mm\n  price £1 each\n  waste 5%\n';
    for (const [first, second] of [
      ['twin', 'even'],
      ['even', 'twin'],
    ]) {
      const lines = LINES('4 courses 310 mm', `${first}, ${second}`);
      expect(namesOf(matchingOf(lines, twin))).toEqual([first, second]);
      expect(reasons(lines, twin)[0]).toContain('alike in gauge, size, price, it is named first.');
    }
  });

  test('what is not known comes last', () => {
    const strange =
      'brick strange "Strange"\n  price £0.01 each\nbrick dear "Dear"\n  size 215 x 102.5 x 65 mm\n  joint 10 mm\n';
    const lines = LINES('4 courses 310 mm', 'strange, dear, even');
    expect(namesOf(matchingOf(lines, strange))).toEqual(['even', 'dear', 'strange']);
    expect(reasons(lines, strange)).toEqual([
      'Before Dear: alike in gauge and size; what the other costs is not known.',
      'Before Strange: whether the other keeps the gauge is not known.',
      undefined,
    ]);
  });

  test('in another order where the defaults say so', () => {
    const order = (by: string) =>
      matchingOf(LINES('4 courses 316 mm'), `defaults\n  match-order ${by}\n`);
    // £42, £63 and £124.
    expect(namesOf(order('price, gauge, size'))).toEqual(['even', 'inch', 'tall']);
    expect(order('price, gauge, size').order).toEqual(['price', 'gauge', 'size']);
    // Within T2 are the even one and the tall one; of them the tall one keeps the gauge.
    expect(namesOf(order('size, gauge'))).toEqual(['tall', 'even', 'inch']);
  });
});

describe('the size of a brick beside what stands, by EN 771-1: works technical sheet on BS EN 771-1 (studylib.net/doc/8082476)', () => {
  // A brick of 215 x 102 x 65 mm: T1 209 to 221, 98 to 106 and 62 to 68; T2 211 to 219, 99 to 105 and 63 to 67.
  const near = (measured: string) => {
    const brick = 'brick exact\n  size 215 x 102 x 65 mm\n  joint 10 mm\n  price £1 each\n';
    const lines = `brick plain\nmix general\nrebuild 10 bricks\nmeasured ${measured} mm\ncandidates exact`;
    return candidatesOf(lines, brick)('exact').near!;
  };
  test.each([
    ['215 x 102 x 65', 'T2'],
    ['211 x 99 x 63', 'T2'],
    ['219 x 105 x 67', 'T2'],
    ['210.5 x 102 x 65', 'T1'],
    ['215 x 98 x 65', 'T1'],
    ['221 x 106 x 68', 'T1'],
    ['209 x 98 x 62', 'T1'],
  ])('%s mm is within %s', (measured, title) => {
    const found = near(measured);
    expect([found.title, found.out]).toEqual([title, undefined]);
  });

  test.each([
    ['208 x 102 x 65', 'length', 1],
    ['222 x 102 x 65', 'length', -1],
    ['215 x 97.5 x 65', 'width', 0.5],
    ['215 x 102 x 71', 'height', -3],
  ])('%s mm is out of T1 by its %s, %d mm', (measured, side, by) => {
    const found = near(measured);
    expect(found.title).toBe('T1');
    expect(found.out!.side).toBe(side);
    expect(found.out!.term.value.toNumber()).toBe(by);
  });

  test('what the maker declares is a class as well', () => {
    const brick =
      'brick exact\n  size 215 x 102 x 65 mm\n  joint 10 mm\n  tolerance 1 x 1 x 1 mm\n';
    const lines =
      'brick plain\nmix general\nrebuild 10 bricks\nmeasured 214 x 102 x 66 mm\ncandidates exact';
    expect(candidatesOf(lines, brick)('exact').near).toMatchObject({
      title: 'what its maker declares',
      place: 0,
    });
  });
});
