import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, silent, tells } from './tells';

describe('per-unknown', () => {
  test('is told of rates by what no rate can be reckoned by, and no total counts them', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        labour
          mason  £30 per week
                         ^^^^ per-unknown: It can be h or day
                         ^^^^ incomplete: the rate of a mason is neither per h nor per day
          gang   1 mason + 1 labourer
        output
          facework  400 bricks per fortnight
                                   ^^^^^^^^^ per-unknown: It can be h or day
                                   ^^^^^^^^^ incomplete: the output of facework is neither per h nor per day
        travel
          run     2 x 10 km per day at £1 per furlong
                                              ^^^^^^^ per-unknown: Nothing is guessed at
                                              ^^^^^^^ incomplete: driving is per “furlong”
          charge  "Zone" £12 per visit
                                 ^^^^^ per-unknown: It can be day or job
                                 ^^^^^ incomplete: Zone is per “visit”
        cost hire "Hire" 1 at £5 per daay
                                     ^^^^ per-unknown: It can be day
                                     ^^^^ incomplete: Hire is per “daay”
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  4 courses
      `.replace(
        'gang   1 mason + 1 labourer\n                 ^ inc',
        'gang   1 mason + 1 labourer\n                         ^^^^ inc',
      ),
      { ways: ['Write day'] },
    );
  });

  test('an output in another measure than the work is counted by is a gap, not a number', () => {
    const job = jobOf(
      'perpend 1\nuse "firm.perp"\noutput\n  facework 2 m per h\nwall a\n  brick red\n  length 1790 mm\n  height 4 courses\n',
      { 'firm.perp': FIRM },
    );
    expect(job.price.hours.gaps.map((g) => g.what)).toEqual([
      'the output of facework is in m, but facework is reckoned in bricks',
    ]);
    expect(job.price.hours.value.toFixed()).toBe('0');
  });

  test('is not told of any way to write an hour, a day, a job or a length', () => {
    for (const h of ['h', 'hr', 'hour', 'day', 'days'])
      silent(`perpend 1\nuse uk\nlabour\n  mason £30 per ${h}\n`, 'per-unknown');
    for (const d of ['mile', 'miles', 'km', 'm'])
      silent(`perpend 1\nuse uk\ntravel\n  run 2 x 3 km per day at £1 per ${d}\n`, 'per-unknown');
    for (const c of ['day', 'job'])
      silent(`perpend 1\nuse uk\ntravel\n  charge "Zone" £1 per ${c}\n`, 'per-unknown');
  });
});
