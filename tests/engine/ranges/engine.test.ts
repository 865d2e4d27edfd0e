/**
 * The sampling against the engine itself: the price in a sample is the price of the same text with each range put in
 * place of by its value in that sample.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Runs, type Sampling, samplingOf } from '../../../server/engine/ranges/of-job';
import { SAMPLES } from '../../../server/engine/ranges/points';
import { picked } from '../../../server/engine/resolve/env';
import { Decimal } from '../../../shared/exact';
import '../../harness/seed';
import { jobOf } from '../world';

const HEAD = `perpend 1
use uk
job "Sampled"
  tax 20%
brick red
  size    215 x 102.5 x 65 mm
  gauge   4 courses 300 mm
  price   £0.80..£1.10 each
  waste   3..7%
material cement
  pack    25 kg bag at £6.40
material lime
  pack    25 kg bag at £12
material sand
  pack    25 kg bag at £3
labour
  bricklayer  £20..£30 per h
  gang        1 bricklayer
output
  facework  40..60 bricks per h
  take-down 80 bricks per h
  clean     50..90 bricks per h
cost skip "Skip" 1 at £180..£240
travel
  run 2 x 10..14 miles per day at £0.45 per mile
price
  overhead 10%
  profit   15%
  round    £1
`;

const REPAIR = `repair frost
  brick    red
  bond     flemish
  thick    1 brick
  rebuild  1.35 m x 9 courses
  salvage  60..75%
  cut-out  3..8 bricks
  repoint  2..3 m2 raked 20 mm
`;

const WALL = `wall north
  brick    red
  stands   held
  length   4..5 m
  height   8..11 courses
`;

/** The text with every range of the sampling put in place of by its value in one sample. */
function textAt(text: string, { ranges, places }: Sampling, lane: number): string {
  const lines = text.split('\n');
  const edits = ranges.map(({ value, key, origin }) => {
    const said = value.kind === 'money' ? { low: value.amount, high: value.high } : value;
    const point = places.pointsOf(key)[lane]!;
    const one = picked(said, point).toSignificantDigits(12);
    const line = origin.block.firstLine + origin.span.line;
    return { ...origin.span, line0: line, one, money: value.kind === 'money' };
  });
  for (const { line0, start, end, one, money } of edits.toSorted((a, b) => b.start - a.start)) {
    const was = lines[line0]!.slice(start, end);
    const unit = /[a-z%]+[0-9]?$/.exec(was)?.[0] ?? '';
    // Three decimals could be a thousand: the notation asks which.
    const number = one.decimalPlaces() === 3 ? one.toFixed(4) : one.toFixed();
    const said = money ? `£${number}` : `${number}${unit && ` ${unit}`}`;
    lines[line0] = lines[line0]!.slice(0, start) + said + lines[line0]!.slice(end);
  }
  return lines.join('\n');
}

function agrees(text: string, lanes: readonly number[], within: number): void {
  const job = jobOf(text);
  expect(job.findings.filter((f) => f.severity === 'error')).toEqual([]);
  const sampling = samplingOf(job, new Runs())!;
  for (const lane of lanes) {
    const alone = jobOf(textAt(text, sampling, lane));
    const price = alone.price.total.value;
    const sampled = new Decimal(sampling.prices[lane]!);
    expect(price.sub(sampled).abs().toNumber(), textAt(text, sampling, lane)).toBeLessThanOrEqual(
      within,
    );
  }
}

const SOME = [0, 1, 17, 100, 131, 200, 255];

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
  }, 60_000);
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
