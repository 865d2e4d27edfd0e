/** Lintels and centres, which come by the piece. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import { only, sideEndsOf } from '../../../resolve/ends';
import { counted, fact, type Term, withGaps } from '../../../working/term';
import { lengthText } from '../../lengths';
import type { Masonry } from '../../masonry';
import type { PieceNeed } from '../../needs';
import type { Head } from './head';
import type { Lintel } from './lintel';

export interface Centre {
  readonly count: Term;
  /** Nothing for one that the firm has. */
  readonly need?: PieceNeed;
}

export function lintelNeeds(heads: readonly Head[], { env }: Masonry) {
  const lintels = heads.flatMap((head) =>
    head.lintel ? [lintelNeed(head, head.lintel, env)] : [],
  );
  return { lintels, centres: heads.flatMap((head) => (head.arch ? [centreOf(head)] : [])) };
}

function lintelNeed({ opening }: Head, lintel: Lintel, env: Masonry['env']): PieceNeed {
  const { line, across, from, to, bearing } = lintel;
  const long = lengthText(env, to - from);
  const count = counted(
    phrase`lintels over ${opening.facts.title || phrase`the opening`}`,
    across,
    'pieces',
    {
      note: phrase`${long} long: the opening and a bearing at each end${across > 1 ? phrase`; side by side through the wall` : ''}`,
      args: bearing.line?.values.bearing ? [bearing.line.term('bearing', phrase`bearing`)] : [],
    },
  );
  const origin = line.values.material ? line.at('material') : line.origin;
  const gap = { what: phrase`no bearing is given for lintels`, origin: line.origin };
  const known = bearing.line ? count : withGaps(count, [gap]);
  const [wide, high] = line.sides('size') ?? [];
  const size = wide && high ? [to - from, wide, high] : undefined;
  const ends = size && [only(to - from), ...sideEndsOf(line, 'size')!.slice(0, 2)];
  return { material: line.word('material') || 'lintel', count: known, origin, size, ends };
}

function centreOf({ opening }: Head): Centre {
  const line = opening.facts.line('centre');
  const origin = line?.origin ?? opening.facts.line('head')!.origin;
  const count = fact(phrase`centres`, exact(1), 'pieces', origin);
  if (!line) return { count };
  return { count, need: { material: line.word('material'), count, origin: line.at('material') } };
}
