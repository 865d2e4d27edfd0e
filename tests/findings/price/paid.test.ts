import { expect, test } from 'vitest';
import { pricedAs } from '../../harness/priced';
import { afterWay, findingsOf, silent, tells } from '../tells';

test('agreed-loss: the price agreed does not pay for the work', () => {
  tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        overhead 10%
        profit   20%
        agreed   £150
        ^^^^^^^^^^^^^ agreed-loss: The price agreed leaves a loss of £70.00: cost and overhead come to £220.00. Worked out, it would be £264.00 before tax
    `,
    { ways: ['Agree on £264.00'] },
  );
  silent(pricedAs('  overhead 10%\n  agreed £220\n'), 'agreed-loss');
});

test('agreed-loss: with tax, what it would be is with tax too', () => {
  const text = pricedAs('  agreed £200 with tax\n');
  const [found] = findingsOf('agreed-loss', text);
  expect(found!.message).toContain('leaves a loss of £33.33');
  expect(afterWay(text, found!.ways[0]!.edits)).toBe(pricedAs('  agreed £240 with tax\n'));
});

test('retention-idle: there are no stages to hold anything back of', () => {
  tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        retention 5% for 180 days
        ^^^^^^^^^^^^^^^^^^^^^^^^^ retention-idle: Retention is held back of each stage, and there are no stages
    `,
    { ways: ['Add a stage for all of it', 'Take the line out'] },
  );
  silent(pricedAs('  stage "All" rest\n  retention 5%\n'), 'retention-idle');
});

test('deduction-unknown: a scheme that no file gives', () => {
  tells(
    `
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        deducted cjs
                 ^^^ deduction-unknown: No file says what “cjs” deducts, so nothing is. Known are: cis, cis-unregistered
    `,
    { ways: ['Write cis'] },
  );
});

test('reverse-charge-words: no file says what the paper has to say', () => {
  tells(`
    perpend 1
    use us
    job "A"
      tax reverse-charge 20% "Tax"
      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ reverse-charge-words: No file says what a paper has to say where the client owes the tax
    cost skip "Skip" 1 at $200
    labour
      mason $40 per h
      gang  1 mason
  `);
  silent(
    pricedAs('').replace('job "A"', 'job "A"\n  tax reverse-charge 20%'),
    'reverse-charge-words',
  );
});
