import { describe, expect, test } from 'vitest';
import type { Job } from '../../server/engine/workspace/job';
import { jobOf } from './world';

/** 40 bricks of a stretcher wall: 10 halves x 4 courses / 2, with 7 h of one bricklayer at 5 an hour and 8 h a day. */
const FIRM = `perpend 1
use uk
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £0.50 each
  waste  0%
mix dry "Sand only"
  parts  sand 1
  joint  10 mm
  waste  0%
  dry-volume  1
material sand
  loose  1000 kg/m3
  pack   1000 kg bag at £0
labour
  bricklayer  £20 per h
  labourer    £10 per h
  gang        1 bricklayer
  day         8 h
output
  facework  5 bricks per h
price
  round  £0
`;

const WALL = `wall a
  brick   red
  mix     dry
  stands  held
  length  1115 mm
  height  8 courses
`;

function job(more = '', firm = FIRM, wall = WALL): Job {
  return jobOf(`perpend 1\nuse "firm.perp"\n${more}${wall}`, { 'firm.perp': firm });
}

const money = (of: Job) => of.price.figures.map((f) => [f.key, f.term.value.toFixed()]);
const figure = (of: Job, key: string) =>
  of.price.figures.find((f) => f.key === key)!.term.value.toFixed();
const bought = (of: Job, name: string) => of.price.purchases.find((p) => p.name === name)!;
const firmWith = (line: string, instead: string) => FIRM.replace(line, instead);

describe('the price of forty bricks', () => {
  test('by hand: 40 bricks at 50 p, 8 h at £20', () => {
    expect(money(job())).toEqual([
      ['bricks', '40'],
      ['hours', '8'],
      ['days', '1'],
      ['materials', '20'],
      ['labour', '160'],
      ['travel', '0'],
      ['others', '0'],
      ['cost', '180'],
      // 160 of 180, to a tenth of a percent.
      ['time', '88.9'],
      ['overhead', '0'],
      ['profit', '0'],
      ['net', '180'],
      ['tax', '36'],
      ['price', '216'],
      // No profit is asked: what is left for the 8 hours is the wage.
      ['leaves', '0'],
      ['leaves-share', '0'],
      ['earns', '20'],
    ]);
  });

  test('overhead on cost, profit on both, each to the penny', () => {
    const priced = job('price\n  overhead 12.5%\n  profit 3.33%\n  round £0\n');
    // 180 + 22.50 = 202.50; 3.33% of it is 6.74325.
    expect(['overhead', 'profit', 'net', 'tax', 'price'].map((k) => figure(priced, k))).toEqual([
      '22.5',
      '6.74',
      '209.24',
      '41.85',
      '251.09',
    ]);
  });

  test('not below the least price, and to the nearest step', () => {
    expect(figure(job('price\n  least £200\n  round £0\n'), 'net')).toBe('200');
    expect(figure(job('price\n  least £100\n  round £0\n'), 'net')).toBe('180');
    expect(figure(job('price\n  round £25\n'), 'net')).toBe('175');
    expect(figure(job('price\n  round £24\n'), 'net')).toBe('192');
    expect(figure(job('price\n  least £181\n  round £4\n'), 'net')).toBe('180');
  });

  test('tax as the job has it, else as the defaults', () => {
    const taxed = job('job "A"\n  tax 7.7% "MWST"\n');
    expect([figure(taxed, 'tax'), taxed.price.taxName]).toEqual(['13.86', 'MWST']);
    expect(job().price.taxName).toBe('VAT');
    expect(figure(job('job "A"\n  tax 0%\n'), 'tax')).toBe('0');
  });
});

describe('what bricks cost', () => {
  test('per 1000, as few as are bought', () => {
    const priced = job('', firmWith('£0.50 each', '£500 per 1000'));
    expect(
      [bought(priced, 'red').bought, bought(priced, 'red').cost].map((t) => t.value.toFixed()),
    ).toEqual(['40', '20']);
  });

  test('per pack, in whole packs', () => {
    const priced = job('', firmWith('£0.50 each', '£50 per pack\n  pack 32'));
    expect(
      [bought(priced, 'red').bought, bought(priced, 'red').cost].map((t) => t.value.toFixed()),
    ).toEqual(['64', '100']);
  });

  test('with breakage, up to whole bricks', () => {
    const priced = job('', firmWith('waste  0%\nmix', 'waste  3%\nmix'));
    // 41.2
    expect(bought(priced, 'red').bought.value.toFixed()).toBe('42');
  });

  test('of two walls are added up before a pack is opened', () => {
    const two = WALL + WALL.replace('wall a', 'wall b');
    const priced = job('', firmWith('£0.50 each', '£50 per pack\n  pack 79'), two);
    expect(bought(priced, 'red').bought.value.toFixed()).toBe('158');
  });

  test('a material in whole bags, by weight', () => {
    const priced = job('', firmWith('1000 kg bag at £0', '25 kg bag at £3'));
    const sand = bought(priced, 'sand');
    const litres = priced.works[0]!.figures.find((f) => f.key === 'mortar')!.term.value.toNumber();
    // 1000 kg/m3 is a kilogram a litre. The wall less its bricks, by hand:
    const wall = 1115 * 600 * 102.5;
    const bricks = 40 * 215 * 102.5 * 65;
    expect(litres).toBeGreaterThan((wall - bricks) / 1e6 - 3);
    expect(sand.bought.value.toNumber()).toBe(Math.ceil(litres / 25));
    expect(sand.cost.value.toNumber()).toBe(Math.ceil(litres / 25) * 3);
  });
});

describe('what people cost', () => {
  test('a gang works together: each trade by how many there are of it', () => {
    const gang = job('labour\n  gang 2 bricklayers + 1.5 labourers\n');
    // Two lay 10 bricks an hour: 4 h at 2 x 20 + 1.5 x 10.
    expect([figure(gang, 'hours'), figure(gang, 'labour')]).toEqual(['4', '220']);
  });

  test('a rate and an output per day count by the hours of the day', () => {
    const daily = job(
      'labour\n  mason £200 per day\n  gang 1 mason\noutput\n  facework 80 bricks per day\n',
    );
    // 80 in 8 h is 10 an hour, so 4 h; 200 for 8 h is 25 an hour.
    expect([figure(daily, 'hours'), figure(daily, 'labour')]).toEqual(['4', '100']);
  });

  test.each([
    ['0.5 day', '35 bricks', '0.5'],
    ['0.5 day', '9 bricks', '1'],
    ['1 day', '9 bricks', '1'],
    ['0.25 day', '5 bricks', '1'],
    ['0.25 day', '7 bricks', '0.75'],
    ['0 day', '10 bricks', '0.5'],
  ])('days are charged in steps of %s: at %s an hour, %s', (step, output, wanted) => {
    const stepped = job(`labour\n  part-day ${step}\noutput\n  facework ${output} per h\n`);
    expect(figure(stepped, 'days')).toBe(wanted);
  });

  test('a step of days that is still to be measured leaves the days incomplete', () => {
    const stepped = job('labour\n  part-day ?\n');
    expect(stepped.price.days.gaps).not.toEqual([]);
  });
});

describe('what else is paid for', () => {
  const travel = `travel
  run     2 x 10 miles per day at £0.45 per mile
  run     1 x 10 km per day at £1 per mile
  charge  "Zone" £12.50 per day
  charge  "Permit" £8 per job
`;

  test('driving by day and distance, charges by day or once', () => {
    const far = job(`${travel}output\n  facework 2.5 bricks per h\n`);
    expect(figure(far, 'days')).toBe('2');
    // 2 x 10 x 0.45 x 2 = 18; 10 km are 6.2137 miles: 12.43 for two days; 25; 8.
    expect(figure(far, 'travel')).toBe('63.43');
  });

  test('other costs so many times, some by the day', () => {
    const costs = 'cost skip "Skip" 2 at £240\ncost hire "Hire" 1 at £28 per day\n';
    expect(figure(job(`${costs}output\n  facework 2.5 bricks per h\n`), 'others')).toBe('536');
  });
});

describe('stages', () => {
  const stages = (lines: string) =>
    job(`price\n  round £0\n${lines}`).price.stages.map((s) => [s.title, s.amount.value.toFixed()]);

  test('add up to the price, whatever the shares: the rest takes what is left', () => {
    const told = stages(
      '  stage "A" 33.33%\n  stage "B" rest\n  stage "C" 33.33%\n  stage "D" £10\n',
    );
    expect(told).toEqual([
      ['A', '71.99'],
      ['B', '62.02'],
      ['C', '71.99'],
      ['D', '10'],
    ]);
    expect(told.reduce((pence, [, amount]) => pence + Math.round(Number(amount) * 100), 0)).toBe(
      21600,
    );
  });

  test('of the firm hold where the job has none', () => {
    const firm = FIRM.replace('round  £0', 'round  £0\n  stage "All" rest');
    expect(job('', firm).price.stages.map((s) => [s.title, s.amount.value.toFixed()])).toEqual([
      ['All', '216'],
    ]);
    expect(stages('')).toEqual([]);
  });
});

describe('a range', () => {
  const REPAIR = `repair r
  brick    red
  mix      dry
  cut-out  10..30 bricks
`;

  test('stands for its middle', () => {
    const ranged = job('output\n  cut-out 10 bricks per h\n', FIRM, REPAIR);
    // 20 bricks, 2 h: 10 + 40.
    expect(ranged.price.cost.value.toFixed()).toBe('50');
  });

  test('its working says which end it stands for', () => {
    const ranged = job('', FIRM, REPAIR);
    const cut = ranged.works[0]!.figures.find((f) => f.key === 'cut-out')!.term;
    expect(cut.note).toBe('middle of 10 to 30, whole ones');
  });

  test('there is no spread without one', () => {
    expect(job().spread).toBeUndefined();
  });
});

describe('where a fact comes from', () => {
  test('the job, then the files it uses in their order, then the library', () => {
    const files = {
      'a.perp': 'perpend 1\nuse "c.perp"\ndefaults\n  overhead 1%\n',
      'b.perp': 'perpend 1\ndefaults\n  overhead 2%\n  profit 2%\n',
      'c.perp': 'perpend 1\ndefaults\n  profit 3%\n  least £3\n',
    };
    const text = 'perpend 1\nuse uk\nuse "a.perp"\nuse "b.perp"\ndefaults\n  round £4\n';
    const { book } = jobOf(text, files);
    const from = (key: string) => book.setting('defaults', key)!.block.file.name;
    expect(['round', 'overhead', 'profit', 'least', 'day'].map(from)).toEqual([
      '/jobs/job.perp',
      '/jobs/a.perp',
      '/jobs/c.perp',
      '/jobs/c.perp',
      'library:uk.perp',
    ]);
  });

  test('a firm gives the price of a brick that the library gives the size of', () => {
    const files = { 'firm.perp': 'perpend 1\nuse uk\nbrick engineering\n  price £0.80 each\n' };
    const text =
      'perpend 1\nuse "firm.perp"\nwall a\n  brick engineering\n  stands held\n  length 1115 mm\n  height 8 courses\n';
    const priced = jobOf(text, files);
    const brick = bought(priced, 'engineering');
    // 5% of 40 are broken, as the library's defaults have it.
    expect(brick.bought.value.toFixed()).toBe('42');
    expect(brick.cost.value.toFixed()).toBe('33.6');
    expect(brick.title).toBe('Class B engineering brick');
  });

  test('a line of the work stands over the brick, and the brick over the mix', () => {
    const joint = (wall: string, brick: string, mix: string) => {
      const firm = FIRM.replace('  gauge  4 courses 300 mm\n', brick).replace(
        '  joint  10 mm\n',
        mix,
      );
      const of = jobOf(`perpend 1\nuse "firm.perp"\n${WALL}${wall}`, { 'firm.perp': firm });
      return of.works[0]!.facts.settingOut!.spec.joints.perpend;
    };
    const [w, b, m] = ['  joint 9 mm\n', '  joint 11 mm\n', '  joint 12 mm\n'] as const;
    expect(joint(w, b, m)).toBe(9);
    expect(joint('', b, m)).toBe(11);
    expect(joint('', '', m)).toBe(12);
  });
});
