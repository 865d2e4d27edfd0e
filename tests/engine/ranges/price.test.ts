/** Ranges through the price: contingency, margin, discounts, tax by line, agreed prices, each in samples. */
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { Runs, samplingOf } from '../../../server/engine/ranges/of-job';
import { jobOf } from '../world';
import { agrees } from './agrees';

const HEAD = `perpend 1
use uk
job "Sampled"
  tax 20%
brick red
  size    215 x 102.5 x 65 mm
  gauge   4 courses 300 mm
  price   £0.80..£1.10 each
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
  clean     50..90 bricks per h
cost skip "Skip" 1 at £180..£240
  tax 12.5%
`;

const work = (taxA: string, taxB: string) => `repair a
  brick    red
  cut-out  3..8 bricks
  repoint  2..3 m2 raked 20 mm
${taxA}repair b
  brick    red
  bond     english
  thick    1 brick
  rebuild  1.35 m x 9 courses
  salvage  60..75%
${taxB}`;

const SOME = [0, 17, 131, 200, 255];
const price = (lines: string) => `price\n  round £1\n${lines}`;

describe('the price in a sample is that of the text without ranges', () => {
  test('with contingency, margin and discounts that are ranges themselves', () => {
    const lines = '  contingency 3..8%\n  overhead 10%\n  margin 15..25%\n  discount 2..5%\n';
    agrees(`${HEAD}${work('', '')}${price(lines)}`, SOME, 0.011);
  });

  test('with tax by line: work and costs, each to the penny of its row', () => {
    const text = `${HEAD}${work('', '  tax 5%\n')}${price('  profit 20%\n')}`;
    agrees(text, SOME, 0.021);
    agrees(text.replace('tax 5%', 'tax reverse-charge 20%'), SOME, 0.021);
  });

  test('where work is laid again for its length', () => {
    const wall =
      'wall north\n  brick red\n  stands held\n  length 4..5 m\n  height 8..11 courses\n  tax 5%\n';
    agrees(`${HEAD}${work('', '')}${wall}${price('  profit 20%\n')}`, SOME, 0.021);
  });

  test('an agreed price does not move, and what it leaves does', () => {
    const text = `${HEAD}${work('', '  tax 5%\n')}${price('  agreed £2,000.00 with tax\n')}`;
    const sampling = samplingOf(jobOf(text), new Runs())!;
    for (const paid of sampling.prices) expect(Math.abs(paid - 2000)).toBeLessThan(1e-6);
    expect(jobOf(text).price.leaves.ranged).toBe(true);
  });
});
