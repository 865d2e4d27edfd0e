/** Hours of a gang: laying and serving, what goes round a day, loading out; and what part of the cost is time. */
import { describe, expect, test } from 'vitest';
import { allFigures } from '../../server/engine/views/job-view';
import { jobOf } from './world';

const FIRM = `perpend 1
use uk
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £0.50 each
  waste  0%
price
  round £0
`;
const WALL = `wall a
  brick   red
  stands  held
  length  4490 mm
  height  10 courses
`;

/** 20 stretchers x 10 courses: 200 bricks. */
function figures(lines: string, wall = WALL): (key: string) => number {
  const all = new Map(allFigures(jobOf(`${FIRM}${lines}${wall}`)).map((f) => [f.key, f.term]));
  return (key) => Number(all.get(key)!.value.toFixed(6));
}

const LABOUR = (gang: string, more = '') =>
  `labour\n  bricklayer £20 per h\n  labourer £10 per h\n  gang ${gang}\n  day 8 h\n${more}`;
const RATES = 'output\n  facework 50 bricks per h\nserving\n  facework 80 bricks per h\n';

describe('the slower of laying and serving', () => {
  test('laying, where one serves one', () => {
    // 200 / 50 = 4 h; one serves 80 an hour.
    expect(figures(LABOUR('1 bricklayer + 1 labourer') + RATES)('a.hours')).toBe(4);
  });

  test('serving, where one serves two', () => {
    // Two lay 100 an hour, one serves 80: 200 / 80 = 2.5 h.
    expect(figures(LABOUR('2 bricklayers + 1 labourer') + RATES)('a.hours')).toBe(2.5);
  });

  test('serving, where half a labourer serves one', () => {
    // 200 / (80 / 2) = 5 h.
    expect(figures(LABOUR('1 bricklayer + 0.5 labourer') + RATES)('a.hours')).toBe(5);
  });

  test('one alone is reckoned by his own output', () => {
    expect(figures(LABOUR('1 bricklayer') + RATES)('a.hours')).toBe(4);
  });

  /**
   * QS hours a square metre (lecture notes, scribd 617796324): half-brick wall in common bricks, bricklayer 1.00,
   * labourer 0.35. Sixty bricks a square metre: one lays 60 an hour, one serves 60 / 0.35 = 171. So a labourer serves
   * 2.86 bricklayers: with two the laying governs, with three the serving.
   */
  test('QS hours: one labourer serves two bricklayers, and not three', () => {
    const rates = 'output\n  facework 60 bricks per h\nserving\n  facework 171.4286 bricks per h\n';
    const two = figures(LABOUR('2 bricklayers + 1 labourer') + rates)('a.hours');
    const three = figures(LABOUR('3 bricklayers + 1 labourer') + rates)('a.hours');
    expect(two).toBeCloseTo(200 / 120, 5);
    expect(three).toBeCloseTo(200 / 171.4286, 5);
  });
});

describe('what goes round a day', () => {
  const around = '  set-up 30 min per day\n  clear-up 30 min per day\n  part-day 0.5 day\n';

  test('leaves less of it for the work, and is paid', () => {
    const of = figures(`${LABOUR('1 bricklayer', around)}output\n  facework 25 bricks per h\n`);
    // 200 / 25 = 8 h; seven are left of a day: 1.14 days, so 1.5, which is two mornings: 8 + 2 x 1 = 10 h at £20.
    expect([of('job.hours'), of('job.days'), of('job.paid'), of('job.labour')]).toEqual([
      8, 1.5, 10, 200,
    ]);
  });

  test('driving too, where it is of the paid day', () => {
    const travel = 'travel\n  time 60 min per day\n';
    const of = figures(
      `${LABOUR('1 bricklayer', around)}${travel}output\n  facework 50 bricks per h\n`,
    );
    // 4 h; six are left of a day: 0.67, so one day; 4 + 2 = 6 h.
    expect([of('job.days'), of('job.paid')]).toEqual([1, 6]);
  });

  test('is borne by each hour of the work alike', () => {
    const rates = 'output\n  facework 50 bricks per h\n  pier-work 2 bricks per h\n';
    const pier = 'pier b\n  brick red\n  size 1 x 1 bricks\n  height 4 courses\n';
    const of = figures(LABOUR('1 bricklayer', around) + rates + pier);
    // 4 h on 200 bricks at 50p, 4 h on eight; 8 h are 1.5 days, driven to twice: 10 h paid, £100 on each.
    expect([of('a.hours'), of('b.hours'), of('job.paid')]).toEqual([4, 4, 10]);
    expect([of('a.cost'), of('b.cost')]).toEqual([200, 104]);
  });

  test('takes all of it: no number of days will do, and that is said', () => {
    const job = jobOf(
      `${FIRM}${LABOUR('1 bricklayer', '  set-up 8 h per day\n')}output\n  facework 50 bricks per h\n${WALL}`,
    );
    expect(job.price.total.gaps.map((g) => g.what)).toContain('left of a day for the work is zero');
  });
});

test('bricks bought are loaded out by all hands, where the firm reckons it', () => {
  const lines = `${LABOUR('1 bricklayer + 1 labourer')}output\n  facework 50 bricks per h\n  load-out 400 bricks per h\n`;
  const of = figures(lines);
  // 200 / (400 x 2) = 0.25 h beside 4 h of laying.
  expect([of('job.load-out'), of('job.hours')]).toEqual([0.25, 4.25]);
});

test('what part of the cost is time', () => {
  const of = figures(`${LABOUR('1 bricklayer')}output\n  facework 50 bricks per h\n`);
  // To a tenth of a percent.
  expect(of('job.time')).toBe(Math.round((1000 * of('job.labour')) / of('job.cost')) / 10);
  expect(of('job.labour')).toBe(80);
});
