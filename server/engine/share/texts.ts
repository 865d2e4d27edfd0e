/** Texts that say what a copy must not: money in any way of writing it, amounts that are hidden, names that are. */
import type { Exact } from '../../../shared/exact';

/** What stands where something was taken out. */
export const TAKEN_OUT = '…';

export interface Hidden {
  /** Codes of currencies. */
  readonly codes: ReadonlySet<string>;
  /** Finds a word that says money: see {@link moneyWord}. */
  readonly moneyWord: RegExp;
  /** Amounts that are hidden, as digits: see {@link digitsOf}. */
  readonly amounts: ReadonlySet<string>;
  /** Names that are hidden, and words of them. */
  readonly names: readonly string[];
}

const NUMBER = String.raw`\p{Nd}(?:[\p{Nd}.,'’·٫٬\s]{0,40}\p{Nd})?`;
/** £1,450.00, 1450 £, £ 1.4k, 45p, 1,450/-. */
const WITH_SIGN = new RegExp(
  String.raw`\p{Sc}\s{0,4}${NUMBER}\s{0,4}(?:k|m|bn)?|${NUMBER}\s{0,4}(?:k\s{0,4})?\p{Sc}|${NUMBER}\s{0,4}(?:p|k|/-|,-)(?![\p{L}\p{Nd}])`,
  'giu',
);
/** Each apart: in `for 450 GBP` the number belongs to what follows. */
const CODE_BEFORE = new RegExp(String.raw`(?<!\p{L})(\p{L}{3})\s{0,4}${NUMBER}`, 'gu');
const CODE_AFTER = new RegExp(String.raw`${NUMBER}\s{0,4}(\p{L}{3})(?!\p{L})`, 'gu');
const ANY_NUMBER = new RegExp(NUMBER, 'gu');

/** The text without them; the same text where it says nothing of the kind. */
export function cleaned(text: string, hidden: Hidden): string {
  const plain = text.normalize('NFKC').replace(/[\p{Cf}\p{Cc}]/gu, '');
  // Money in words can be said in any number of ways: the sentence goes.
  if (hidden.moneyWord.test(plain) || /\p{Sc}/u.test(plain.replace(WITH_SIGN, '')))
    return TAKEN_OUT;
  const done = hidden.names.reduce(withoutName, withoutAmounts(plain, hidden));
  return done === plain ? text : done.replace(/(?:…\s{0,4})+/g, `${TAKEN_OUT} `).trim();
}

function withoutAmounts(text: string, { codes, amounts }: Hidden): string {
  const ofCode = (all: string, code: string) => (codes.has(code.toUpperCase()) ? TAKEN_OUT : all);
  return text
    .replace(WITH_SIGN, TAKEN_OUT)
    .replace(CODE_AFTER, ofCode)
    .replace(CODE_BEFORE, ofCode)
    .replace(ANY_NUMBER, (number) => (isHidden(number, amounts) ? TAKEN_OUT : number));
}

/** Numbers of one or two digits are everywhere, and tell nothing. */
const LEAST_DIGITS = 3;

/** Longer ones are no amounts, and cost time to look at. */
const MOST_DIGITS = 30;

/** Hundreds and more to the penny: `1450.00`. Hardly anything else is written so. */
const LIKE_MONEY = /\p{Nd}(?:[\s.,'’]?\p{Nd}){2,}[.,·٫]\p{Nd}{2}$/u;

/** A number may be several that stand beside each other: each is looked at too. */
function isHidden(number: string, amounts: ReadonlySet<string>): boolean {
  if (number.length > MOST_DIGITS || LIKE_MONEY.test(number)) return true;
  return [number, ...number.split(/\s+/)].some((each) => {
    const digits = asDigits(each);
    return amounts.has(digits) || (/[.,'’·٫]/.test(each) && amounts.has(`.${digits}`));
  });
}

/** Of any script; without marks, and without noughts before it. */
function asDigits(text: string): string {
  return [...text]
    .filter((c) => /\p{Nd}/u.test(c))
    .map(digitOf)
    .join('')
    .replace(/^0+/, '');
}

/** Digits of every script stand in rows of ten. */
function digitOf(sign: string): string {
  let zero = sign.codePointAt(0)!;
  for (let i = 0; i < 9 && /\p{Nd}/u.test(String.fromCodePoint(zero - 1)); i++) zero--;
  return String((sign.codePointAt(0)! - zero) % 10);
}

/** As {@link cleaned} knows an amount, with as many digits after the point as anyone writes; one with a fraction also where it is short. */
export function digitsOf(value: Exact): string[] {
  const plain = value.abs();
  const ways = [plain.toFixed(), ...[0, 1, 2, 3, 4].map((digits) => plain.toFixed(digits))];
  const long = ways.map(asDigits).filter((digits) => digits.length >= LEAST_DIGITS);
  const short = plain.isInteger() ? [] : [plain.toFixed(), plain.toFixed(2)];
  return [...new Set([...long, ...short.map((way) => `.${asDigits(way)}`)])];
}

/** Whatever its case; not within another word. */
function withoutName(text: string, name: string): string {
  return text.replace(
    new RegExp(`(?<![\\p{L}\\p{Nd}])${pattern(name)}(?![\\p{L}\\p{Nd}])`, 'giu'),
    TAKEN_OUT,
  );
}

/** As it is written, with any space or a hyphen between its words. */
function pattern(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, String.raw`[\s-]+`);
}

/** Finds any of the words that money goes by, whatever its case; a number may touch it: `450quid`. */
export function moneyWord(words: readonly string[]): RegExp {
  const said = words.map((word) => word.normalize('NFKC').trim()).filter((w) => /\p{L}/u.test(w));
  if (!said.length) return /(?!)/u;
  return new RegExp(String.raw`(?<!\p{L})(?:${said.map(pattern).join('|')})(?!\p{L})`, 'iu');
}

/** Words this short are in every text. */
const LEAST_LETTERS = 4;

/** Of a name that is hidden: all of it, and each of its words that is written with a capital. */
export function namesIn(text: string): string[] {
  const plain = text.normalize('NFKC').trim();
  const words = plain.split(/[^\p{L}\p{M}\p{Nd}]+/u);
  const names = words.filter(
    (word) => [...word].length >= LEAST_LETTERS && /^[\p{Lu}\p{Lo}\p{Nd}]/u.test(word),
  );
  return [plain, ...plain.split(/\s*,\s*/), ...names].filter((name) => [...name].length > 2);
}
