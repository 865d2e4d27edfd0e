/** A file that is not read at all: of it there is nothing else to tell. */
import type { Finding } from '../../../shared/finding';
import { phrase } from '../../../shared/phrase';
import type { Origin } from '../working/term';
import { MOST_CHARACTERS, type Refusal } from '../workspace/source';
import type { Remark } from './remark';

/** At the head of the file itself. */
export function refused(file: string, why: Refusal): Finding {
  const place = { file, line: 0, start: 0, end: 0 };
  return { ...(why === 'too-large' ? tooLarge() : utf16()), place, related: [], ways: [] };
}

function tooLarge(): Pick<Finding, 'code' | 'severity' | 'message'> {
  const message = phrase`This file is larger than ${MOST_CHARACTERS / 1024 / 1024} MiB and is not read. No job is near that size; look whether something else was pasted into it.`;
  return { code: 'file-too-large', severity: 'error', message };
}

function utf16(): Pick<Finding, 'code' | 'severity' | 'message'> {
  const message = phrase`This file is written in UTF-16, and is not read: a job is a text in UTF-8. Save it as UTF-8; an editor has it under “Save with Encoding” or “Save as”.`;
  return { code: 'file-encoding', severity: 'error', message };
}

/** At the line that names it. */
export function useRefused(origin: Origin, path: string, why: Refusal): Remark {
  return { ...(why === 'too-large' ? useTooLarge(path) : useUtf16(path)), origin };
}

function useTooLarge(path: string): Omit<Remark, 'origin'> {
  const message = phrase`“${path}” is larger than ${MOST_CHARACTERS / 1024 / 1024} MiB and is not read.`;
  return { code: 'use-too-large', severity: 'error', message };
}

function useUtf16(path: string): Omit<Remark, 'origin'> {
  const message = phrase`“${path}” is written in UTF-16, and is not read: files of a job are texts in UTF-8. What it would bring (bricks, rates, defaults) is missing from this job. Open it and save it as UTF-8; an editor has it under “Save with Encoding” or “Save as”.`;
  return { code: 'use-encoding', severity: 'error', message };
}
