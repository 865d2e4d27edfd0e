/** Packs where the need is a range: the spread of the price goes by the cheapest packs of each amount. */
import { expect, test } from 'vitest';
import { totalsOf } from '../../../server/engine/ide/totals';
import { jobOf } from '../world';

const job = (waste: string) =>
  jobOf(`perpend 1
use uk
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £1 each
mix own
  parts sand 1
  dry-volume 1
  waste ${waste}
  joint 10 mm
material sand
  pack 850 kg bulk-bag at £52
  pack 25 kg bag at £3
labour
  bricklayer £20 per h
  gang 1 bricklayer
wall w
  brick red
  mix own
  length 4490 mm
  height 20 courses
`);

test('from the least that could be needed to the most', () => {
  const cost = (waste: string) =>
    job(waste)
      .price.purchases.find((p) => p.name === 'sand')!
      .cost.value.toNumber();
  expect(cost('0%')).toBeLessThan(cost('60%'));
  const range = totalsOf(job('0..60%'))!.range;
  expect(range).toMatch(/£[\d,.]+ to £[\d,.]+/);
});
