/** A cavity narrower or wider than ties are made for. */
import { phrase } from '../../../shared/phrase';
import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import { defaultLine, type LineFacts } from '../resolve/env';
import type { Remark } from './remark';

/** Nothing where the line tells of no cavity, or no library of what is built. */
export function cavityOff(line: LineFacts, { env }: Masonry): Remark[] {
  const cavity = line.number('cavity');
  const rule = defaultLine(env, 'cavities-accepted');
  const value = rule?.values.cavity;
  if (cavity === undefined || !rule || value?.kind !== 'quantity') return [];
  const mm = value.unit?.factor.toNumber() ?? 1;
  const [low, high] = [value.low, value.high ?? value.low].map((end) => end.toNumber() * mm);
  const nearest = Math.min(Math.max(cavity, low!), high!);
  if (Math.abs(cavity - nearest) < 1e-6) return [];
  const text = (length: number) => lengthText(env, length);
  const source = rule.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const message = phrase`A cavity of ${text(cavity)} is ${cavity < nearest ? phrase`narrower` : phrase`wider`} than is built: ${text(low!)} to ${text(high!)}${source ? ` (${source})` : ''}. Beyond that the ties, and the wall itself, are for an engineer to design.`;
  return [
    {
      code: 'cavity',
      severity: 'warning',
      origin: line.at('cavity'),
      message,
      related: [{ origin: rule.origin, message: phrase`What is built` }],
      ways: [
        {
          title: phrase`A cavity of ${text(nearest)}`,
          edits: [{ ...line.at('cavity'), text: text(nearest) }],
        },
      ],
    },
  ];
}
