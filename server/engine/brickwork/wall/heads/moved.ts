/** Ways out of a row over or under an opening that does not work: another width, another bearing. */

import { phrase } from '../../../../../shared/phrase';
import { lastOwnLine } from '../../../findings/fit/decision';
import { lineAfter, type RemarkWay } from '../../../findings/remark';
import type { LengthWay } from '../../../setting-out';
import { lengthText } from '../../lengths';
import type { OpeningFacts } from '../openings';
import type { Lintel } from './lintel';

export function movedWidth({ facts, spec }: OpeningFacts, way: LengthWay): RemarkWay | undefined {
  const line = facts.line('width');
  const width = spec.width + way.change;
  if (!line || width <= 0) return undefined;
  const text = lengthText(facts.env, width);
  const title = phrase`Make the opening ${text} wide: ${way.wholes} in whole bricks`;
  return { title, edits: [{ ...line.at('width'), text }] };
}

export function movedBearing(
  opening: OpeningFacts,
  { bearing }: Lintel,
  way: LengthWay,
): RemarkWay | undefined {
  const { facts } = opening;
  const then = bearing.mm + way.change / 2;
  if (then < (bearing.least?.number('bearing') ?? 0) || facts.line('lintel')?.sides('size')?.[2])
    return undefined;
  const text = lengthText(facts.env, then);
  const title = phrase`A bearing of ${text}: ${way.wholes} in whole bricks`;
  const own = facts.line('bearing');
  if (own) return { title, edits: [{ ...own.at('bearing'), text }] };
  const indent = ' '.repeat(facts.heading.syntax.indent + 2);
  return {
    title,
    edits: [lineAfter(facts.block, lastOwnLine(facts), `${indent}bearing ${text}`)],
  };
}
