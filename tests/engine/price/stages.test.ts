import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { ZERO } from '../../../shared/exact';
import { costing } from './jobs';

const STAGES = '  stage "Deposit" 25%\n  stage "On completion" rest\n';

describe('retention', () => {
  test('is held of each stage: what is paid, and what is paid later', () => {
    const { stages, retention } = costing('£1000', `${STAGES}  retention 5% for 180 days\n`).price;
    const told = stages.map((s) => [s.amount, s.held!, s.due].map((t) => t.value.toFixed()));
    expect(told).toEqual([
      ['300', '15', '285'],
      ['900', '45', '855'],
    ]);
    expect([retention!.amount.value.toFixed(), retention!.days!.value.toFixed()]).toEqual([
      '60',
      '180',
    ]);
  });

  test('stages and retention add up to the price to the penny', () => {
    const part = fc.integer({ min: 1, max: 4900 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), part, part, part, (cost, a, b, held) => {
        const job = costing(
          `£${cost / 100}`,
          `  stage "A" ${a / 100}%\n  stage "B" ${b / 100}%\n  stage "C" rest\n  retention ${held / 100}%\n`,
        );
        const { stages, retention, total } = job.price;
        const due = stages.reduce((sum, s) => sum.add(s.due.value), ZERO);
        expect(due.add(retention!.amount.value).eq(total.value)).toBe(true);
        expect(due.decimalPlaces()).toBeLessThanOrEqual(2);
      }),
      { numRuns: 40 },
    );
  });

  test('none where none is said, or where there are no stages', () => {
    expect(costing('£1000', STAGES).price.retention).toBeUndefined();
    expect(costing('£1000', '  retention 5%\n').price.retention).toBeUndefined();
  });
});
