import { describe, expect, test } from 'vitest';
import { jobOf } from './world';

const job = (material: string, gang = '1 bricklayer') => `perpend 1
use uk
labour
  bricklayer  £20 per h
  labourer    £10 per h
  gang        ${gang}
brick red
  size   215 x 102.5 x 65 mm
  joint  10 mm
  price  £1 each
mix plain
  parts  sand 1
  joint  10 mm
  dry-volume 1
material sand
${material}
wall a
  brick   red
  mix     plain
  length  2240 mm
  height  4 courses
`;

const figures = (text: string) => jobOf(text, {}).price;

describe('a material bought loose', () => {
  const price = figures(job('  loose 1600 kg/m3\n  price £50 per t'));
  const sand = price.purchases.find((p) => p.name === 'sand')!;

  test('is paid by weight: litres by bulk density, by the price of a tonne', () => {
    // Ten stretchers and nine joints are 2240 mm; every second course has nine and two half bats of 102.5 mm.
    const gross = 2240 * 102.5 * 4 * 75;
    const bricks = 2 * (10 * 215 + 9 * 215 + 2 * 102.5) * 102.5 * 65;
    const tonnes = (((gross - bricks) / 1e6) * 1.1 * 1.6) / 1000;
    expect(sand.bought.value.toNumber()).toBeCloseTo(tonnes, 9);
    expect(sand.cost.value.toNumber()).toBe(Math.round(tonnes * 50 * 100) / 100);
    expect(sand.cost.gaps).toEqual([]);
  });

  test('a bulk density of nothing leaves the price incomplete', () => {
    const none = figures(job('  loose 0 kg/m3\n  price £50 per t'));
    expect(none.total.gaps.length).toBeGreaterThan(0);
  });
});

describe('who lays', () => {
  test('is the trade with the highest rate, in whatever order the gang is named', () => {
    const hours = (gang: string) =>
      figures(job('  loose 1600 kg/m3\n  price £50 per t', gang)).hours.value.toNumber();
    expect(hours('1 labourer + 2 bricklayer')).toBeCloseTo(hours('2 bricklayer + 1 labourer'), 12);
    expect(hours('2 bricklayer + 1 labourer')).toBeCloseTo(hours('1 bricklayer') / 2, 12);
  });
});

describe('money', () => {
  test('a cost is rounded where it arises, half away from zero', () => {
    const { figures: all } = figures(
      `${job('  loose 1600 kg/m3\n  price £50 per t')}\ncost w "Hire" 3 at £0.335\n`,
    );
    expect(all.find((f) => f.key === 'others')!.term.value.toFixed()).toBe('1.01');
  });
});

describe('days', () => {
  test('are no fewer than the height takes, a lift a day', () => {
    const pier = `${job('  loose 1600 kg/m3\n  price £50 per t')}\npier p\n  brick red\n  mix plain\n  size 1 x 1 bricks\n  height 30 courses\n`;
    // 30 courses of 75 mm are 2250 mm: two lifts of 1500 mm.
    expect(figures(pier).days.value.toNumber()).toBe(2);
  });
});
