/** The price on a quote: discounts, several taxes, what the client owes himself, what is held back. */
import { describe, expect, test } from 'vitest';
import { quoteView } from '../../server/documents/quote';
import { costing } from '../engine/price/jobs';
import { jobOf } from '../engine/world';

const WORK = `repair a "Patch"
  brick red
  mix dry
  cut-out 10 bricks
`;
const HEAD = `perpend 1
use uk
job "A"
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £1 each
  waste  0%
mix dry
  parts  sand 1
  joint  10 mm
material sand
  price  £0 per t
labour
  bricklayer  £20 per h
  gang        1 bricklayer
  part-day    0 day
output
  cut-out  1 brick per h
  repoint-joints 100 m per h
`;

const view = (more: string) => quoteView(jobOf(`${HEAD}${WORK}${more}price\n  round £0\n${PRICE}`));
const PRICE = '  discount 10% "Second job"\n  stage "All" rest\n  retention 5% for 180 days\n';
const rows = (of: readonly { label: string; text: string | undefined }[]) =>
  of.map(({ label, text }) => `${label}: ${text}`.replaceAll('\u00a0', ' '));

describe('the price of a quote', () => {
  // 10 bricks at £21 and a skip of £90: £300, less a tenth.
  test('with a discount and taxes of three kinds adds up', () => {
    const told = view(
      'cost skip "Skip" 1 at £60\n  tax none "Paid for you"\ncost crane "Crane" 1 at £30\n  tax reverse-charge 20%\n',
    );
    expect(told.draft).toBeUndefined();
    expect(rows([...told.off, told.net, ...told.taxes, told.total])).toEqual([
      'Price before discounts: £300.00',
      'Second job, 10%: −£30.00',
      'Price before tax: £270.00',
      'VAT at 20% on £189.00: £37.80',
      'No VAT on £54.00: £0.00',
      'VAT at 20% on £27.00: £0.00',
      'Total: £307.80',
    ]);
    expect(rows(told.stages)).toEqual([
      'All: £292.41',
      'Held back, and paid 180 days after the work is done: £15.39',
    ]);
    expect(told.reasons.map(({ text }) => text)).toEqual([
      'Paid for you',
      'Reverse charge: customer to pay the VAT to HMRC. VAT at 20%, £5.40, is not charged here: you pay it to the tax office.',
    ]);
  });

  test('says to what the price before discounts is rounded', () => {
    expect(view('').rounding).toBe(
      'Rounded: discounts, VAT, stages and what is held back to the nearest £0.01, halves up.',
    );
    const rounded = quoteView(jobOf(`${HEAD}${WORK}price\n  round £5\n  discount £1\n`));
    expect(rounded.rounding).toContain('the price before discounts to the nearest £5.00');
  });

  test('while it is none, names no amount, not even what a tax is on', () => {
    const open = quoteView(
      costing(
        '£100',
        '  discount 10%\n',
        '',
        'cost skip "S" 1 at £60\n  tax none "x"\nwall w\n  length ?\n',
      ),
    );
    expect(open.draft).toBeDefined();
    expect(
      JSON.stringify([open.off, open.net, open.taxes, open.total, open.reasons]),
    ).not.toContain('£');
  });
});
