import { describe, expect, test } from 'vitest';
import { jobOf } from '../world';
import { costing, errors } from './jobs';

const rows = (job: ReturnType<typeof costing>) =>
  job.price.deductions.map((d) => [d.title, d.base.value.toFixed(), d.amount.value.toFixed()]);

describe('tax deducted at source', () => {
  // GOV.UK, What you must do as a Construction Industry Scheme subcontractor: not of VAT, materials or plant hired.
  test('of labour: the price before tax, without what was bought and hired', () => {
    const job = costing('£400', '  profit 150%\n  deducted 20% of labour "Tax deducted"\n');
    expect(rows(job)).toEqual([['Tax deducted', '600', '120']]);
    expect(job.price.total.value.toFixed()).toBe('1200');
  });

  test('by a scheme of the country', () => {
    const cis = (word: string) => rows(costing('£400', `  profit 150%\n  deducted ${word}\n`));
    expect(cis('cis')).toEqual([['CIS tax deducted', '600', '120']]);
    expect(cis('cis-unregistered')).toEqual([['CIS tax deducted', '600', '180']]);
  });

  // Einkommensteuergesetz § 48: 15% of the consideration with its Umsatzsteuer.
  test('of the total, as in Germany', () => {
    const job = jobOf(
      'perpend 1\nuse de\njob "A"\ncost all "Alles" 1 at 1000 €\nlabour\n  maurer 40 € per h\n  gang 1 maurer\nprice\n  deducted bauabzug\n',
    );
    expect([errors(job), rows(job)]).toEqual([[], [['Bauabzugsteuer', '1190', '178.5']]]);
  });

  test('is never less than nothing', () => {
    expect(rows(costing('£400', '  agreed £300\n  deducted cis\n'))[0]!.slice(1)).toEqual([
      '0',
      '0',
    ]);
  });
});
