/** A quote that offers options, takes the place of another, or says the work in the firm’s own words. */
import { describe, expect, test } from 'vitest';
import { changesPaper } from '../../../server/documents/changes/paper';
import { invoicePaper } from '../../../server/documents/invoice/paper';
import { quotePaper, quoteView } from '../../../server/documents/quote';
import { sitePaper } from '../../../server/documents/site/paper';
import { compared } from '../../../server/engine/compare';
import { showTerm } from '../../../server/engine/views/show';
import { madeOf, ODD, oddJob } from './jobs';
import { markdownText } from './read';

const quoteOf = (text: string) => markdownText(quotePaper(quoteView(oddJob(text)), undefined, '1'));
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

const OPTIONS = `${ODD.plain}
option higher "Two courses more"
  note    "Higher than the lane looks over."
  change  walnorth height 14 courses

option lower
  instead-of  higher
  change      walnorth height 10 courses
`;

describe('options on a quote', () => {
  const view = quoteView(oddJob(OPTIONS));

  test('have their titles, never their names, and what is done with them', () => {
    expect(view.options.map(({ title }) => title)).toEqual(['Two courses more', 'Option 2']);
    expect(view.options[0]!.says).toEqual([
      'Wall along the lane: Build a wall 5 m long and 1.05 m high, one brick thick, in Oddmouth red facing.',
    ]);
    expect(view.options.map(({ notWith }) => notWith)).toEqual([
      ['Option 2'],
      ['Two courses more'],
    ]);
  });

  test('are priced side by side: the difference and the price with each, tax in them', () => {
    const job = oddJob(OPTIONS);
    const text = plain(quoteOf(OPTIONS));
    for (const { more, price, title, block } of job.options.priced) {
      const called = title === block.name ? 'Option 2' : title;
      const sign = more.total.value.gt(0) ? '+' : '';
      expect(price.total.value.sub(job.price.total.value).eq(more.total.value)).toBe(true);
      expect(text).toContain(
        plain(
          `| ${called} | ${sign}${showTerm(more.total, job.env)} | ${showTerm(price.total, job.env)} |`,
        ),
      );
    }
    expect(text).toContain(plain(`| As quoted above |  | ${showTerm(job.price.total, job.env)} |`));
    expect(text).toContain('Not together with: Option 2.');
    expect(text).toContain('Higher than the lane looks over.');
  });

  test('of a job that is no quote yet have no price', () => {
    const open = quoteView(oddJob(OPTIONS.replace('3.25 m', '?')));
    expect(open.draft).toBeDefined();
    expect(open.options.map(({ more, price }) => [more.text, price.text])).toEqual([
      [undefined, undefined],
      [undefined, undefined],
    ]);
  });

  test('that bring an error up have none either', () => {
    const wrong = quoteView(
      oddJob(OPTIONS.replace('walnorth height 10 courses', 'walnorth height x')),
    );
    expect(wrong.options.at(-1)!.price.text).toBeUndefined();
  });
});

describe('a quote after another', () => {
  const sent = (record: string, text = ODD.plain!) =>
    quoteView(oddJob(`${text}\nrecord\n${record}`));
  const total = oddJob(ODD.plain!).price.total.value.toFixed(2);

  test.each([
    ['none', '', ''],
    ['the same, printed again', `  sent 2026-01-15 £${total}\n`, ''],
    ['one of another price', '  sent 2026-01-10 £99.00\n', '2026-01-10'],
    ['one of another price on the same day', '  sent 2026-01-15 £99.00\n', '2026-01-15'],
    [
      'the second of two, printed again',
      `  sent 2026-01-10 £99.00\n  sent 2026-01-15 £${total}\n`,
      '2026-01-10',
    ],
    ['an earlier one of the same price', `  sent 2026-01-10 £${total}\n`, '2026-01-10'],
  ])('takes the place of %s', (_, record, day) => {
    expect(sent(record).replaces).toBe(day);
  });

  test('says so, and which', () => {
    const text = quoteOf(`${ODD.plain}\nrecord\n  sent 2026-01-10 £99.00\n`);
    expect(text).toMatch(/^# Revised quote$/m);
    expect(text).toContain('It takes the place of our quote of 10 January 2026.');
    expect(text).not.toContain('99.00');
    expect(quoteOf(ODD.plain!)).toMatch(/^# Quote$/m);
  });
});

describe('the firm’s own words', () => {
  const OWN = ODD.plain!.replace(
    '  note ',
    '  says    "We build the lane wall anew."\n  says    "With its gate."\n  note ',
  );

  test('stand on the papers of a client in the place of what is made from the work', () => {
    const papers = [
      quoteOf(OWN),
      markdownText(
        invoicePaper(madeOf(oddJob(OWN.replace('', '')), whole()), undefined, undefined, '1'),
      ),
    ];
    for (const text of papers) {
      expect(text).toContain('- We build the lane wall anew.\n- With its gate.');
      expect(text).not.toContain('Build a wall 5 m long');
      // The other wall says nothing of its own.
      expect(text).toContain('Build a wall 3.25 m long');
    }
    expect(quoteOf(OWN)).toContain('The hedge is cut back by the owner.');
  });

  test('and a note of changes tells when they change', () => {
    const between = compared(oddJob(ODD.plain!), oddJob(OWN));
    const text = markdownText(changesPaper(oddJob(OWN), between, undefined, '1'));
    expect(text).toContain('Now: We build the lane wall anew.');
    expect(text).toContain('Before: Build a wall 5 m long');
  });

  test('do not stand on the site sheet, where the sizes count', () => {
    const text = markdownText(sitePaper(oddJob(OWN), undefined, '1'));
    expect(text).toContain('Build a wall 5 m long');
    expect(text).not.toContain('lane wall anew');
  });

  function whole() {
    return { amount: oddJob(OWN).price.total.value };
  }
});

describe('what a quote says of its rounding', () => {
  test.each([
    [
      'plain',
      'Rounded: the price before tax to the nearest £5.00, VAT and stages to the nearest £0.01, halves up.',
    ],
    [
      'discounts',
      'Rounded: the price before discounts to the nearest £5.00, discounts, what each rate is on, VAT and stages to the nearest £0.01, halves up.',
    ],
    [
      'retention and deductions',
      'Rounded: the price before tax to the nearest £5.00, VAT, stages and what is held back to the nearest £0.01, halves up.',
    ],
  ])('of a job with %s', (name, said) => {
    expect(plain(quoteView(oddJob(ODD[name]!)).rounding)).toBe(said);
  });
});

test('a contingency is never told to a client, title or no title', () => {
  for (const title of ['', ' "Old footings"']) {
    const text = quoteOf(`${ODD.plain}\nprice\n  contingency 4.9%${title}\n`);
    expect(text).not.toMatch(/contingency|4\.9%|Old footings/);
  }
});
