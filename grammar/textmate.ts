/**
 * The editor's own colouring, indentation and snippets, made from the table of lines. `npm run reference`
 * writes them; a test asserts that what is committed is what this makes.
 */
import { UNITS } from '../shared/units';
import { BODY_ONLY, HEADINGS, type LineKind, type Slot } from './lines';
import { LETTER } from './tokens';

type Rule = Readonly<Record<string, unknown>>;

/** The alphabets of names, as Oniguruma writes a character. */
const L = LETTER.replace(/\\u([0-9a-f]{4})/g, '\\x{$1}');
const NO_MORE = `(?![${L}0-9²³'’-])`;
const WORD = `[${L}](?:[${L}0-9²³'’-]|\\.(?=[${L}0-9]))*`;
const SPACE = '[ \\t\\x{00a0}\\x{202f}]';
const FRACTION = '(?:\\d+/\\d+|[½¼¾⅓⅔⅛⅜⅝⅞])';
const NUMBER = `(?:${FRACTION}|\\d+(?:[.,'’]\\d+)*(?:${SPACE}*${FRACTION})?)`;
const SIGN = '[$£¥€¢₠-₿]';
const CODE = `[A-Z]{3}${NO_MORE}`;

const INNER = HEADINGS.flatMap((heading) => heading.body ?? []);
const DEEPEST = INNER.flatMap((kind) => kind.body ?? []);
const EVERY: readonly LineKind[] = [...HEADINGS, ...INNER, ...DEEPEST];

/** Longest first, so that `cut-out` is not read as `cut`. */
function oneOf(words: Iterable<string>): string {
  const escaped = [...new Set(words)].map((word) => word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'));
  return `(?:${escaped.sort((a, b) => b.length - a.length || (a < b ? -1 : 1)).join('|')})`;
}

function slotsIn(slots: readonly Slot[]): Slot[] {
  return slots.flatMap((slot) => {
    if (slot.slot === 'optional' || slot.slot === 'list') return slotsIn(slot.slots);
    if (slot.slot === 'either') return slot.of.flatMap((group) => slotsIn(group));
    return [slot];
  });
}

const SLOTS = EVERY.flatMap((kind) => slotsIn(kind.takes));
const LITERALS = SLOTS.flatMap((s) => (s.slot === 'literal' && /^\w/.test(s.text) ? [s.text] : []));
const CHOICES = SLOTS.flatMap((s) => (s.slot === 'choice' ? s.of : []));
const UNIT = oneOf(UNITS.flatMap((unit) => [unit.name, ...unit.also]));

function givesName(kind: LineKind): boolean {
  return kind.takes[0]?.slot === 'new-name';
}

function keys(kinds: readonly LineKind[]): string[] {
  return kinds.filter((kind) => !kind.open).map((kind) => kind.key);
}

/** A line from its first word on; its values follow until its end. */
function lineRule(start: string, words: string, scope: string, named = false): Rule {
  const name = named ? `(?:${SPACE}+(${WORD}))?` : '';
  const captures = { 1: { name: scope }, ...(named && { 2: { name: 'entity.name.perpend' } }) };
  return {
    begin: `${start}(${words})${NO_MORE}${name}`,
    beginCaptures: captures,
    end: '$',
    patterns: [{ include: '#values' }],
  };
}

function lineRules(): Rule[] {
  const heading = 'keyword.control.heading.perpend';
  const key = 'support.type.property-name.perpend';
  const top = '^\\x{feff}?';
  const naming = INNER.filter(givesName);
  return [
    lineRule(top, oneOf(keys(HEADINGS.filter(givesName))), heading, true),
    lineRule(top, oneOf(keys(HEADINGS.filter((kind) => !givesName(kind)))), heading),
    lineRule(`^${SPACE}+`, oneOf(keys(naming.filter((kind) => kind.body))), heading, true),
    lineRule(`^${SPACE}+`, oneOf(keys(naming.filter((kind) => !kind.body))), key, true),
    lineRule(`^${SPACE}+`, oneOf(keys([...INNER, ...DEEPEST])), key),
    lineRule('^', oneOf([...BODY_ONLY].filter((word) => keys(EVERY).includes(word))), key),
    lineRule(`^${SPACE}+`, WORD, 'variable.other.key.perpend'),
  ];
}

function match(pattern: string, ...scopes: string[]): Rule {
  if (scopes.length === 1) return { match: pattern, name: `${scopes[0]}.perpend` };
  const captures = scopes.map((scope, i) => [i + 1, { name: `${scope}.perpend` }]);
  return { match: pattern, captures: Object.fromEntries(captures) };
}

const NUMERIC = 'constant.numeric';
const CURRENCY = 'keyword.other.unit.currency';

function valueRules(): Rule[] {
  const range = `(${NUMBER})(?:${SPACE}*(\\.\\.\\.?|…)${SPACE}*(${NUMBER}))?`;
  return [
    { include: '#comment' },
    { include: '#text' },
    match('\\d{4}-\\d{2}-\\d{2}(?![\\d-])', 'constant.other.date'),
    match('\\d{1,2}:\\d{2}(?![\\d:])', 'constant.other.time'),
    match('\\d+(?:-\\d+)+', 'constant.other.reference'),
    match(
      `(${SIGN})${SPACE}*(${NUMBER})${SPACE}*(\\.\\.\\.?|…)${SPACE}*(${SIGN})?${SPACE}*(${NUMBER})`,
      CURRENCY,
      NUMERIC,
      'keyword.operator.range',
      CURRENCY,
      NUMERIC,
    ),
    match(`(${SIGN})${SPACE}*(${NUMBER})`, CURRENCY, NUMERIC),
    match(`(${NUMBER})${SPACE}*(${SIGN}|${CODE})`, NUMERIC, CURRENCY),
    match(`(${CODE})${SPACE}+(${NUMBER})`, CURRENCY, NUMERIC),
    match(
      `${range}(?:${SPACE}*(${UNIT})${NO_MORE}|${SPACE}*(%))`,
      NUMERIC,
      'keyword.operator.range',
      NUMERIC,
      'keyword.other.unit',
      'keyword.other.unit',
    ),
    match(range, NUMERIC, 'keyword.operator.range', NUMERIC),
    match(`(per)${SPACE}+(${UNIT})${NO_MORE}`, 'keyword.operator.word', 'keyword.other.unit'),
    match(`(/)${SPACE}*(${UNIT})${NO_MORE}`, 'keyword.operator.word', 'keyword.other.unit'),
    match(`(?:×|\\*|x(?![${L}-]))`, 'keyword.operator.by'),
    match(`${oneOf(LITERALS)}${NO_MORE}`, 'keyword.operator.word'),
    match(`${oneOf(CHOICES)}${NO_MORE}`, 'constant.language'),
    match(WORD, 'variable.other'),
    match('\\?', 'constant.language.unknown'),
    match('[,+:]', 'punctuation.separator'),
  ];
}

function textRule(open: string, inner: string, close: string): Rule {
  return match(`${open}${inner}*(?:${close}|$)`, 'string.quoted.double');
}

/** The TextMate grammar. */
export function textmateGrammar(): Rule {
  return {
    name: 'Perpend',
    scopeName: 'source.perpend',
    fileTypes: ['perp'],
    patterns: [{ include: '#comment' }, ...lineRules(), { include: '#values' }],
    repository: {
      comment: match('#.*$', 'comment.line.number-sign'),
      text: {
        patterns: [
          textRule('"', '(?:[^"\\\\]|\\\\.)', '"'),
          textRule('“', '[^”]', '”'),
          textRule('„', '[^“”]', '[“”]'),
        ],
      },
      values: { patterns: valueRules() },
    },
  };
}

/** What the editor does while typing. */
export function languageConfiguration(): Rule {
  const blocks = oneOf(keys(HEADINGS.filter((kind) => kind.body)));
  const inner = oneOf(keys(INNER.filter((kind) => kind.body && !kind.inColumn)));
  const onlyTop = keys(HEADINGS).filter((word) => !keys([...INNER, ...DEEPEST]).includes(word));
  const end = '(?![\\w-])';
  return {
    comments: { lineComment: '#' },
    brackets: [],
    autoClosingPairs: [{ open: '"', close: '"', notIn: ['string', 'comment'] }],
    surroundingPairs: [['"', '"']],
    wordPattern: `\\d+(?:[.,]\\d+)*|[${LETTER}](?:[${LETTER}0-9²³'’-]|\\.(?=[${LETTER}0-9]))*`,
    indentationRules: {
      increaseIndentPattern: `^${blocks}${end}.*$|^\\s+${inner}${end}.*$`,
      decreaseIndentPattern: `^\\s+${oneOf(onlyTop)}${end}.*$`,
    },
    folding: { offSide: true },
  };
}
