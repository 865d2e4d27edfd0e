import { phrase, spoken } from '../../../../shared/phrase';
import { lengthOn, UNIT_WORDS, type Units } from '../lengths';

/** Scales that a rule has edges for. */
const SCALES: Readonly<Record<Units, readonly number[]>> = {
  millimetres: [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500],
  feet: [1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 192, 384],
};

/** The largest usual scale at which so much of the work is no more than one on paper for each of `needed`. */
export function scaleFor(needed: number, units: Units): number {
  const known = SCALES[units].find((scale) => scale >= needed);
  return known ?? Math.ceil(needed / 500) * 500;
}

/** On a rule for feet the scale is so many inches to the foot. */
function scaleText(scale: number, units: Units): string {
  const inches = 12 / scale;
  const known = units === 'feet' && scale > 1 && Number.isInteger(inches * 16);
  return known ? phrase`1:${scale}, ${lengthOn('feet', inches * 25.4)} to the foot` : `1:${scale}`;
}

/** @param scale nothing where the sheet is shown at another size than its own */
export function scaleSaid(scale: number | undefined, units: Units): string {
  const said =
    scale === undefined ? phrase`Not to scale.` : phrase`Scale ${scaleText(scale, units)}.`;
  return phrase`${said} Sizes in ${spoken(UNIT_WORDS[units])}.`;
}
