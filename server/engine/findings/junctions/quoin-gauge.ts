/** A corner of walls whose courses are not level: they cannot lap round it. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Env, LineFacts } from '../../resolve/env';
import type { SettingOut, Side } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { headOrigin, type Remark } from '../remark';

export function quoinGauge(
  line: LineFacts,
  side: Side,
  own: SettingOut,
  other: { readonly block: SourceBlock; readonly out: SettingOut },
  env: Env,
): Remark {
  const name = line.word('wall');
  const gauges = [own, other.out].map((out) => lengthText(env, out.gauge));
  const message = phrase`The courses of this wall are ${gauges[0]} high and those of ${name} ${gauges[1]}, so they do not lap round the corner. Both are laid with free ends, and the corner is counted twice. Give both the same brick and gauge.`;
  return {
    code: 'quoin-gauge',
    about: side,
    severity: 'warning',
    origin: line.origin,
    message,
    related: [{ origin: headOrigin(other.block), message: phrase`The wall ${name}` }],
  };
}
