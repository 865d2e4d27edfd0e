import { describe, expect, test } from 'vitest';
import { jobOf } from '../world';
import { errors } from './jobs';

const priced = (currency: string, cost: string, more = '') =>
  jobOf(
    `perpend 1\nuse uk\njob "A"\n  currency ${currency}\n  tax 10%\ncost all "All" 1 at ${cost}\nlabour\n  bricklayer 20 ${currency} per h\n  gang 1 bricklayer\nprice\n  profit 33%\n${more}`,
  );

// Digits after the point: ISO 4217, list one (JPY 0, KWD 3).
describe('any currency of ISO 4217', () => {
  test('without digits: yen', () => {
    const job = priced('JPY', '12345 JPY', '  stage "A" 33.3%\n  stage "B" rest\n');
    expect(errors(job)).toEqual([]);
    // 33% of 12,345 is 4,073.85; 16,419; 1,641.9.
    expect([job.price.price, job.price.tax, job.price.total].map((t) => t.value.toFixed())).toEqual(
      ['16419', '1642', '18061'],
    );
    expect(job.price.stages.map((s) => s.amount.value.toFixed())).toEqual(['6014', '12047']);
    expect(job.price.total.gaps).toEqual([]);
  });

  test('with three: Kuwaiti dinars', () => {
    const job = priced('KWD', '100.1255 KWD');
    // To the fils 100.126; 33% of it 33.042; 133.168; 13.317.
    expect([job.price.price, job.price.tax, job.price.total].map((t) => t.value.toFixed())).toEqual(
      ['133.168', '13.317', '146.485'],
    );
    expect(job.price.total.gaps).toEqual([]);
  });

  test('the library rounds to a pound, which says nothing of another currency; a firm’s own line does', () => {
    expect(priced('JPY', '12345 JPY', '  round 100 JPY\n').price.price.value.toFixed()).toBe(
      '16400',
    );
    const pounds = priced('JPY', '12345 JPY', '  round £5\n');
    expect(pounds.price.total.gaps.map((g) => g.what).join()).toContain('another currency');
  });
});
