/** What stands after a line's word, in its one canonical spacing. For lines that can be read. */
import { UNITS } from '../../shared/units';
import type { Item, MeasureItem, MoneyItem, NumberText, TextItem } from '../syntax';

/** `m²` is written `m2`, which every keyboard has. */
const PLAIN = new Map(
  UNITS.flatMap((u) => u.also.filter((a) => /[²³°]/.test(a)).map((a) => [a, u.name] as const)),
);

function plain(unit: string): string {
  return PLAIN.get(unit) ?? unit;
}

/** The items of a line, one space between them. `source` is the line they were read from. */
export function printItems(items: readonly Item[], source: string): string {
  let text = '';
  let before: string | undefined;
  for (const item of items) {
    const said = print(item, source, before === 'per');
    text += before === undefined || said === ',' ? said : ` ${said}`;
    before = said;
  }
  return text;
}

function print(item: Item, source: string, afterPer: boolean): string {
  switch (item.kind) {
    case 'measure':
      return printMeasure(item, source);
    case 'money':
      return printMoney(item, source);
    case 'text':
      return printText(item, source);
    case 'sign':
      return item.text === '/' ? 'per' : item.text;
    case 'word':
      return afterPer ? plain(item.text) : item.text;
    default:
      return item.text;
  }
}

function printMeasure(item: MeasureItem, source: string): string {
  const high = item.high ? `..${printNumber(item.high, source)}` : '';
  const number = printNumber(item.low, source) + high;
  if (!item.unit) return number;
  return item.unit.text === '%' ? `${number}%` : `${number} ${plain(item.unit.text)}`;
}

function printMoney({ sigil, amount, high }: MoneyItem, source: string): string {
  const upTo = high ? `..${sigil.text}${printNumber(high, source)}` : '';
  return sigil.text + printNumber(amount, source) + upTo;
}

/** As written: only the space between whole and fraction is made one. */
function printNumber(number: NumberText, source: string): string {
  return source.slice(number.span.start, number.span.end).replace(/[ \t\u00a0\u202f\ufeff]+/, ' ');
}

function printText(item: TextItem, source: string): string {
  const written = source.slice(item.span.start, item.span.end);
  if (written.startsWith('"')) return written;
  return `"${item.text.replace(/["\\]/g, '\\$&')}"`;
}
