/** How far the bricks of a make may be from their work size: by a class of a standard, or as the maker declares. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { type BlockFacts, type Env, factsNamed } from '../../resolve/env';
import { counted, fact, type Origin, type Term } from '../../working/term';
import type { Brick } from '../goods';

export interface Tolerance {
  /** “T2”, “as declared”. */
  readonly name: string;
  /** Of the brick’s height, either way, mm. */
  readonly height: Term;
  /** How far apart the heights of one delivery may be, mm; nothing where its class does not say. */
  readonly apart?: Term;
  readonly origin: Origin;
}

/** Nothing where the brick has no tolerance line, or one that says nothing of its height. */
export function toleranceOf({ facts, size }: Brick, env: Env): Tolerance | undefined {
  const line = facts?.line('tolerance');
  if (!line || !size) return undefined;
  const sides = line.sides('size');
  if (sides) {
    const height = fact(phrase`size tolerance, height`, exact(sides[2]!), 'mm', line.at('size'));
    return { name: phrase`as declared`, height, origin: line.origin };
  }
  const name = line.word('class');
  const known = factsNamed(env, 'tolerance', name);
  const high = fact(
    phrase`brick, height`,
    exact(size.height),
    'mm',
    facts?.line('size')?.at('size'),
  );
  const height = known && classTerm(known, high);
  if (!known || !height) return undefined;
  return { name, height, apart: rangeTerm(known, high), origin: line.origin };
}

/**
 * What a class allows of a size: so many times its root, in mm, to a whole mm and no less than its least
 * (EN 771-1 5.2.2: T1 is 0.40 and 3 mm, T2 0.25 and 2 mm); or by a table of sizes (ASTM C216).
 */
export function classTerm(
  known: BlockFacts,
  size: Term,
  label = phrase`size tolerance, height`,
): Term | undefined {
  const mm = size.value.toNumber();
  const row = known.lines('up-to').find((l) => (l.number('size') ?? 0) >= mm - 1e-6);
  if (row)
    return counted(label, exact(row.number('within') ?? 0), 'mm', {
      args: [size, row.term('within', phrase`within`)],
    });
  const root = known.line('root');
  if (!root) return undefined;
  const least = known.line('at-least');
  const value = Math.max(least?.number('least') ?? 0, wholeRoot(root.number('factor') ?? 0, mm));
  const args = [
    size,
    root.term('factor', phrase`times the root`),
    ...(least ? [least.term('least', phrase`at least`)] : []),
  ];
  return counted(label, exact(value), 'mm', {
    args,
    note: phrase`the root of the size in mm, to a whole mm`,
  });
}

/** How far apart the sizes of one delivery may be, mm: so many times the root, to a whole mm; nothing where its class does not say. */
export function rangeTerm(known: BlockFacts, size: Term): Term | undefined {
  const line = known.line('range');
  if (!line) return undefined;
  const value = wholeRoot(line.number('factor') ?? 0, size.value.toNumber());
  const args = [size, line.term('factor', phrase`times the root`)];
  return counted(phrase`largest and smallest apart`, exact(value), 'mm', { args });
}

function wholeRoot(factor: number, mm: number): number {
  return Math.round(factor * Math.sqrt(Math.max(0, mm)));
}
