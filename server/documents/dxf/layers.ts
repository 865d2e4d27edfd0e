/** Layers: one for each ink of a drawing, so that a reader can be shown what it wants and no more. */
import type { Ink } from '../../engine/drawing';
import { LOOKS } from '../svg-looks';

/** Trade words in capitals, as layers are commonly called. */
const NAMES: Partial<Record<Ink, string>> = {
  stretcher: 'STRETCHERS',
  header: 'HEADERS',
  half: 'HALF-BATS',
  'three-quarter': 'THREE-QUARTER-BATS',
  closer: 'QUEEN-CLOSERS',
  cut: 'CUTS',
  dimension: 'DIMENSIONS',
  rod: 'GAUGE-ROD',
  mark: 'LEVELS',
};

export const TEXT_LAYER = 'TEXT';
/** The key to the drawing, so that counting a layer of the work counts the work. */
export const KEY_LAYER = 'KEY';

/** The name of the layer that a kind of line is drawn on. */
export function layerOf(ink: Ink): string {
  return NAMES[ink] ?? ink.toUpperCase();
}

/** Thicknesses of line that the format knows, hundredths of a millimetre. */
const WEIGHTS = [5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100];

export interface Layer {
  readonly name: string;
  /** Of its lines, as red, green, blue in one number. */
  readonly colour: number;
  /** Hundredths of a millimetre. */
  readonly weight: number;
  readonly dashed: boolean;
}

/** What an ink's layer looks like. */
export function layerAs(ink: Ink): Layer {
  const { weight, dash } = LOOKS[ink];
  const hundredths = weight * 100;
  const nearest = WEIGHTS.reduce((best, known) =>
    Math.abs(known - hundredths) < Math.abs(best - hundredths) ? known : best,
  );
  return { name: layerOf(ink), colour: lineColour(ink), weight: nearest, dashed: !!dash };
}

export function layers(): Layer[] {
  const inks = Object.keys(LOOKS) as Ink[];
  const words = [TEXT_LAYER, KEY_LAYER].map((name): Layer => {
    return { name, colour: 0x222222, weight: 18, dashed: false };
  });
  return [...inks.map(layerAs), ...words];
}

/** A tone is dark enough for a line at this part of its brightness. */
const DARKER = 0.55;

/** There is no tone inside a plain outline, so its line has it, darker; else it is as on paper. */
function lineColour(ink: Ink): number {
  const { fill, line, hatch, dark } = LOOKS[ink];
  if (hatch || dark || fill === 'none' || fill === '#fff') return colourOf(line);
  const tone = colourOf(fill);
  return [16, 8, 0].reduce(
    (sum, shift) => sum + (Math.round(((tone >> shift) & 0xff) * DARKER) << shift),
    0,
  );
}

/** `#4a2418`, or `#555`. */
function colourOf(hex: string): number {
  const digits = hex.slice(1);
  return Number.parseInt(digits.length === 3 ? digits.replace(/./g, '$&$&') : digits, 16);
}
