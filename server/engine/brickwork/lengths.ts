/** Lengths, areas and volumes between what is written, the geometry (mm) and what a reader is shown. */
import { Decimal, fromGeometry } from '../../../shared/exact';
import { unitNamed } from '../../../shared/units';
import type { Env } from '../resolve/env';
import { convert, counted, type Term } from '../working/term';

/** A length said in mm, whatever unit it was written in. */
export function inMm(term: Term): Term {
  return inUnit(term, 'mm');
}

/** The same amount in another unit of its dimension. */
export function inUnit(term: Term, name: string): Term {
  const from = unitNamed(term.unit);
  const to = unitNamed(name);
  if (!from || !to || from === to || from.dimension !== to.dimension) return term;
  return convert(term.label, name, term, from.factor.div(to.factor));
}

/** A joint, or what is as small, as a reader measures it: inches where the job is imperial. */
export function inRule(env: Env, term: Term): Term {
  return inUnit(term, env.imperial ? 'in' : 'mm');
}

interface Shown {
  readonly detail?: () => readonly string[];
  readonly note?: string;
  readonly args?: readonly Term[];
}

/** Units a reader is shown, by the system of the job. */
export interface UnitNames {
  readonly length: string;
  readonly area: string;
  readonly volume: string;
  readonly mass: string;
}

const METRIC: UnitNames = { length: 'm', area: 'm2', volume: 'l', mass: 'kg' };
const IMPERIAL: UnitNames = { length: 'ft', area: 'ft2', volume: 'ft3', mass: 'lb' };

/** The units that a reader of this job is shown. */
export function unitNames(env: Env): UnitNames {
  return env.imperial ? IMPERIAL : METRIC;
}

/** A length of the setting-out (mm) as a reader wants it. */
export function lengthShown(env: Env, label: string, mm: number, more: Shown = {}): Term {
  const unit = unitNames(env).length;
  return counted(label, fromGeometry(mm).div(unitNamed(unit)!.factor), unit, more);
}

/** A volume of the setting-out (mm³) as a reader wants it. */
export function volumeShown(env: Env, label: string, mm3: number, more: Shown = {}): Term {
  const unit = unitNames(env).volume;
  const litres = new Decimal(mm3.toFixed(3)).div(1e6);
  return counted(label, litres.div(unitNamed(unit)!.factor), unit, more);
}

/** An area of the setting-out (mm²) as a reader wants it. */
export function areaShown(env: Env, label: string, mm2: number, more: Shown = {}): Term {
  const unit = unitNames(env).area;
  return counted(
    label,
    new Decimal(mm2.toFixed(3)).div(1e6).div(unitNamed(unit)!.factor),
    unit,
    more,
  );
}

/** A length for a sentence, as it can also stand in a job file: `1022.5 mm`, or inches where the job is imperial. */
export function lengthText(env: Env, mm: number): string {
  if (!env.imperial) return `${trimmed(mm, 1)} mm`;
  return `${sixteenths(mm / 25.4)} in`;
}

/** A size as it stands in a job file: `400 x 400 mm`. */
export function sizeText(env: Env, sides: readonly number[]): string {
  const texts = sides.map((mm) => lengthText(env, mm));
  const unit = / [a-z]+$/.exec(texts[0]!)![0];
  return texts.map((t, i) => (i < texts.length - 1 ? t.slice(0, -unit.length) : t)).join(' x ');
}

/** Feet and what is left in inches, to the nearest sixteenth: 22 and `11 5/8`. */
export function feetAndInches(mm: number): { readonly feet: number; readonly inches: string } {
  const parts = Math.round((Math.abs(mm) / 25.4) * 16);
  const feet = Math.floor(parts / 192);
  return { feet, inches: sixteenths((parts - feet * 192) / 16) };
}

/** For a sentence: `22 ft 11 5/8 in`. A length under a foot is in inches, whole feet are feet. */
export function feetText(mm: number): string {
  const { feet, inches } = feetAndInches(mm);
  if (feet === 0) return `${inches} in`;
  return inches === '0' ? `${feet} ft` : `${feet} ft ${inches} in`;
}

function trimmed(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

/** Inches to the nearest sixteenth, as on a tape: `7 5/8`. */
function sixteenths(inches: number): string {
  const whole = Math.floor(inches + 1 / 32);
  let top = Math.round((inches - whole) * 16);
  let below = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    below /= 2;
  }
  if (top <= 0) return String(whole);
  return whole ? `${whole} ${top}/${below}` : `${top}/${below}`;
}
