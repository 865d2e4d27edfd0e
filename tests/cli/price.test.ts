import { describe, expect, test } from 'vitest';
import { FILES, FIRM, JOB } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

/** The amount that ends a table's row, in pence; the row is found by how it begins. */
function pence(report: string, row: string): number {
  const line = report.split('\n').find((each) => each.startsWith(`  ${row}`));
  const found = /(−?)£([\d,]+)\.(\d\d)(?: |$)/.exec(line ?? '');
  if (!found) throw new Error(`No row ${row} with an amount:\n${report}`);
  return Number(`${found[1] ? '-' : ''}${found[2]!.replaceAll(',', '')}${found[3]}`);
}

/** The rows of a table between its title and the next empty line. */
function rows(report: string, title: string): string[] {
  const lines = report.split('\n');
  const from = lines.indexOf(title);
  if (from < 0) throw new Error(`No table ${title}:\n${report}`);
  return lines.slice(from + 1, lines.indexOf('', from));
}

function sumOf(lines: readonly string[], report: string): number {
  return lines.reduce((sum, line) => sum + pence(report, line.trim().split(/ {2}/)[0]!), 0);
}

/** Parts of the price that are no piece of work: costs taxed by themselves. */
function permitOf(report: string): number {
  const own = report.split('\n').filter((row) => /^ {2}(No VAT|VAT .* owed)/.test(row));
  return own.reduce((sum, row) => {
    const [, base] = / of £([\d,.]+)/.exec(row)!;
    return sum + Math.round(Number(base!.replaceAll(',', '')) * 100);
  }, 0);
}

/** @param beside pence of the price before tax that no piece of work bears */
function addsUp(report: string, beside = 0): void {
  const bought = rows(report, 'To buy').filter((row) => /£/.test(row) && !/Materials/.test(row));
  expect(bought.length).toBeGreaterThan(2);
  expect(sumOf(bought, report)).toBe(pence(report, 'Materials'));
  const table = rows(report, 'Price');
  const at = (start: string) => table.findIndex((row) => row.startsWith(`  ${start}`));
  const [cost, net, total] = [at('Cost'), at('Price before tax'), at('Price  ')];
  const part = (from: number, to: number) => sumOf(table.slice(from, to), report);
  expect(part(0, cost)).toBe(pence(table.join('\n'), 'Cost'));
  expect(part(cost + 1, net) + pence(table.join('\n'), 'Cost')).toBe(
    pence(report, 'Price before tax'),
  );
  expect(part(net, total)).toBe(pence(report, 'Price  '));
  const stages = rows(report, 'Paid in stages');
  expect(sumOf(stages, report)).toBe(pence(report, 'Price  '));
  const parts = report.split('\n').filter((line) => /^ {2}Part of the price/.test(line));
  expect(parts.reduce((sum, line) => sum + pence(line, 'Part'), 0) + beside).toBe(
    pence(report, 'Price before tax'),
  );
}

describe('perpend price', () => {
  test('shows work, what to buy, and the price, in at most 80 columns', () => {
    const cwd = folderOf(FILES);
    const { code, out, err } = perpend(['price', 'job.perp'], { cwd });
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n').slice(0, 3)).toEqual([
      'Long garden wall',
      'T. Alder, 4 Weir Lane',
      'ref 26-107, 2026-01-15, job.perp',
    ]);
    for (const part of ['Wall along the lane (wall walnorth)', 'wall walsouth', 'To buy', 'Price'])
      expect(out).toContain(`\n${part}\n`);
    expect(out.split('\n').filter((line) => line.length > 80 && !line.includes('perpend'))).toEqual(
      [],
    );
    expect(out).not.toContain('\u001b');
    expect(out).not.toContain('\u00a0');
  });

  // Amounts that divide badly, steps of rounding, a least price, and none of them.
  const prices: [string, string][] = [
    ['as the firm has it', 'round     £5'],
    ['to the penny', 'round     £0.01'],
    ['to the hundred', 'round     £100'],
    ['at a least price', 'least     £9,999.00\n  round     £5'],
  ];
  test.each([
    ['round     £5', 'Rounding'],
    ['least     £9,999.00', 'Up to the least price'],
  ])('%s: what it puts on is called %s', (line, label) => {
    const firm = FIRM.replace('round     £5', line);
    const cwd = folderOf({ 'firm.perp': firm, 'job.perp': JOB });
    const labels = rows(perpend(['price', 'job.perp'], { cwd }).out, 'Price').map(
      (row) => row.trim().split(/ {2}/)[0]!,
    );
    expect(labels.filter((each) => /Rounding|least/.test(each))).toEqual([label]);
  });

  test.each(prices)('adds up: rounded %s', (_, round) => {
    const firm = FIRM.replace('round     £5', round).replace('30%', '33.3%');
    const cwd = folderOf({ 'firm.perp': firm, 'job.perp': JOB });
    addsUp(perpend(['price', 'job.perp'], { cwd }).out);
  });

  test('adds up in the example', () => {
    addsUp(perpend(['price', 'examples/garden-wall/job.perp']).out);
  });

  // Every step that a price can have, and rows of tax of each kind.
  const steps = (more = '') => `
cost permit "Permit" 1 at £77.77
  tax none "Paid for the client"

cost crane "Crane" 1 at £310
  tax reverse-charge 20%

price
  contingency 3.3% "Old footings"
  overhead 9%
  margin 17%
  discount 2.5% "Second job"
  discount £11.11
  stage "Deposit" 25%
  stage "Done" rest
  retention 5% for 180 days
  deducted cis
${more}`;

  test('adds up: contingency, a margin, discounts, several rates, retention', () => {
    const cwd = folderOf({ 'firm.perp': FIRM, 'job.perp': `${JOB}${steps()}` });
    const { out } = perpend(['price', 'job.perp'], { cwd });
    addsUp(out, permitOf(out));
    for (const row of ['Contingency 3.3%', 'Profit, by its margin', 'Second job, 2.5%', 'No VAT'])
      expect(out).toContain(`  ${row}`);
    expect(out).toMatch(/VAT 20%, owed by the client +£0\.00 +of £[\d,.]+: £/);
    expect(out).toMatch(/^ {2}Held back for 180 days +£/m);
    expect(out).toMatch(/^ {2}CIS tax deducted +£[\d,.]+ +20% of £[\d,.]+ kept back$/m);
  });

  test('of a price that is agreed, adds up, and says what it leaves and would have been', () => {
    const cwd = folderOf({
      'firm.perp': FIRM,
      'job.perp': `${JOB}${steps('  agreed £4,000.00 with tax\n')}`,
    });
    const { out } = perpend(['price', 'job.perp'], { cwd });
    addsUp(out, permitOf(out));
    expect(pence(out, 'Price  ')).toBe(400_000);
    expect(rows(out, 'What it leaves').map((row) => row.trim().split(/ {2}/)[0])).toEqual([
      'Profit',
      'Earned for each hour paid',
      'Worked out, before tax',
      'CIS tax deducted',
    ]);
    expect(rows(out, 'Price').join('\n')).not.toContain('Second job');
  });

  test('a reader of amounts that adds wrongly is caught', () => {
    const cwd = folderOf(FILES);
    const { out } = perpend(['price', 'job.perp'], { cwd });
    const wrong = out.replace(/(Labour.*£\d+\.\d)\d/, (_, row: string) => `${row}x`);
    expect(() => addsUp(wrong)).toThrow();
  });

  test('says the range beside the price', () => {
    const cwd = folderOf(FILES);
    const { out } = perpend(['price', 'ranged.perp'], { cwd });
    const found = /^ {2}Price +£([\d,.]+) +\(£([\d,.]+) to £([\d,.]+)\)$/m.exec(out);
    const [price, low, high] = found!.slice(1).map((text) => Number(text.replaceAll(',', '')));
    expect(low).toBeLessThan(price!);
    expect(high).toBeGreaterThan(price!);
    // More salvage is never dearer: so the ends are the prices a tenth of the range from either end of it.
    const ends = ['73.5%', '61.5%'].map((share) => {
      const job = FILES['ranged.perp'].replace('60..75%', share);
      return pence(perpend(['price', '-'], { cwd, input: job }).out, 'Price  ') / 100;
    });
    expect([low, high]).toEqual(ends);
  });

  test('says that a price is incomplete, and why; other totals stand', () => {
    const cwd = folderOf(FILES);
    const { code, out } = perpend(['price', 'half.perp'], { cwd });
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}Price .* INCOMPLETE$/m);
    expect(out).toContain('The price is INCOMPLETE. It still lacks:\n');
    expect(out).toMatch(/^ {2}- .*walsouth/m);
    const block = rows(out, 'Wall along the lane (wall walnorth)');
    expect(
      block.filter((row) => /Bricks|Mortar|Hours/.test(row) && /incomplete/.test(row)),
    ).toEqual([]);
  });

  test('an amount that is not known is a question mark, not a nought', () => {
    const input = 'perpend 1\n\nuse uk\n\nwall a\n  length 3 m\n  height 6 courses\n';
    const { out } = perpend(['price', '-'], { input });
    expect(out).toMatch(/^ {2}Standard brick .* \?$/m);
    expect(out).toMatch(/^ {2}Price +\? +INCOMPLETE$/m);
    expect(out).not.toContain('0.00');
  });

  test('names errors, in the file and in those it uses, and exits with 1', () => {
    const cwd = folderOf({ ...FILES, 'firm.perp': FIRM.replace('waste  6%', 'waste  six') });
    const wrong = perpend(['price', 'wrong.perp'], { cwd });
    expect(wrong.code).toBe(1);
    expect(wrong.out).toMatch(/^\d errors?,.*: perpend check wrong\.perp$/m);
    const used = perpend(['price', 'job.perp'], { cwd });
    expect(used.code).toBe(1);
    expect(used.out).toContain('firm.perp is used and has 1 error: perpend check firm.perp');
  });

  test('a file without work says so', () => {
    const cwd = folderOf(FILES);
    const { code, out } = perpend(['price', 'firm.perp'], { cwd });
    expect([code, out.split('\n')[0]]).toEqual([0, 'firm.perp holds no work to price.']);
  });

  test('takes several files', () => {
    const cwd = folderOf(FILES);
    const { out } = perpend(['price', 'job.perp', 'ranged.perp'], { cwd });
    const alone = ['job.perp', 'ranged.perp'].map((file) => perpend(['price', file], { cwd }).out);
    expect(out).toBe(alone.join('\n\n'));
  });
});
