/**
 * The one door for numbers that a reader sees. Nothing else makes a Decimal.
 * 40 significant digits: more than any job needs, and a third of a brick times three is still one
 * after rounding for a reader.
 */
import { Decimal } from 'decimal.js';

Decimal.set({ precision: 40, rounding: Decimal.ROUND_HALF_UP, toExpNeg: -30, toExpPos: 60 });

export { Decimal };
export type Exact = Decimal;

export const ZERO = new Decimal(0);
export const ONE = new Decimal(1);
export const HUNDRED = new Decimal(100);

/** An exact number from text, or from a whole number or short decimal as JavaScript prints it. */
export function exact(value: string | number | Exact): Exact {
  return value instanceof Decimal ? value : new Decimal(value);
}

/**
 * Geometry (plain numbers, mm) on its way to a reader: kept to a millionth, which is far below
 * what can be measured and far above the error of the arithmetic.
 */
export function fromGeometry(value: number): Exact {
  // Counts are whole already, and are most of what comes through here.
  if (Number.isSafeInteger(value)) return new Decimal(value + 0);
  return new Decimal(Number.isFinite(value) ? value.toFixed(6) : 0);
}

export type NumberReading =
  | { readonly value: Exact; readonly faulty?: undefined }
  /** Two ways to read it, never guessed at: the numbers it can be, in plain form, or one number and two `apart`. */
  | {
      readonly faulty: 'two-ways';
      readonly readings: readonly [string, string];
      readonly apart?: undefined;
    }
  | {
      readonly faulty: 'two-ways';
      readonly readings: readonly [string];
      readonly apart: readonly [string, string];
    }
  | { readonly faulty: 'marks' };

const PLAIN = /^\d+(?:\.\d+)?$/;
const GROUPED = /^\d{1,3}(?:(?:,\d{3}){2,}(?:\.\d+)?|,\d{3}\.\d+)$/;
const GROUPED_POINT = /^\d{1,3}(?:(?:\.\d{3}){2,}(?:,\d+)?|\.\d{3},\d+)$/;
const ONE_MARK = /^(\d+)([.,])(\d+)$/;

/**
 * Reads a number as written. `1,450` and `1.450` can be read two ways; so can `7,4`, one of them as two numbers.
 * `1,450.00`, `0.450`, `12,500,000` and `2.5` cannot.
 */
export function readNumber(text: string): NumberReading {
  const one = ONE_MARK.exec(text);
  const faulty = one && oneMark(one[1]!, one[2]!, one[3]!);
  if (faulty) return faulty;
  if (PLAIN.test(text)) return { value: new Decimal(text) };
  if (GROUPED.test(text)) return { value: new Decimal(text.replaceAll(',', '')) };
  if (GROUPED_POINT.test(text))
    return { value: new Decimal(text.replaceAll('.', '').replace(',', '.')) };
  return { faulty: 'marks' };
}

/** What is doubtful about a number with a single mark; nothing for a decimal point that is plainly one. */
function oneMark(whole: string, mark: string, rest: string): NumberReading | undefined {
  const decimal = trimmed(`${whole}.${rest}`);
  const grouped = `${whole}${rest}`;
  if (rest.length === 3 && whole.length <= 3 && !whole.startsWith('0'))
    return { faulty: 'two-ways', readings: mark === ',' ? [grouped, decimal] : [decimal, grouped] };
  if (mark === '.') return undefined;
  return { faulty: 'two-ways', readings: [decimal], apart: [whole, rest] };
}

/** Without idle zeros, and never with exactly three decimals, which would be read two ways again. */
function trimmed(text: string): string {
  const short = text.replace(/0+$/, '').replace(/\.$/, '');
  return /^[1-9]\d{0,2}\.\d{3}$/.test(short) ? `${short}0` : short;
}

/** Writes a number the way {@link readNumber} can only read one way. */
export function writeNumber(value: Exact): string {
  const text = value.toFixed();
  return text.includes('.') ? trimmed(text) : text;
}

const GLYPHS: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** `5/8` or `⅝`. Nothing for a zero below the line. */
export function readFraction(text: string): Exact | undefined {
  const glyph = Object.hasOwn(GLYPHS, text) ? GLYPHS[text] : undefined;
  const [top, below] = glyph ?? text.split('/').map(Number);
  if (top === undefined || below === undefined || !below) return undefined;
  return new Decimal(top).div(below);
}

export function roundTo(value: Exact, digits: number): Exact {
  return value.toDecimalPlaces(digits, Decimal.ROUND_HALF_UP);
}

export function ceil(value: Exact): Exact {
  return value.ceil();
}

/** Down to a whole number. */
export function floor(value: Exact): Exact {
  return value.floor();
}
