/** What perpend share prints with --json. Its shape is promised in shared/json-schema. */
import type { Shared } from '../show/share';
import { madeDocument } from './made';

export function shareDocument({ file, out, whom, level, client, left, replaced }: Shared): string {
  return madeDocument('share', {
    file,
    out,
    for: whom,
    without: client ? [level] : [level, 'client'],
    left: [...left].map(([what, count]) => ({ what, count })),
    replaced,
  });
}
