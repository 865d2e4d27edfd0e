/** perpend check: what is wrong, what is doubtful and what to be careful of. */
import type { Job } from '../../engine/workspace/job';
import type { Given } from '../args';
import type { Io } from '../io';
import { checkDocument } from '../json/documents';
import type { Session } from '../session';
import { findingLines, inOrder, tally, usedLines } from '../show/findings';
import {
  type Batch,
  type Command,
  codeOf,
  filesOf,
  JSON_OPTION,
  openAll,
  sessionOf,
  WORKSPACE,
} from './command';

export const check: Command = {
  name: 'check',
  takes: 'FILE...',
  about: 'list what is wrong, doubtful or to be careful of',
  more: [
    'Each finding stands on one line, file:line:column first, and under it the ways',
    'out of it, each with what to write. Errors come first, then warnings, notes and',
    'hints. Nothing is changed.',
  ],
  options: [JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const session = sessionOf(given, io);
    const batch = openAll(filesOf(given, 'check'), session, io);
    if (given.has(JSON_OPTION.name)) io.raw(checkDocument(batch, session));
    else {
      for (const { job } of batch.opened) io.out(lines(job, session, io));
      io.out(summary(batch));
    }
    return codeOf(batch);
  },
};

function lines(job: Job, session: Session, io: Io): string {
  const all = [
    ...inOrder(job.findings).flatMap((finding) => findingLines(finding, job, session, io)),
    ...usedLines(job, session),
  ];
  return all.map((line) => `${line}\n`).join('');
}

function summary({ opened }: Batch): string {
  if (!opened.length) return '';
  const found = tally(opened.flatMap(({ job }) => job.findings));
  const files = opened.length === 1 ? '1 file' : `${opened.length} files`;
  return found ? `${found} in ${files}\n` : `Nothing found in ${files}\n`;
}
