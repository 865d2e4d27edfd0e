/** A partner firm whose file is not there, or may not be read. */
import { later, phrase, spoken } from '../../../shared/phrase';
import type { Origin } from '../working/term';
import { MOST_CHARACTERS, type Refusal } from '../workspace/source';
import type { Remark } from './remark';

export type NoFile = 'unsaid' | 'outside' | 'missing' | 'circle' | 'many' | Refusal;

const WHY: Readonly<Record<NoFile, (path: string) => string>> = {
  unsaid: () => phrase`No line says where this partner’s rates stand. Add it: file "name.perp".`,
  outside: (path) =>
    phrase`“${path}” lies outside the workspace folder. A job can only use files of its own workspace. Copy it in.`,
  missing: (path) =>
    phrase`“${path}” is not there or cannot be read. Check the name; it counts from this file’s own folder.`,
  circle: (path) => phrase`“${path}” is this file itself, and no partner’s.`,
  'too-large': (path) =>
    phrase`“${path}” is larger than ${MOST_CHARACTERS / 1024 / 1024} MiB and is not read.`,
  'utf-16': (path) =>
    phrase`“${path}” is written in UTF-16, and is not read: files of a job are texts in UTF-8. Open it and save it as UTF-8.`,
  many: (path) => phrase`Partners name too many files, so “${path}” is not read.`,
};

const SO = later`Until then the work is reckoned by the job’s own rates.`;

export function partnerFile(origin: Origin, why: NoFile, path = ''): Remark {
  const message = `${WHY[why](path)} ${spoken(SO)}`;
  return { code: 'partner-file', severity: 'error', origin, message };
}
