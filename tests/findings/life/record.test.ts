/** What is told of the record: a price that has moved, days and sums that cannot be, options that exclude each other. */
import { describe, expect, test } from 'vitest';
import { applied } from '../../harness/edits';
import { FIRM, findingsOf, silent, tells } from '../tells';

// 80 bricks and 1.6 h: £218.60, and with 10% and 20% £289 before tax, £346.80 with it.
const JOB = `perpend 1
use "firm.perp"
job "A"
  date 2026-03-02
wall north
  brick   red
  length  4490 mm
  height  4 courses
  stands  held
price
  overhead 10%
  profit 20%
option higher
  change north height 5 courses
option lower
  change north height 3 courses
  instead-of higher
`;

const found = (code: string, record: string, text = JOB, files = {}) =>
  findingsOf(code, `${text}record\n${record}`, files);

describe('sent-moved', () => {
  test('is told at the price that was sent, with the price now and what moved', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
          date 2026-03-09
        wall north
          brick   red
          length  4490 mm
          height  4 courses
          stands  held
        price
          overhead 10%
          profit 20%
        record
          sent 2026-03-02 £340.80
                          ^^^^^^^ sent-moved: The quote went out at £340.80 on 2026-03-02, and the job now comes to £346.80: £6.00 more. What moved: Red facing, cost (cost.red) £78.75, now £84.00.
            was cost.red £78.75
            was job.labour £69.60
      `,
      {
        ways: [
          'Record it as sent again on 2026-03-09 at £346.80',
          'Keep to the price: agreed £340.80 with tax',
        ],
      },
    );
  });

  test('says so where nothing was kept, and shows the biggest of many', () => {
    expect(found('sent-moved', '  sent 2026-03-02 £300.00\n')[0]!.message).toContain(
      'no “was” lines',
    );
    const many =
      '  sent 2026-03-02 £300.00\n    was job.labour £9\n    was cost.red £8\n    was cost.sand £7\n    was cost.lime £6\n    was cost.cement £5\n    was job.price £300\n';
    const [told] = found('sent-moved', many);
    expect(told!.message).toMatch(
      /What moved: Red facing, cost \(cost\.red\) £8\.00, now £84\.00; /,
    );
    expect(told!.message).toMatch(/; and \d more\.$/);
  });

  test('its ways out keep a price block that there is, and write one where there is none', () => {
    const [told] = found(
      'sent-moved',
      '  sent 2026-03-02 £340.80\n',
      JOB.replace(/price\n.*\n.*\n/, ''),
    );
    const way = told!.ways.find((w) => w.title.startsWith('Keep'))!;
    expect(way.edits.map((e) => e.text)).toEqual(['price\n  agreed £340.80 with tax\n\n']);
  });

  test('an agreed price is written anew where it has one', () => {
    const text = JOB.replace('profit 20%', 'profit 20%\n  agreed £250');
    const [told] = found('sent-moved', '  sent 2026-03-02 £340.80\n', text);
    expect(told!.ways.map((w) => w.title)).toEqual(['Keep to the price: agreed £340.80 with tax']);
    expect(told!.ways[0]!.edits.map((e) => e.text)).toEqual(['agreed £340.80 with tax']);
  });

  test('is told of a rate that another file gives, too', () => {
    const dearer = { 'firm.perp': FIRM.replace('price  £1 each', 'price  £2 each') };
    const record = '  sent 2026-03-02 £346.80\n    was cost.red £84\n';
    silent(`${JOB}record\n${record}`, 'sent-moved');
    expect(found('sent-moved', record, JOB, dearer)[0]!.message).toContain(
      'cost.red) £84.00, now £168.00',
    );
  });

  test('is told of what was accepted at a price, with its options', () => {
    const [told] = found(
      'sent-moved',
      '  sent 2026-03-02 £346.80\n  accepted 2026-03-05 higher £400.00\n',
    );
    expect(told!.message).toMatch(
      /^The client accepted £400\.00 on 2026-03-05, and the job now comes to £406\.80/,
    );
    expect(told!.place.line).toBe(JOB.split('\n').length + 1);
    for (const way of told!.ways) {
      const text = `${JOB}record\n  sent 2026-03-02 £346.80\n  accepted 2026-03-05 higher £400.00\n`;
      const after = applied(
        text,
        way.edits.map((e) => ({ span: e.place, text: e.text })),
      );
      expect(findingsOf('sent-moved', after)).toEqual([]);
    }
  });

  test('is not told while the price is not complete: that is told already', () => {
    silent(`${JOB.replace('4490 mm', '?')}record\n  sent 2026-03-02 £346.80\n`, 'sent-moved');
  });
});

describe('options-both', () => {
  test('is told where two are accepted of which only one can be', () => {
    const record = '  accepted 2026-03-05 higher lower\n';
    const [told] = found('options-both', record);
    expect(told!.message).toBe(
      'lower stands in place of higher: only one of them can be accepted. Take one out.',
    );
    expect(told!.place).toMatchObject({ line: JOB.split('\n').length, start: 29, end: 34 });
    expect(
      found('options-both', '  accepted 2026-03-05 higher\n  accepted 2026-03-06 lower\n'),
    ).toHaveLength(1);
    expect(found('options-both', '  accepted 2026-03-05 higher\n')).toEqual([]);
  });
});

describe('options-both, of two that change one line', () => {
  test('is told at the second, as one would undo the other', () => {
    const text = JOB.replace('  instead-of higher\n', '');
    const [told] = found('options-both', '  accepted 2026-03-05 higher lower\n', text);
    expect(told!.message).toBe(
      'higher and lower both change “north height”: only one of them can be accepted. Take one out.',
    );
    expect(found('options-both', '  accepted 2026-03-05 higher higher\n', text)).toEqual([]);
  });
});

describe('record-order', () => {
  test.each([
    [
      'accepted before it was sent',
      '  sent 2026-03-05 £346.80\n  accepted 2026-03-02\n',
      'warning',
    ],
    [
      'invoiced before it was accepted',
      '  accepted 2026-03-05\n  invoiced 2026-03-02 £9\n',
      'warning',
    ],
    [
      'paid before it was invoiced',
      '  invoiced 2026-03-05 £9\n  paid 2026-03-02 £9\n',
      'information',
    ],
    ['paid and never invoiced', '  paid 2026-03-02 £9\n', 'information'],
  ])('is told of what was %s', (_, record, severity) => {
    const [told] = found('record-order', record);
    expect(told!.severity).toBe(severity);
    expect(told!.message).toContain('2026-03-02');
  });

  test('is not told of days in their order, in whatever order of lines', () => {
    const record =
      '  paid 2026-03-09 £9\n  invoiced 2026-03-08 £9\n  accepted 2026-03-05\n  sent 2026-03-02 £346.80\n';
    expect(found('record-order', record)).toEqual([]);
  });
});

describe('record-over', () => {
  test.each([
    [
      'invoiced',
      '  sent 2026-03-02 £346.80\n  invoiced 2026-03-08 £200\n  invoiced 2026-03-09 £147\n',
      '£347.00 is invoiced in all, and the price is £346.80',
    ],
    [
      'paid',
      '  invoiced 2026-03-08 £100\n  paid 2026-03-09 £90 deducted £10.01\n',
      '£100.01 is paid in all, and £100.00 is invoiced',
    ],
    [
      'released',
      '  invoiced 2026-03-08 £100\n  retained 2026-03-09 £5\n  released 2026-09-09 £6\n',
      'More is released than was held back',
    ],
  ])('is told of what is %s', (_, record, says) => {
    expect(found('record-over', record).map((f) => f.message)).toEqual([
      expect.stringContaining(says),
    ]);
  });

  test('is not told of the whole price, invoiced and paid', () => {
    const record =
      '  sent 2026-03-02 £346.80\n  invoiced 2026-03-08 £346.80\n  paid 2026-03-09 £346.80\n';
    expect(found('record-over', record)).toEqual([]);
  });
});

describe('task-unknown', () => {
  test('is told of a task that the output block does not know', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        record
          worked 2026-03-09 2 people 7.5 h facewerk 410 bricks
                                           ^^^^^^^^ task-unknown: “facewerk” is no task of the output block. Did you mean “facework”?
        wall north
          brick   red
          length  2240 mm
          height  4 courses
          stands  held
      `,
      { ways: ['Write facework'] },
    );
  });
});
