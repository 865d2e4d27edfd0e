/** A movement joint that cannot stand where its line puts it. */
import type { LineFacts } from '../resolve/env';
import type { Remark } from './remark';

export function movementPlace(line: LineFacts, why: string): Remark {
  return {
    code: 'movement-place',
    severity: 'error',
    origin: line.origin,
    message: `This movement joint is left out. ${why} Say how much wall stands before it, in clear wall: movement-joint left 5.84 m.`,
  };
}
