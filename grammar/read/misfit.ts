/** What to say of a line whose items are not those that its kind takes. */
import { phrase } from '../../shared/phrase';
import { cover, type Span } from '../../shared/span';
import type { LineKind } from '../lines';
import type { LineSyntax } from '../syntax';
import { oneOf } from './describe';
import { clipped, type Fault, fault, replace } from './fault';
import { help } from './help';
import type { Mismatch } from './match';
import { listed } from './numbers';

/** The fault at the place where matching got no further, with the nearest way out where one is plain. */
export function misfit(kind: LineKind, line: LineSyntax, miss: Mismatch): Fault {
  const item = line.items[miss.at];
  const example = phrase`Write it like this: ${kind.example}`;
  if (!item) {
    const wanted = listed(oneOf(miss.expected));
    const message = phrase`“${clipped(line.key!.text)}” is not finished: it needs ${wanted}. ${example}`;
    return fault('value-missing', 'error', line.span, message);
  }
  const there = cover(item.span, miss.expected.length ? item.span : line.items.at(-1)!.span);
  if (!miss.expected.length) {
    const message = phrase`Nothing more is read after “${clipped(line.key!.text)}” here. ${example}`;
    return fault('value-spare', 'error', there, message, [replace(phrase`Take it out`, there, '')]);
  }
  return wrongValue(kind, line, miss, there);
}

function wrongValue(kind: LineKind, line: LineSyntax, miss: Mismatch, there: Span): Fault {
  const wanted = listed(oneOf(miss.expected));
  const { at = there, hint, way, instead } = help(line, miss);
  const said = instead ?? phrase`“${clipped(line.key!.text)}” wants ${wanted} here.`;
  const message = phrase`${said}${hint ?? ''} Write it like this: ${kind.example}`;
  return fault('value-wrong', 'error', at, message, way ? [way] : []);
}
