/** What a finding is beside grave or not: of something that changes nothing, or of something that is old. */
import type { Finding } from '../../../shared/finding';

export type Tag = 'unnecessary' | 'deprecated';

/** The place of such a finding is what changes nothing: an editor shows it faded. */
const UNNECESSARY: ReadonlySet<string> = new Set([
  'ask-idle',
  'block-twice',
  'core-idle',
  'fit-idle',
  'line-idle',
  'line-twice',
  'match-idle',
  'not-computed',
  'option-idle',
  'partner-idle',
  'profit-and-margin',
  'retention-idle',
]);

export function tagsOf({ code, place }: Pick<Finding, 'code' | 'place'>): readonly Tag[] {
  if (UNNECESSARY.has(code)) return ['unnecessary'];
  // A figure that the firm’s own jobs have left behind; at a heading it is about a line that is not there.
  return code === 'output-measured' && place.start > 0 ? ['deprecated'] : [];
}
