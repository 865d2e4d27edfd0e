/** Caps on piers: bought by the piece, by the name the line gives, else by their size. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { sideEndsOf } from '../../resolve/ends';
import type { BlockFacts } from '../../resolve/env';
import { fact, product, type Term } from '../../working/term';
import type { TopRun } from '../faces';
import type { PieceNeed } from '../needs';

/** `alike` piers that carry the same cap; one where it is not said. */
export function capsOf(facts: BlockFacts, alike?: Term): PieceNeed[] {
  const line = facts.line('cap');
  if (!line) return [];
  const material = line.word('material') || 'cap';
  const origin = line.values.material ? line.at('material') : line.origin;
  const one = fact(phrase`caps`, exact(1), 'pieces', line.origin);
  const count = alike ? product(phrase`caps`, 'pieces', [one, alike]) : one;
  return [{ material, count, origin, size: line.sides('size'), ends: sideEndsOf(line, 'size') }];
}

/** How high a cap is drawn, mm, where no line says it. */
const DRAWN_HEIGHT = 50;

/** A cap as the drawing shows it, centred on its pier. */
export function capTop(facts: BlockFacts, from: number, width: number, on: number): TopRun[] {
  const [along, deep, thick] = facts.line('cap')?.sides('size') ?? [];
  if (along === undefined) return [];
  const over = (along - width) / 2;
  return [
    {
      from: from - over,
      to: from + width + over,
      on,
      kind: 'cap',
      pieces: [],
      joint: 0,
      height: thick ?? DRAWN_HEIGHT,
      deep: deep === undefined ? undefined : [deep],
    },
  ];
}
