import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { afterWay, FIRM, findingsIn, silent, tells } from './tells';

const repair = (gauge: string) =>
  `perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  gauge ${gauge}\n  rebuild 900 mm x 4 courses\n`;

describe('gauge-off', () => {
  test('is told of a brick that needs joints nobody would accept to keep the gauge', () => {
    const [found] = tells(
      `
      perpend 1
      use "firm.perp"
      repair frost
        brick    red
        gauge    4 courses 330 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: Red facing needs a bed joint of 17.5 mm
        rebuild  900 mm x 4 courses
    `,
      {
        ways: [
          'Keep the gauge with bed joints of 17.5 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    expect(330 / 4 - 65).toBe(17.5);
    expect(found!.message).toContain('8 mm to 13 mm');
    // Its usual course is 300 / 4 = 75 mm, the standing one 330 / 4 = 82.5: 4 x 7.5 mm.
    expect(found!.message).toContain(
      'At its usual bed of 10 mm it is 30 mm below the standing courses after 4 courses.',
    );
  });

  test('is told of the brick that is bought to match, and one too high for any joint', () => {
    tells(
      `
      perpend 1
      use "firm.perp"
      brick tall "Tall one"
        size   215 x 102.5 x 80 mm
        price  £1 each
      repair frost
        brick    red
        match    tall
        gauge    4 courses 300 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: Tall one is too high to keep this gauge at all
        rebuild  900 mm x 4 courses
    `,
      {
        ways: [
          // 300 / 4 - 65 = 10 mm, and both are as long as the red brick that stands.
          'Red facing instead, bed joints of 10 mm',
          'Class B engineering brick instead, bed joints of 10 mm',
          'Standard brick instead, bed joints of 10 mm',
          'Cut each brick to 65 mm high, bed joints of 10 mm',
        ],
      },
    );
  });

  test('is not told within the joints that are accepted, nor without a gauge', () => {
    for (const gauge of ['4 courses 300 mm', '4 courses 292 mm', '4 courses 312 mm'])
      silent(repair(gauge), 'gauge-off');
    silent('perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  cut-out 3 bricks\n', 'gauge-off');
  });

  test('imperial standing work: a brick of the library that lines up is proposed, one of another length is not', () => {
    // 4 courses of 73 mm and 10 mm beds; a metric brick would need 83 - 65 = 18 mm.
    const text = (brick: string) => `perpend 1
use "firm.perp"
repair frost
  brick    ${brick}
  match    red
  gauge    4 courses 332 mm
  rebuild  960 mm x 12 courses
`;
    const ways = (brick: string) =>
      findingsIn(text(brick)).find((f) => f.code === 'gauge-off')!.ways;
    expect(ways('imperial-73').map((w) => w.title)).toEqual([
      'Imperial brick, 73 mm high instead, bed joints of 10 mm',
      'Keep the gauge with bed joints of 18 mm, wider or tighter than anyone would accept',
    ]);
    // Beside bricks of 215 mm, one of 230 mm leaves no joint at all: 215 + 10 - 230.
    expect(ways('red').map((w) => w.title)).toEqual([
      'Keep the gauge with bed joints of 18 mm, wider or tighter than anyone would accept',
    ]);
    for (const way of ways('imperial-73'))
      silent(afterWay(text('imperial-73'), way.edits), 'gauge-off');
    const drift = jobOf(text('imperial-73'), { 'firm.perp': FIRM }).works[0]!.figures.find(
      (f) => f.key === 'drift',
    )!;
    expect(drift.term.value.toNumber()).toBe(12 * (65 + 10 - 83));
  });

  test('the ends of the tolerance are told: they would do, or not even they', () => {
    const message = (gauge: string) => {
      const text = `perpend 1\nuse "firm.perp"\nbrick red\n  tolerance T1\nrepair r\n  brick red\n  gauge ${gauge}\n  rebuild 900 mm x 4 courses\n`;
      return findingsIn(text).find((f) => f.code === 'gauge-off')!.message;
    };
    // T1 of 65 mm is 3 mm (EN 771-1): 320 / 4 - 68 = 12 does, 330 / 4 - 68 = 14.5 does not.
    expect(message('4 courses 320 mm')).toContain(
      'With the largest that its tolerance (T1) allows it would be 12 mm: measure what is delivered.',
    );
    expect(message('4 courses 330 mm')).toContain(
      'Even the largest that its tolerance (T1) allows would need 14.5 mm.',
    );
    // 288 / 4 - 65 = 7 mm is too tight; the smallest would have 10.
    expect(message('4 courses 288 mm')).toContain(
      'With the smallest that its tolerance (T1) allows it would be 10 mm',
    );
  });

  test('in a wall or a pier with a gauge of its own, which is measured off what stands beside it', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  8 courses
          gauge   4 courses 332 mm
          ^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: Red facing needs a bed joint of 18 mm
        pier gate
          brick   red
          size    1 x 1 bricks
          height  8 courses
          gauge   4 courses 332 mm
          ^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: after 8 courses
      `,
      {
        ways: Array(2)
          .fill([
            'Imperial brick, 73 mm high instead, bed joints of 10 mm',
            'Keep the gauge with bed joints of 18 mm, wider or tighter than anyone would accept',
          ])
          .flat(),
      },
    );
  });

  test('a fit line that decides of a gauge which works changes nothing, and is told', () => {
    const text = repair('4 courses 300 mm\n  fit gauge joints');
    expect(findingsIn(text).map((f) => f.code)).toContain('fit-idle');
    silent(repair('4 courses 330 mm\n  fit gauge joints'), 'fit-idle');
  });
});

describe('gauge-tolerance', () => {
  test('is told of a brick whose own size keeps the gauge, and some that its tolerance allows do not', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      brick red
        tolerance T1
      repair frost
        brick    red
        gauge    4 courses 310 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^^ gauge-tolerance: Red facing needs bed joints of 9.5 mm to 15.5 mm
        rebuild  900 mm x 4 courses
    `);
    expect(found!.severity).toBe('information');
    // R1 of 65 mm: 0.60 times its root is 4.8, so 5 mm (from memory).
    expect(found!.message).toContain('Heights in one delivery may be 5 mm apart.');
  });

  test('is not told where all of them do, nor of what a maker declares more closely', () => {
    const text = (tolerance: string) =>
      `perpend 1\nuse "firm.perp"\nbrick red\n  tolerance ${tolerance}\nrepair r\n  brick red\n  gauge 4 courses 304 mm\n  rebuild 900 mm x 4 courses\n`;
    silent(text('T2'), 'gauge-tolerance');
    silent(text('4 x 3 x 2 mm'), 'gauge-tolerance');
    expect(() => silent(text('4 x 3 x 4 mm'), 'gauge-tolerance')).toThrow();
  });
});
