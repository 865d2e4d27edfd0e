/** Batches, what goes into one, and what is left of what was bought. */
import { describe, expect, test } from 'vitest';
import { allFigures } from '../../../server/engine/views/job-view';
import { workingOf } from '../../../server/engine/views/working';
import { jobOf } from '../world';
import { amountOf, termOf, textOf } from './trial';

/** A wall of ten bricks by 40 courses: 400 bricks in so many hours. `mix` lines of its mortar; `more` other blocks. */
const wall = (mix = '', more = '', bricksAnHour = 50) =>
  jobOf(`perpend 1
use uk

mix own
  parts cement 1, sand 4
  dry-volume 1.3
  waste 0%
  joint 10 mm
${mix}
material cement
  pack 25 kg bag at £6
material sand
  pack 850 kg bulk-bag at £52

labour
  bricklayer £27 per h
  gang 1 bricklayer

output
  facework ${bricksAnHour} bricks per h

${more}
wall w
  mix own
  length 2240 mm
  height 40 courses
`);

const LAID = amountOf(wall(), 'w.mortar');

describe('a batch', () => {
  // 400 bricks at 50 an hour are eight hours: a quarter of the mortar in two of them.
  test('is no more than the gang lays while it can be worked', () => {
    const job = wall('  life 2 h\n');
    expect(amountOf(job, 'batch.own')).toBeCloseTo(LAID / 4, 9);
    expect(textOf(job, 'batches.own')).toBe('4 batches');
    expect(amountOf(job, 'last.own')).toBeCloseTo(LAID / 4, 9);
    expect(amountOf(job, 'over.own')).toBeCloseTo(0, 9);
  });

  test('nor than the mixer takes; the last is part-size', () => {
    const job = wall('  life 8 h\n', 'defaults\n  mixer 50 l\n');
    const count = Math.ceil(LAID / 50);
    expect(amountOf(job, 'batch.own')).toBe(50);
    expect(amountOf(job, 'batches.own')).toBe(count);
    expect(amountOf(job, 'last.own')).toBeCloseTo(LAID - (count - 1) * 50, 9);
    expect(amountOf(job, 'over.own')).toBeCloseTo(count * 50 - LAID, 9);
  });

  test('the labour block’s mixer comes before the defaults’', () => {
    const job = wall('  life 8 h\n', 'labour\n  mixer 40 l\n\ndefaults\n  mixer 50 l\n');
    expect(amountOf(job, 'batch.own')).toBe(40);
  });

  test('the slower the gang, the smaller the batch', () => {
    const [slow, quick] = [wall('  life 2 h\n', '', 25), wall('  life 2 h\n', '', 50)];
    expect(amountOf(slow, 'batch.own')).toBeCloseTo(amountOf(quick, 'batch.own') / 2, 9);
  });

  // A C270-type specification (Masonry Magazine, 1988) has it used within two and a half hours of mixing.
  test('in the United States it is used within two and a half hours', () => {
    const { env } = jobOf('perpend 1\nuse us\nwall w\n length 8 ft\n height 3 courses\n');
    const line = env.book.setting('defaults', 'working-life')!.line.values.time;
    expect(line?.kind === 'quantity' && line.low.toNumber()).toBe(2.5);
  });

  test('holds its share of each material', () => {
    const job = wall('  life 2 h\n');
    const [cement, sand] = [amountOf(job, 'batch.own.cement'), amountOf(job, 'batch.own.sand')];
    expect(sand / cement).toBeCloseTo(4, 9);
    expect(cement + sand).toBeCloseTo((LAID / 4) * 1.3, 9);
    expect(cement * 4).toBeCloseTo(amountOf(job, 'mix.own.cement'), 9);
  });

  test('of a ready mix is told in its packs', () => {
    const job = wall('  life 2 h\n  ready 25 kg bag makes 12.5 l at £6\n');
    expect(amountOf(job, 'batch.own.bag')).toBeCloseTo(LAID / 4 / 12.5, 9);
  });

  test('whose working life is nothing is not divided by', () => {
    const job = wall('  life 0 h\n');
    for (const { key, term } of allFigures(job)) expect(term.value.isFinite(), key).toBe(true);
    expect(termOf(job, 'batches.own').gaps.length).toBeGreaterThan(0);
    expect(
      termOf(job, 'job.price')
        .gaps.map((g) => g.what)
        .join(),
    ).not.toMatch(/batch/);
  });
});

describe('what is left in the last bag', () => {
  const job = wall();
  const dry = LAID * 1.3;
  const cement = (dry / 5) * 1.44;
  const sand = ((dry * 4) / 5) * 1.6;
  const bags = Math.ceil(cement / 25);
  const left = { cement: bags * 25 - cement, sand: 850 - sand };

  test('is what it holds less what goes in', () => {
    expect(amountOf(job, 'left.cement')).toBeCloseTo(left.cement, 6);
    expect(amountOf(job, 'left.sand')).toBeCloseTo(left.sand, 6);
  });

  test('makes as much mortar as the scarcest of it allows, and the working says which that is', () => {
    const makes = Math.min((left.cement / cement) * LAID, (left.sand / sand) * LAID);
    expect(amountOf(job, 'lays.own')).toBeCloseTo(makes, 6);
    const scarce = left.cement / cement < left.sand / sand ? 'Cement' : 'Building sand';
    const { parts } = workingOf(termOf(job, 'lays.own'), job.env);
    expect(parts.map((p) => p.label).join('\n')).toContain(`${scarce} runs out first`);
  });

  test('lays so many bricks of this wall, or points so much of it', () => {
    const mortar = amountOf(job, 'lays.own');
    const bricks = amountOf(job, 'w.bricks');
    expect(amountOf(job, 'lays.own.bricks')).toBe(Math.floor((mortar * bricks) / LAID));
    // Arithmetic: 17.2% of a stretcher face is joint; 20 mm deep that is 3.44 l to the square metre.
    const share = 1 - (215 * 65) / (225 * 75);
    expect(share * 20).toBeCloseTo(3.44, 2);
    expect(amountOf(job, 'lays.own.pointing')).toBeCloseTo(mortar / (share * 20), 6);
  });

  test('is not told where a material is bought loose', () => {
    const loose = jobOf(
      'perpend 1\nuse uk\nmaterial sand\n  price £40 per t\nmaterial cement\n  pack 25 kg bag at £6\nmix own\n  parts cement 1, sand 4\n  joint 10 mm\nwall w\n  mix own\n  length 2240 mm\n  height 4 courses\n',
    );
    const keys = allFigures(loose).map((f) => f.key);
    expect(keys).toContain('left.cement');
    expect(keys.filter((key) => key.startsWith('lays.'))).toEqual([]);
  });
});

test('what is left lays no bricks where none are laid in it: it points', () => {
  const job = jobOf(`perpend 1
use uk
material hydraulic-lime
  pack 25 kg bag at £16
material sand
  pack 25 kg bag at £3
repair r
  brick standard
  mix lime-soft
  repoint 4 m2 raked 20 mm
`);
  const keys = allFigures(job).map((f) => f.key);
  expect(keys).toContain('lays.lime-soft.pointing');
  expect(keys).not.toContain('lays.lime-soft.bricks');
});
