/** A step of a footing that is higher than the footing is thick: the upper strip would stand on nothing. */
import { phrase } from '../../../../shared/phrase';
import { lengthText, sizeText } from '../../brickwork/lengths';
import { defaultLine, type Env, type LineFacts } from '../../resolve/env';
import type { FootingStep } from '../../setting-out';
import type { Remark } from '../remark';

/** Footings are dug to the next 25 mm. */
const TO = 25;

/** Nothing where no library says how a stepped footing is built. */
export function footingStep(
  line: LineFacts,
  sides: readonly number[],
  steps: readonly FootingStep[],
  env: Env,
): Remark | undefined {
  const rule = defaultLine(env, 'footing-lap');
  const highest = steps.reduce<FootingStep | undefined>(
    (a, b) => (a && a.high >= b.high ? a : b),
    undefined,
  );
  const deep = sides[1]!;
  if (!rule || !highest || highest.high <= deep + 1e-6) return undefined;
  const enough = [sides[0]!, Math.ceil(highest.high / TO) * TO];
  const source = rule.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const message = phrase`The step at ${lengthText(env, highest.at)} is ${lengthText(env, highest.high)} high, more than the footing is thick (${lengthText(env, deep)}): a step is no higher than that${source ? ` (${source})` : ''}, unless an engineer designs it. Step it more often, or make it thicker.`;
  const text = sizeText(env, enough);
  return {
    code: 'footing-step',
    severity: 'warning',
    origin: line.at('size'),
    message,
    related: [{ origin: rule.origin, message: phrase`How a stepped footing is built` }],
    ways: [{ title: phrase`A footing of ${text}`, edits: [{ ...line.at('size'), text }] }],
  };
}
