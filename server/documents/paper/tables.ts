/** The tables of a paper. */
import type { Part, Table } from './model';

/** In the order they are read. */
export function tablesOf(parts: readonly Part[]): Table[] {
  return parts.flatMap((part) => {
    if (part.part === 'together') return tablesOf(part.parts);
    return part.part === 'table' ? [part] : [];
  });
}
