/** What is told of invoices and of money held back: numbers, tax numbers, days. */
import { describe, expect, test } from 'vitest';
import { FIRM, findingsOf, silent, tells } from '../tells';

const OWN = { 'firm.perp': `${FIRM}firm "Harrow & Lane"\n` };
const JOB = 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £1000\n';
const found = (code: string, record: string, text = JOB, files = {}) =>
  findingsOf(code, `${text}record\n${record}`, files);

describe('invoice-number-twice', () => {
  test('is told at the second, leads to the first and offers the next that is free', () => {
    const [told] = tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        cost skip "Skip" 1 at £1000
        record
          invoiced 2026-03-08 £400 as 2026-099
          invoiced 2026-03-20 £800 as 2026-099
                                      ^^^^^^^^ invoice-number-twice: The invoice of 2026-03-08 has the number “2026-099” too
      `,
      { ways: ['Write 2026-100'] },
    );
    expect(told!.related.map((r) => r.place)).toMatchObject([{ line: 5, start: 30, end: 38 }]);
  });

  test('the next that is free is none that the record has', () => {
    const record = ['7', '7', '8', '9'].map((n) => `  invoiced 2026-03-08 £1 as A-${n}\n`);
    expect(found('invoice-number-twice', record.join('')).map((f) => f.ways[0]!.title)).toEqual([
      'Write A-10',
    ]);
  });

  test('a number without figures has no next one', () => {
    const record = '  invoiced 2026-03-08 £1 as A\n  invoiced 2026-03-09 £1 as A\n';
    expect(found('invoice-number-twice', record).map((f) => f.ways)).toEqual([[]]);
  });

  test('is not told of different numbers, nor of invoices without one', () => {
    const record = '  invoiced 2026-03-08 £1\n  invoiced 2026-03-09 £1\n';
    silent(`${JOB}record\n${record}`, 'invoice-number-twice');
    silent(
      `${JOB}record\n  invoiced 2026-03-08 £1 as 26-1\n  invoiced 2026-03-09 £1 as 26-2\n`,
      'invoice-number-twice',
    );
  });
});

describe('lost-accepted', () => {
  test('is told where the job is lost after the client said yes; either line can go', () => {
    const [told] = tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        cost skip "Skip" 1 at £1000
        record
          accepted 2026-03-08
          lost     2026-03-20 "too dear"
                   ^^^^^^^^^^ lost-accepted: It was accepted on 2026-03-08, and is lost on 2026-03-20
      `,
      { ways: ['Take out that it is lost', 'Take out that it was accepted'] },
    );
    expect(told!.severity).toBe('warning');
  });

  test('is not told of one that came back, or was only lost', () => {
    const back = '  lost 2026-03-08 "too dear"\n  accepted 2026-03-20\n';
    silent(`${JOB}record\n${back}`, 'lost-accepted');
    silent(`${JOB}record\n  lost 2026-03-08 "too dear"\n`, 'lost-accepted');
  });
});

describe('record-over, of money held back', () => {
  test('is told on the day of each release of more than is held then, with what is held', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        cost skip "Skip" 1 at £1000
        record
          invoiced 2026-03-08 £1200
          retained 2026-03-09 £60
          released 2026-09-09 £75
                              ^^^ record-over: on 2026-09-09 £60.00 is held, and £75.00 is released
      `,
      { ways: ['Write £60.00'] },
    );
  });

  test('though as much is held back later', () => {
    const record =
      '  invoiced 2026-03-08 £500\n  released 2026-03-09 £10\n  retained 2026-04-09 £20\n';
    const [told] = found('record-over', record);
    expect(told!.message).toContain('on 2026-03-09 nothing is held');
    expect(told!.ways.map((way) => way.title)).toEqual(['Take the line out']);
  });

  test('is not told of what is released in two parts', () => {
    const record =
      '  retained 2026-03-09 £60\n  released 2026-06-09 £30\n  released 2026-09-09 £30\n';
    expect(found('record-over', record)).toEqual([]);
  });
});

describe('tax-number-missing', () => {
  const RECORD = '  invoiced 2026-03-08 £1200 as 26-1\n';

  test('is told once the firm invoices tax and gives no number', () => {
    const [told] = tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        cost skip "Skip" 1 at £1000
        record
          invoiced 2026-03-08 £1000 as 26-1
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ tax-number-missing: VAT is charged, and the firm’s block gives no tax-number
      `,
      { files: OWN, ways: ['Charge none: the firm is not registered'] },
    );
    expect(told!.severity).toBe('information');
    expect(told!.fills!.map((way) => way.edits[0]!.text)).toEqual([
      // biome-ignore lint/suspicious/noTemplateCurlyInString: a place to fill in, as editors write it
      '\n  tax-number "${1:? number}"',
    ]);
    expect(told!.fills![0]!.edits[0]!.place.file).toMatch(/firm\.perp$/);
  });

  test('a tax line of the job is written anew', () => {
    const [told] = found('tax-number-missing', RECORD, JOB.replace('"A"', '"A"\n  tax 20%'), OWN);
    expect(told!.ways[0]!.edits).toMatchObject([{ text: expect.stringMatching(/^tax none "/) }]);
  });

  test.each([
    ['before anything is invoiced', '  accepted 2026-03-08\n', JOB, OWN],
    ['with no tax', RECORD, JOB.replace('"A"', '"A"\n  tax none "Small firm"'), OWN],
    ['with no firm', RECORD, JOB, {}],
    [
      'with its number',
      RECORD,
      JOB,
      { 'firm.perp': `${OWN['firm.perp']}  tax-number "GB 999 0000 00"\n` },
    ],
  ])('is not told %s', (_, record, text, files) => {
    expect(found('tax-number-missing', record, text, files)).toEqual([]);
  });
});
