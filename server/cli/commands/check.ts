/** perpend check: what is wrong, what is doubtful and what to be careful of. */
import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import { filesUnder } from '../../engine/firm/disk-index';
import type { Job } from '../../engine/workspace/job';
import type { Given, Option } from '../args';
import { isFolder } from '../files/deliver';
import { FOLDER_HOST } from '../files/jobs';
import { type Io, paint } from '../io';
import { checkDocument } from '../json/documents';
import type { Session } from '../session';
import { findingLine } from '../show/finding-line';
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

const LINES: Option = {
  name: '--lines',
  about: later`one line for each finding, for programs, and no ways out`,
};

export const check: Command = {
  name: 'check',
  takes: 'FILE...',
  about: later`list what is wrong, doubtful or to be careful of`,
  more: [
    later`Each finding stands on one line, file:line:column first, and under it the ways
out of it, each with what to write. Errors come first, then warnings, notes,
cautions for the site and hints, each in the order of the file; the last line
counts them. Nothing is changed.`,
    later`Of a folder every file in the notation under it is checked, but for hidden
folders and node_modules. --lines is for editors and other programs: a line is
FILE:LINE:COLUMN error|warning|note|hint CODE: MESSAGE, and stays so.`,
  ],
  options: [LINES, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const session = sessionOf(given, io);
    const batch = openAll(withFolders(filesOf(given, 'check'), io), session, io);
    if (given.has(JSON_OPTION.name)) io.raw(checkDocument(batch, session));
    else if (given.has(LINES.name)) io.out(plainLines(batch, session));
    else {
      const files = batch.opened.map(({ job }) => lines(job, session, io)).filter(Boolean);
      io.out([...files, summary(batch)].filter(Boolean).join('\n'));
    }
    return codeOf(batch);
  },
};

/** In place of a folder, what stands under it. */
function withFolders(names: readonly string[], io: Io): string[] {
  return names.flatMap((name) => {
    if (!isFolder(name, io)) return [name];
    const files = filesUnder(path.resolve(io.cwd, name), FOLDER_HOST);
    return [...files].map((file) => path.relative(io.cwd, file)).sort();
  });
}

/** Fewest words: nothing where nothing was found. */
function plainLines({ opened }: Batch, session: Session): string {
  const found = opened.flatMap(({ job }) => sorted(job.findings).flat());
  return found.map((finding) => `${findingLine(finding, session)}\n`).join('');
}

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
  const files = opened.length === 1 ? phrase`1 file` : phrase`${opened.length} files`;
  return found ? phrase`${found} in ${files}\n` : phrase`Nothing found in ${files}\n`;
}
