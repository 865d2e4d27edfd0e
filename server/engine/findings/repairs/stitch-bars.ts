/** A crack to stitch, and nothing that says with what. */
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import type { Remark } from '../remark';

export function stitchBars(line: LineFacts): Remark {
  return {
    code: 'stitch-bars',
    severity: 'warning',
    origin: line.origin,
    message: phrase`No defaults give a crack-stitch: which bars, how long, how far apart, and how deep their beds are raked. The stitching is not counted, and the price is not complete.`,
    leavesOut: phrase`the stitching is not counted: no defaults give a crack-stitch`,
  };
}
