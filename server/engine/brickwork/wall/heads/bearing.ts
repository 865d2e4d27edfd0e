/** How far a lintel reaches over the reveals: what its opening says, else what the library asks for. */

import { type Env, LineFacts } from '../../../resolve/env';
import type { OpeningFacts } from '../openings';

/** The nearest defaults' least bearing over an opening so wide: the narrowest `to` that takes it in, else the line without one. */
function leastBearing(env: Env, width: number): LineFacts | undefined {
  const said = env.book.all('defaults', 'bearing');
  const lines = said
    .filter(({ block }) => block === said[0]!.block)
    .map(({ block, line }) => new LineFacts(block, line, env));
  const span = (line: LineFacts) => line.number('span') ?? Number.POSITIVE_INFINITY;
  return lines.filter((line) => span(line) >= width).sort((a, b) => span(a) - span(b))[0];
}

export interface Bearing {
  /** Mm over each reveal. */
  readonly mm: number;
  /** What says so; nothing where no line does. */
  readonly line?: LineFacts;
  /** The least that the library asks for. */
  readonly least?: LineFacts;
}

/** The opening's own line, else what a lintel of a given length leaves, else the least there is. */
export function bearingOf({ facts, spec }: OpeningFacts, long: number | undefined): Bearing {
  const least = leastBearing(facts.env, spec.width);
  const own = facts.line('bearing');
  const said = own?.number('bearing');
  if (own && said !== undefined) return { mm: said, line: own, least };
  if (long !== undefined) return { mm: (long - spec.width) / 2, line: facts.line('lintel'), least };
  return { mm: least?.number('bearing') ?? 0, line: least, least };
}
