/**
 * The sampling against the engine itself: the price in a sample is the price of the same text with each range put in
 * place of by its value in that sample.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SAMPLES } from '../../../server/engine/ranges/points';
import '../../harness/seed';
import { jobOf } from '../world';
import { agrees, HEAD, REPAIR, SOME, WALL } from './agrees';

describe('the price in a sample is that of the text without ranges', () => {
  test('where terms say how they hang on their ranges', () => {
    agrees(`${HEAD}${REPAIR}`, SOME, 0.011);
  });

  test('where a wall is laid again', () => {
    agrees(`${HEAD}${WALL}`, SOME, 0.011);
  });

  test('where one piece of work is laid again and another is not', () => {
    agrees(`${HEAD}${WALL}${REPAIR}`, SOME, 0.011);
  });

  test('for jobs at random', () => {
    const upTo = (least: number, most: number, unit: string) =>
      fc
        .tuple(fc.integer({ min: least, max: most }), fc.integer({ min: 1, max: 40 }), fc.boolean())
        .map(([low, more, one]) => (one ? `${low} ${unit}` : `${low}..${low + more} ${unit}`));
    const repair = fc
      .record({
        long: upTo(900, 3000, 'mm'),
        salvage: upTo(20, 55, '%'),
        cut: upTo(1, 20, 'bricks'),
        area: upTo(1, 9, 'm2'),
        cope: upTo(1000, 2000, 'mm'),
      })
      .map(
        (r) => `repair r
  brick red
  bond english
  thick 1 brick
  rebuild ${r.long} x 6 courses
  salvage ${r.salvage}
  cut-out ${r.cut}
  repoint ${r.area} raked 20 mm
  recope  ${r.cope}
`,
      );
    fc.assert(
      fc.property(repair, fc.integer({ min: 0, max: SAMPLES - 1 }), (text, lane) =>
        agrees(`${HEAD}${text}`, [lane], 0.011),
      ),
      { numRuns: 40 },
    );
  });
});

test('a list of amounts takes ranges too: a gang, the parts of a mix', () => {
  const text = `${HEAD.replace('gang        1 bricklayer', 'labourer    £15 per h\n  gang        1 bricklayer + 0.5..1 labourer')}mix soft
  parts cement 1, lime 1, sand 5..7
  joint 10 mm
${REPAIR}  mix      soft
`;
  agrees(text, SOME, 0.011);
});

test('by the bag: so many trowels, or a little more', () => {
  const mix = 'mix bagged\n  batch 1 bag sand, 5..7 trowels cement\n  joint 10 mm\n';
  agrees(`${HEAD}${mix}${REPAIR}  mix      bagged\n`, SOME, 0.011);
});

describe('walls whose lengths are ranges', () => {
  const walls = (count: number, first = '2..4') =>
    HEAD.replaceAll(/(\d+(?:\.\d+)?)\.\.£?(\d+(?:\.\d+)?)/g, '$1') +
    Array.from(
      { length: count },
      (_, i) => `wall w${i}
  brick    red
  stands   held
  length   ${i ? '2..4' : first} m
  height   10 courses
`,
    ).join('');

  test.each([1, 8, 16])('%d of them spread the price by the root of their number', (count) => {
    const one = jobOf(walls(1)).spread!;
    const many = jobOf(walls(count)).spread!;
    const width = (s: typeof one) => s.high.value.sub(s.low.value).toNumber();
    // Sums of n even ranges: from P10 to P90 0.8 of one, 2.563 standard deviations (0.2887 √n) of many (central limit).
    const exact = count === 1 ? 1 : (2.563 * 0.2887 * Math.sqrt(count)) / 0.8;
    expect(width(many) / width(one) / exact).toBeGreaterThan(0.84);
    expect(width(many) / width(one) / exact).toBeLessThan(1.16);
  });

  test('the one that is wide counts, and no other', () => {
    const { ranges } = jobOf(walls(12, '5..20').replaceAll('2..4', '2..2.1')).spread!;
    expect(ranges[0]!.origin.block.name).toBe('w0');
    expect(ranges[0]!.share).toBeGreaterThan(0.9);
    for (const { share } of ranges.slice(1)) expect(share).toBeLessThan(0.05);
  });
});

test('a damp course of a range of courses, in a mix of its own', () => {
  const mix = 'mix strong\n  parts cement 1, sand 3\n  joint 10 mm\n';
  const brick = 'brick engineering\n  price £2 each\n';
  const wall = WALL.replace('  stands', '  dpc engineering 1..3 courses mix strong\n  stands');
  agrees(`${HEAD}${mix}${brick}${wall}`, SOME, 0.011);
});
