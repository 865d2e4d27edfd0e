/** A brick that cannot be bonded through a wall or a pier: its length is not two widths and a joint. */

import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import type { UnitSize } from '../setting-out';
import type { Remark } from './remark';

/** As many joints as may stand between two widths before they are no longer a brick’s length: room for old bricks. */
const MOST_JOINTS = 2.5;

/** L = 2 W + j for every brick of the published formats, within what old bricks vary. */
export function bondsThrough({ length, width }: UnitSize, joint: number): boolean {
  const between = length - 2 * width;
  return between > 0 && between <= MOST_JOINTS * joint;
}

export function brickShape(masonry: Masonry): Remark {
  const { env, brick, facts } = masonry;
  const { length, width } = brick.size!;
  const message = `${brick.title} is ${lengthText(env, length)} long and ${lengthText(env, width)} wide. Only bricks whose length is two widths and a joint are laid more than half a brick thick, so this is left out.`;
  return {
    code: 'brick-shape',
    severity: 'error',
    origin: facts.line('brick')?.origin ?? facts.origin,
    message,
  };
}
