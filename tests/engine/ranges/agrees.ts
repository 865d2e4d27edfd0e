/** The price in samples held against the price of the same text with the values written in. */
import { expect } from 'vitest';
import { Runs, type Sampling, samplingOf } from '../../../server/engine/ranges/of-job';
import { picked } from '../../../server/engine/resolve/env';
import { Decimal } from '../../../shared/exact';
import { jobOf } from '../world';

export const HEAD = `perpend 1
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

export const REPAIR = `repair frost
  brick    red
  bond     flemish
  thick    1 brick
  rebuild  1.35 m x 9 courses
  salvage  60..75%
  cut-out  3..8 bricks
  repoint  2..3 m2 raked 20 mm
`;

export const WALL = `wall north
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
    const unit = /[a-z%][a-z/]*[0-9]?$/.exec(was)?.[0] ?? '';
    // Three decimals could be a thousand: the notation asks which.
    const number = one.decimalPlaces() === 3 ? one.toFixed(4) : one.toFixed();
    const said = money ? `£${number}` : `${number}${unit && ` ${unit}`}`;
    lines[line0] = lines[line0]!.slice(0, start) + said + lines[line0]!.slice(end);
  }
  return lines.join('\n');
}

export function agrees(text: string, lanes: readonly number[], within: number): void {
  const job = jobOf(text);
  expect(job.findings.filter((f) => f.severity === 'error')).toEqual([]);
  const sampling = samplingOf(job, new Runs())!;
  for (const lane of lanes) {
    const alone = jobOf(textAt(text, sampling, lane));
    expect(alone.findings.filter((f) => f.severity === 'error')).toEqual([]);
    const price = alone.price.total.value;
    const sampled = new Decimal(sampling.prices[lane]!);
    expect(price.sub(sampled).abs().toNumber(), textAt(text, sampling, lane)).toBeLessThanOrEqual(
      within,
    );
  }
}

/** Some samples, the first and the last with them. */
export const SOME = [0, 1, 17, 100, 131, 200, 255];
