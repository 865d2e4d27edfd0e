import { expect, test } from 'vitest';
import { silent, tells } from '../tells';

test('profit-and-margin: both in one block; either may go', () => {
  tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        margin 20%
        profit 20%
        ^^^^^^^^^^ profit-and-margin: Profit is said twice: as a mark-up (\`profit\`, of the cost) and as a margin (\`margin\`, of the price). The margin comes first and holds
    `,
    { ways: ['Keep the margin', 'Keep the mark-up'] },
  );
  silent('perpend 1\nuse "firm.perp"\njob "A"\nprice\n  margin 20%\n', 'profit-and-margin');
});

test('profit-and-margin: not where a firm says one and the job the other', () => {
  const files = { 'own.perp': 'perpend 1\nprice\n  profit 10%\n' };
  const text = 'perpend 1\nuse "firm.perp"\nuse "own.perp"\njob "A"\nprice\n  margin 20%\n';
  silent(text, 'profit-and-margin', files);
});

test('margin-over: a margin of all of the price is none, and was a mark-up perhaps', () => {
  const [found] = tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        margin 100%
               ^^^^ margin-over: A margin is a part of the price, and one of 100% leaves nothing to pay the cost with
    `,
    { ways: ['Make it a mark-up on cost'] },
  );
  expect(found!.severity).toBe('error');
});

test('discount-over: more off than there is', () => {
  tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        discount 50%
        discount £150
        ^^^^^^^^^^^^^ discount-over: The discounts come to more than the price: £250.00 off a price of £200.00
    `,
    { ways: ['Take the line out'] },
  );
});

test('discount-least: less than no job is done for', () => {
  tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        least    £190
        discount 10%
        ^^^^^^^^^^^^ discount-least: This takes £20.00 off a price of £200.00, and leaves £180.00: less than the least price of £190.00
    `,
    { ways: ['Take the line out'] },
  );
});
