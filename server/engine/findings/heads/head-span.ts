/** An opening so wide that what spans it is for an engineer to design. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { defaultLine, type LineFacts } from '../../resolve/env';
import type { Remark } from '../remark';

export function headSpan({ facts, spec }: OpeningFacts, line: LineFacts): Remark | undefined {
  const { env } = facts;
  const most = defaultLine(env, 'head-span');
  const span = most?.number('span');
  if (!most || span === undefined || spec.width <= span) return undefined;
  const message = phrase`The opening ${facts.name} is ${lengthText(env, spec.width)} wide. Over ${lengthText(env, span)} have what spans it, and what that bears on, designed by a structural engineer or from its maker’s tables: nothing here checks what it carries.`;
  const related = [{ origin: most.origin, message: phrase`The widest that nobody is told of` }];
  const origin = line.origin;
  return { code: 'head-span', about: facts.name, severity: 'warning', origin, message, related };
}
