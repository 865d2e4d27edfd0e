/** Steps of a wall or of its ground that cannot be: beyond its ends, or such that nothing of it is left. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import type { LineFacts } from '../../resolve/env';
import type { Remark } from '../remark';

export function stepOutside(line: LineFacts, { env }: Masonry, length: number): Remark {
  const message = phrase`This step is not within the wall, which is ${lengthText(env, length)} long: nothing steps here.`;
  return { code: 'step-outside', severity: 'error', origin: line.at('at'), message };
}

/** `gone` is the stretch, mm from the left end. */
export function nothingLeft(
  { facts, env }: Masonry,
  gone: { readonly from: number; readonly to: number },
): Remark {
  const origin = (facts.line('ground') ?? facts.line('top'))?.origin ?? facts.origin;
  const where = phrase`from ${lengthText(env, gone.from)} to ${lengthText(env, gone.to)}`;
  const message = phrase`Nothing of the wall is left ${where}: its top steps down to the ground, or the ground up to its top. The height is that of the left end.`;
  return { code: 'step-all', severity: 'error', origin, message };
}
