/** What perpend take prints with --json. Its shape is promised in shared/json-schema. */
import type { Told } from '../show/take';
import { madeDocument } from './made';

export function takeDocument({ file, from, edits, refused, ours, written }: Told): string {
  return madeDocument('take', { file, from, written, edits, refused, ours });
}
