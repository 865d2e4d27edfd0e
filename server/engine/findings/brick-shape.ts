/** A brick that cannot be bonded through a wall or a pier: its length is not two widths and a joint. */

import { phrase } from '../../../shared/phrase';
import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import { defaultLine, type Env } from '../resolve/env';
import type { UnitSize } from '../setting-out';
import type { Remark } from './remark';

/**
 * L = 2 W + j for every brick of the published formats; between the widths of old ones stand as many joints as a
 * library allows. Without one a brick is what it is.
 */
export function bondsThrough({ length, width }: UnitSize, joint: number, env: Env): boolean {
  const most = defaultLine(env, 'joints-in-length')?.number('joints');
  const between = length - 2 * width;
  return between > 0 && (most === undefined || between <= most * joint + 1e-9);
}

export function brickShape(masonry: Masonry): Remark {
  const { env, brick, facts } = masonry;
  const { length, width } = brick.size!;
  const message = phrase`${brick.title} is ${lengthText(env, length)} long and ${lengthText(env, width)} wide. Only bricks whose length is two widths and a joint are laid more than half a brick thick, so this is left out.`;
  return {
    code: 'brick-shape',
    severity: 'error',
    origin: facts.line('brick')?.origin ?? facts.origin,
    message,
  };
}
