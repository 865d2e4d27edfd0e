/** The tasks that hours are reckoned for: the words of the output block. */
import { OUTPUT } from '../../../grammar/lines/outputs';

export function taskWords(): readonly string[] {
  return (OUTPUT.body ?? []).map((kind) => kind.key).filter((key) => key !== 'source');
}
