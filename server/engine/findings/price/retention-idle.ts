/** Money held back of stages that there are none of. */
import { phrase } from '../../../../shared/phrase';
import { ofPrice } from '../../price/settings';
import type { JobPrice } from '../../price/total';
import type { Env } from '../../resolve/env';
import { lineAfter, type Remark, takenOut } from '../remark';

export function retentionIdle({ stages }: JobPrice, env: Env): Remark[] {
  const line = ofPrice(env, 'retention');
  if (!line || stages.length) return [];
  const message = phrase`Retention is held back of each stage, and there are no stages: nothing is held back. Say when the price is paid.`;
  const at = line.line.syntax.span.line;
  const edits = [lineAfter(line.block, at, '  stage "On completion" rest')];
  const ways = [
    { title: phrase`Add a stage for all of it`, edits, preferred: true },
    takenOut(line),
  ];
  return [{ code: 'retention-idle', severity: 'warning', origin: line.origin, message, ways }];
}
