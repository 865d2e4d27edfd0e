/** Worked examples of mortar, replayed through a job. A strip of the mix itself stands in for a known volume of it. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../examples/engine';

/** So many cubic metres of cement : sand, 1.33 loose volumes to one, nothing lost. */
function mixed(cubicMetres: number, sandParts: number) {
  const deep = cubicMetres * 1000;
  return jobOf(
    `use uk\n\nmix trial\n  parts opc 1, river-sand ${sandParts}\n  dry-volume 1.33\n  waste 0%\n\nmaterial opc\n  loose 1440 kg/m3\n  pack 50 kg bag at £5\n\nmaterial river-sand\n  pack 1 m3 load at £40\n\nwall w\n  length 1000 mm\n  height 2 courses\n  right butted\n  footing 1000 x ${deep} mm trial\n`,
  );
}

function needs(job: ReturnType<typeof mixed>) {
  const of = (name: string) => job.price.purchases.find((p) => p.name === name)!;
  const parts = job.price.batches.find((b) => b.name === 'trial')!.parts;
  return {
    kg: of('opc').needed.value.toNumber(),
    unit: of('opc').needed.unit,
    bags: of('opc').bought.value.toNumber(),
    cement: parts[0]!.volume.value.toNumber() / 1000,
    sand: of('river-sand').needed.value.toNumber(),
  };
}

describe('one cubic metre of 1 : 6 (valuerworld; wecivilengineers)', () => {
  const { kg, unit, bags, cement, sand } = needs(mixed(1, 6));
  test('0.19 m3 of cement, 273.6 kg, 5.472 bags of 50 kg', () => {
    expect(cement).toBeCloseTo(0.19, 9);
    expect(unit).toBe('kg');
    expect(kg).toBeCloseTo(273.6, 9);
    expect(kg / 50).toBeCloseTo(5.472, 9);
  });
  test('six whole bags are bought', () => expect(bags).toBe(6));
  test('1.14 m3 of sand', () => expect(sand).toBeCloseTo(1.14, 9));
});

describe('one cubic metre of brickwork, IS modular bricks, 1 : 6 (civilatwork; civilengineeringnews)', () => {
  // 500 bricks take 0.7695 m3 of it, which leaves 0.2305 m3 of mortar.
  const mortar = 1 - 500 * 0.19 * 0.09 * 0.09;
  const { kg, cement, sand } = needs(mixed(0.2305, 6));
  test('0.2305 m3 of mortar are 0.306565 m3 of loose materials', () => {
    expect(mortar).toBeCloseTo(0.2305, 9);
    expect(cement + sand).toBeCloseTo(0.306565, 9);
  });
  test('63 kg of cement are 1.26 bags', () => {
    expect(kg).toBeCloseTo(63, 0);
    expect(kg / 50).toBeCloseTo(1.26, 2);
  });
  test('0.2628 m3 of sand', () => expect(sand).toBeCloseTo(0.2628, 4));
});

/**
 * CPWD, DAR coefficients: quintals (100 kg) of cement to the cubic metre of mortar. They count by the sand, this
 * tool by loose volumes to one of mortar (1.33): the two models differ by up to a tenth.
 */
describe('CPWD cement coefficients, within a tenth', () => {
  test.each([
    [1, 10.2],
    [2, 6.8],
    [3, 5.1],
    [4, 3.8],
    [5, 3.1],
    [6, 2.5],
  ])('1 : %i takes %f quintals', (sand, quintals) => {
    const off = Math.abs(needs(mixed(1, sand)).kg - quintals * 100) / (quintals * 100);
    expect(off).toBeLessThan(0.1);
  });
});

describe('American bags (Beall, Masonry and Concrete, p. 149; weights from memory)', () => {
  /** Twelve cubic feet of one loose material. */
  const bags = (material: string, pack: string) => {
    const job = jobOf(
      `use us\n\nmix trial\n  parts ${material} 1\n  dry-volume 1\n  waste 0%\n\nmix other\n  parts mason-sand 1\n  joint 3/8 in\n\nmaterial ${material}\n  pack ${pack} bag at $10\n\nwall w\n  mix other\n  length 12 ft\n  height 1 course\n  footing 12 x 12 in trial\n`,
    );
    const { needed } = job.price.purchases.find((p) => p.name === material)!;
    return needed.value.toNumber() / Number.parseFloat(pack);
  };
  test('94 lb of Portland cement are a cubic foot', () => {
    expect(bags('portland-cement', '94 lb')).toBeCloseTo(12, 9);
  });
  test('50 lb of hydrated lime are a cubic foot and a quarter', () => {
    expect(bags('hydrated-lime', '50 lb') * 1.25).toBeCloseTo(12, 9);
  });
});
