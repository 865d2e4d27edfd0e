/** Bricks to the cubic metre of wall, joints and all. */
import { expect, test } from 'vitest';
import { figure, jobOf } from '../examples/engine';

const CASES = [
  // Ziegelei Priller, Materialbedarf, walls of 115 mm: 544, 420 and 279 to the m3; from 63, 49 and 32 to the m2.
  ['DE Dünnformat', 'de', 'df', '', 0.115, 544, 0.024],
  ['DE Normalformat', 'de', 'nf', '', 0.115, 420, 0.0066],
  ['DE 2DF', 'de', 'zwei-df', '', 0.115, 279, 0.003],
  // IS 1077 by IIT Kanpur: 500, the joint beside the wall taken in; 1 m2 is 0.1 m3.
  ['IN modular', 'uk', 'is', '190 x 90 x 90', 0.1, 500, 0],
  // wecivilengineers.blog, 230 x 110 x 70: 434 by 0.240 x 0.120 x 0.080.
  ['IN 230', 'uk', 'old', '230 x 110 x 70', 0.12, 434, 0.0001],
] as const;

test.each(CASES)('%s', (_, use, brick, size, thick, printed, within) => {
  const block = size ? `brick ${brick}\n  size ${size} mm\n  joint 10 mm\n\n` : '';
  const along = use === 'de' ? 250 : Number(size.slice(0, 3)) + 10;
  const job = jobOf(
    `use ${use}\n\n${block}wall w\n  brick ${brick}\n  length ${20 * along} mm\n  height 24 courses\n  right butted\n`,
  );
  const perM3 = figure(job, 'w.bricks') / (figure(job, 'w.area') * thick);
  expect(Math.abs(printed - perM3) / perM3).toBeLessThanOrEqual(within + 1e-4);
});

/** Arithmetic: 59.259 to the m2 of each half brick, 0.1125 m deep with its joint: 526.7 to the m3, whatever the thickness. */
test.each([
  ['1/2 brick', 'stretcher', 1],
  ['1 brick', 'english', 2],
  ['1.5 bricks', 'english', 3],
  ['2 bricks', 'english', 4],
] as const)('UK, %s', (thick, bond, leaves) => {
  const job = (length: number) =>
    jobOf(
      `use uk\n\nwall w\n  thick ${thick}\n  bond ${bond}\n  length ${length} mm\n  height 24 courses\n  left toothed\n  right toothed\n`,
    );
  const [short, long] = [job(2710), job(5410)];
  const bricks = figure(long, 'w.bricks') - figure(short, 'w.bricks');
  expect(bricks / (2.7 * 1.8 * 0.1125 * leaves)).toBeCloseTo(526.7, 1);
});
