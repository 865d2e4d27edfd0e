/** An opening with courses over it of which nothing is said that carries them. */
import { phrase } from '../../../../shared/phrase';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { coursesTold } from '../courses';
import type { Remark } from '../remark';

export function headMissing({ facts, spec }: OpeningFacts, courses: number): Remark | undefined {
  const said = facts.line('head') ?? facts.line('lintel');
  if (said || spec.top === null) return undefined;
  const message = phrase`Nothing says what carries the ${coursesTold(courses - spec.top)} over the opening ${facts.name}: a lintel, or an arch for its head. Neither is counted.`;
  const { origin } = facts;
  return { code: 'head-missing', about: facts.name, severity: 'information', origin, message };
}
