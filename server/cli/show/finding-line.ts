/** A finding on one line, for programs that read it: an editor's task, an action on a server. This form stays as it is. */
import type { Finding, Severity } from '../../../shared/finding';
import type { Session } from '../session';
import { placeText } from './findings';

/** In no language of a reader: whoever reads the line looks for these. */
const WORDS: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'hint',
};

/** `job.perp:12:3 warning wall-perpends: The message.` */
export function findingLine({ place, severity, code, message }: Finding, session: Session): string {
  const said = message.replace(/\s*[\r\n]+\s*/g, ' ');
  return `${placeText(place, session)} ${WORDS[severity]} ${code}: ${said}`;
}
