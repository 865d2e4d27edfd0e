/** A head that is larger than anything that spans an opening. */
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import type { Remark } from '../remark';

/** A limit of the tool: what is let into a wall is laid course by course. */
export function headSize(name: string, line: LineFacts, most: string): Remark {
  const message = phrase`Nothing so large spans an opening, and it is left out: an opening here takes ${most}.`;
  return { code: 'head-size', about: name, severity: 'error', origin: line.origin, message };
}
