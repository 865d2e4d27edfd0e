/** perpend check: what is wrong, what is doubtful and what to be careful of. */
import type { Job } from '../../engine/workspace/job';
import type { Given } from '../args';
import { type Io, paint } from '../io';
import { checkDocument } from '../json/documents';
import type { Session } from '../session';
import { findingLines, sorted, tally, usedLines } from '../show/findings';
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
    'out of it, each with what to write. Errors come first, then warnings, notes,',
    'cautions for the site and hints, each in the order of the file; the last line',
    'counts them. Nothing is changed.',
  ],
  options: [JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const session = sessionOf(given, io);
    const batch = openAll(filesOf(given, 'check'), session, io);
    if (given.has(JSON_OPTION.name)) io.raw(checkDocument(batch, session));
    else {
      const files = batch.opened.map(({ job }) => lines(job, session, io)).filter(Boolean);
      io.out([...files, summary(batch)].filter(Boolean).join('\n'));
    }
    return codeOf(batch);
  },
};

/** Sort after sort, an empty line between them and how many there are over each where there are several. */
function lines(job: Job, session: Session, io: Io): string {
  const groups = sorted(job.findings);
  const said = groups.map((group) => [
    ...(groups.length > 1 ? [paint(io, 'bold', `${tally(group)}:`)] : []),
    ...group.flatMap((finding) => findingLines(finding, job, session, io)),
  ]);
  const used = usedLines(job, session);
  return [...said, ...(used.length ? [used] : [])]
    .map((group) => group.map((line) => `${line}\n`).join(''))
    .join('\n');
}

function summary({ opened }: Batch): string {
  if (!opened.length) return '';
  const found = tally(opened.flatMap(({ job }) => job.findings));
  const files = opened.length === 1 ? '1 file' : `${opened.length} files`;
  return found ? `${found} in ${files}\n` : `Nothing found in ${files}\n`;
}
