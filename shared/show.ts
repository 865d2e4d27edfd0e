/** Numbers for a reader. How they are marked is the reader's country's, given as a sample such as `1.234,56 €`. */
import { Decimal, type Exact } from './exact';

export interface FigureStyle {
  readonly group: string;
  readonly point: string;
  /** Where the currency sign stands, and whether a space parts it from the number. */
  readonly signAfter: boolean;
  readonly signSpace: boolean;
}

export const PLAIN_STYLE: FigureStyle = {
  group: ',',
  point: '.',
  signAfter: false,
  signSpace: false,
};

/** `£1,234.56` or `1.234,56 €` as a sample of how figures are written; nothing if it is no such sample. */
export function readStyle(sample: string): FigureStyle | undefined {
  const m = /^([^\d\s]*)(\s?)1(\D?)234(\D)56(\s?)([^\d\s]*)$/.exec(sample.trim());
  if (!m || m[3] === m[4]) return undefined;
  const after = m[6] !== '';
  return { group: m[3]!, point: m[4]!, signAfter: after, signSpace: (after ? m[5] : m[2]) !== '' };
}

/** At most `most` decimals, at least `least`; groups of three from 10,000 on, or always for money. */
export function showNumber(value: Exact, most: number, style = PLAIN_STYLE, least = 0): string {
  const fixed = value.toDecimalPlaces(most, Decimal.ROUND_HALF_UP);
  const text = fixed.toFixed(Math.max(least, Math.min(most, fixed.decimalPlaces())));
  const [whole = '0', rest] = text.replace('-', '').split('.');
  const sign = fixed.isNegative() && !fixed.isZero() ? '−' : '';
  return sign + grouped(whole, style.group) + (rest ? style.point + rest : '');
}

function grouped(whole: string, mark: string): string {
  if (whole.length < 4) return whole;
  return whole.replace(/\B(?=(\d{3})+$)/g, mark);
}

export function showMoney(
  amount: Exact,
  sign: string,
  digits: number,
  style = PLAIN_STYLE,
): string {
  const number = showNumber(amount.abs(), digits, style, digits);
  const gap = style.signSpace || sign.length > 1 ? '\u00a0' : '';
  const text = style.signAfter ? number + gap + sign : sign + gap + number;
  const shown = amount.toDecimalPlaces(digits, Decimal.ROUND_HALF_UP);
  return shown.isNegative() && !shown.isZero() ? `−${text}` : text;
}

/** `1` brick, `2` bricks. */
export function counted(n: number | string, one: string, many: string): string {
  return `${n}\u00a0${String(n) === '1' ? one : many}`;
}
