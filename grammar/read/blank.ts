/** A text that is still to be found out: `?`, or a text that begins with it and says what is wanted. */
import type { Item } from '../syntax';
import type { UnknownValue } from './values';

const OPEN = '?';

export function blankIn(item: Item): UnknownValue | undefined {
  const { kind, span } = item;
  if (kind === 'sign' && item.text === OPEN) return { kind: 'unknown', span };
  if (kind !== 'text' || !item.text.trimStart().startsWith(OPEN)) return undefined;
  const wanted = item.text.trimStart().slice(OPEN.length).trim();
  return { kind: 'unknown', span, ...(wanted && { wanted }) };
}
