/** Lengths in the words of a drawing, which have no unit: the sheet says once what they are in. */
import { later } from '../../../shared/phrase';
import { feetAndInches } from '../brickwork/lengths';

export type Units = 'millimetres' | 'feet';

/** What all lengths of a sheet are in, for its heading. */
export const UNIT_WORDS: Readonly<Record<Units, string>> = {
  millimetres: later`millimetres`,
  feet: later`feet and inches`,
};

/** Beside a single length in running words. Feet and inches carry their own marks. */
export function withUnit(length: string, units: Units): string {
  return units === 'feet' ? length : `${length} mm`;
}

/** `1022.5`, to a tenth of a millimetre at most; `22'-11 5/8"`, to a sixteenth of an inch. */
export function lengthOn(units: Units, length: number): string {
  if (units === 'millimetres') return String(Math.round(length * 10) / 10 + 0);
  const { feet, inches } = feetAndInches(length);
  return feet ? `${feet}'-${inches}"` : `${inches}"`;
}
