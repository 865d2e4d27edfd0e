/** A head, an arch or a sill in a brick of another size than that of its wall. */
import { phrase } from '../../../../shared/phrase';
import { brickIn } from '../../brickwork/wall/heads/laid';
import type { Site } from '../../brickwork/wall/heads/site';
import type { LineFacts } from '../../resolve/env';
import { differs } from '../dpc';
import type { Remark } from '../remark';

export function headBrick(line: LineFacts, { masonry, spec }: Site): Remark | undefined {
  const brick = brickIn(line, masonry);
  if (!brick.size || !differs(brick.size, spec.unit)) return undefined;
  const message = phrase`${brick.title} is of another size than the wall’s brick. It is set out by the wall’s brick, and as many are counted as there would be of that. No line can say how many it really takes: lay it out dry, or work it out from its own size, before it is bought.`;
  return { code: 'head-brick', severity: 'warning', origin: line.at('brick'), message };
}
