/** The file that a template becomes. */
import { format } from '../../../../grammar/print';
import { withoutAsks } from './answer';

/** In its one layout, without its questions. */
export function jobFrom(text: string): string {
  return format(withoutAsks(text));
}
