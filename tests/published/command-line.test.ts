/** Published values asked of the command line, as a reader of its JSON has them: `perpend price --json`. */
import { describe, expect, test } from 'vitest';
import { folderOf, perpend, useCommandLine } from '../cli/perpend';

useCommandLine();

/** Figures by their ids. */
function priced(text: string): (id: string) => { value: number; unit: string } {
  const cwd = folderOf({ 'job.perp': `perpend 1\n\n${text}` });
  const { out, err } = perpend(['price', 'job.perp', '--json'], { cwd });
  expect(err).toBe('');
  const figures: { id: string; value: string; unit: string }[] = JSON.parse(out).files[0].figures;
  return (id) => {
    const found = figures.find((f) => f.id === id)!;
    return { value: Number(found.value), unit: found.unit };
  };
}

// Key skills sheet, Crown copyright 2000: 60, 120, 180; QS lecture notes: 59.26. Mortar: plain arithmetic.
const TO_THE_M2 = [
  ['1/2 brick', 'stretcher', 60, 59.259, 17.61],
  ['1 brick', 'english', 120, 118.519, 45.23],
  ['1.5 bricks', 'english', 180, 177.778, 72.84],
  ['2 bricks', 'english', 240, 237.037, 100.46],
] as const;

test('a square metre by thickness: by the rule, bricks laid, and mortar', () => {
  const walls = TO_THE_M2.flatMap(([thick, bond], i) =>
    [9, 18].map(
      (metres) =>
        `wall w${i}-${metres}\n  stands held\n  thick ${thick}\n  bond ${bond}\n  length ${metres} m\n  height 40 courses\n  right butted\n`,
    ),
  );
  const of = priced(`use uk\n\n${walls.join('\n')}`);
  // What 9 m more add, so that the half bats and the joint at the ends fall out: 27 m2.
  const more = (i: number, key: string) =>
    (of(`w${i}-18.${key}`).value - of(`w${i}-9.${key}`).value) / 27;
  for (const [i, [, , rule, bricks, litres]] of TO_THE_M2.entries()) {
    expect(more(i, 'rule')).toBeCloseTo(rule, 6);
    expect(more(i, 'bricks')).toBeCloseTo(bricks, 2);
    expect(more(i, 'mortar')).toBeCloseTo(litres, 2);
  }
});

describe('a cubic metre of 1 : 6', () => {
  // valuerworld; wecivilengineers: 273.6 kg, 5.472 bags of 50 kg, 1.14 m3 of sand.
  const cubicMetre = () =>
    priced(
      'use uk\n\nmix trial\n  parts cement 1, river-sand 6\n  dry-volume 1.33\n  waste 0%\n\nmaterial cement\n  loose 1440 kg/m3\n  pack 50 kg bag at £8\n\nmaterial river-sand\n  price £40 per m3\n\nmix other\n  parts river-sand 1\n  joint 10 mm\n\nwall w\n  mix other\n  stands held\n  length 1000 mm\n  height 4 courses\n  footing 1000 x 1000 mm trial\n',
    );
  test('is 190 l of cement, 273.6 kg, six whole bags, and 1140 l of sand', () => {
    const of = cubicMetre();
    expect(of('mix.trial')).toEqual({ value: 1000, unit: 'l' });
    expect(of('mix.trial.cement').value).toBeCloseTo(190, 6);
    expect(of('need.cement').value).toBeCloseTo(273.6, 6);
    expect(of('need.cement').unit).toBe('kg');
    expect(of('buy.cement').value).toBe(6);
    expect(of('cost.cement').value).toBe(48);
    expect(of('mix.trial.river-sand').value).toBeCloseTo(1140, 6);
  });
});

// Arithmetic: 17.2% of a stretcher face is joint.
test('a square metre of joints raked 15, 20 and 25 mm takes 2.58, 3.44 and 4.30 l', () => {
  const repairs = [15, 20, 25]
    .map((mm) => `repair r${mm}\n  brick standard\n  mix general\n  repoint 1 m2 raked ${mm} mm\n`)
    .join('\n');
  const of = priced(`use uk\n\n${repairs}`);
  expect([15, 20, 25].map((mm) => of(`r${mm}.mortar`).value.toFixed(2))).toEqual([
    '2.58',
    '3.44',
    '4.30',
  ]);
});

// QS lecture notes (scribd 617796324): half-brick wall in common bricks, bricklayer 1.00 h, labourer 0.35 h to the m2.
test('hours by the square metre', () => {
  const of = priced(
    'use uk\n\nlabour\n  bricklayer £20 per h\n  labourer £12 per h\n  gang 1 bricklayer + 1 labourer\n\noutput\n  facework 1 m2 per h\n\nserving\n  facework 2.857142857 m2 per h\n\nwall w\n  stands held\n  length 9 m\n  height 40 courses\n  right butted\n',
  );
  expect(of('w.hours')).toEqual({ value: 27, unit: 'h' });
  expect(of('job.labour').value).toBeCloseTo(27 * 32, 6);
});
