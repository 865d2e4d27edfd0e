/** What of a drawing has changed since another state of it. */
import type { Part, Parts } from '../../../shared/protocol/preview';

export interface State {
  readonly order: readonly string[];
  readonly parts: Parts;
}

/** The order only where it is another; the parts that are new or other. Those that are in no order any more are gone. */
export function changeSince(before: State, after: State): Partial<State> & Pick<State, 'parts'> {
  const parts: Record<string, Part> = {};
  for (const [key, part] of Object.entries(after.parts)) {
    const was = Object.hasOwn(before.parts, key) ? before.parts[key] : undefined;
    if (!was || !isSame(was, part)) parts[key] = part;
  }
  return sameOrder(before.order, after.order) ? { parts } : { order: after.order, parts };
}

function isSame(a: Part, b: Part): boolean {
  if (a.kind !== b.kind) return false;
  // A pattern’s key is what it says.
  if (a.kind === 'pattern') return true;
  if (a.kind === 'row' && b.kind === 'row')
    return a.pattern === b.pattern && a.course === b.course && a.frame === b.frame;
  return JSON.stringify(a) === JSON.stringify(b);
}

function sameOrder(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((key, i) => key === b[i]);
}
