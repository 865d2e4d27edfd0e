/** What can be wrong with the files a job is made of. */

import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import type { Origin } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import { meantBy } from './names';
import { headOrigin, lineAfter, type Remark, rewrite } from './remark';

export function libraryUnknown(origin: Origin, name: string, known: readonly string[]): Remark {
  const meant = meantBy(name, known);
  const message = phrase`No library is called “${name}”. There are ${listed(known, 'and')}. A file of your own stands in double quotes: use "${name}.perp".`;
  const ways = meant
    ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
    : [];
  return { code: 'library-unknown', severity: 'error', origin, message, ways };
}

export function useMissing(origin: Origin, path: string): Remark {
  const message = phrase`“${path}” is not there or cannot be read. What it would bring (bricks, rates, defaults) is missing from this job. Check the name; it counts from this file’s own folder.`;
  return { code: 'use-missing', severity: 'error', origin, message };
}

export function useOutside(origin: Origin, path: string): Remark {
  const message = phrase`“${path}” lies outside the workspace folder. A job can only use files of its own workspace: the folder opened in the editor, or at a terminal the one given with --workspace. Open that folder, or copy the file in.`;
  return { code: 'use-outside', severity: 'error', origin, message };
}

export function useCycle(origin: Origin, path: string): Remark {
  const message = phrase`“${path}” uses this file in turn, so the two go round in a circle. This use is left out; take one of them away.`;
  return { code: 'use-circle', severity: 'error', origin, message };
}

export function useTooDeep(origin: Origin, deepest: number, files: number): Remark {
  const message = phrase`Files use files more than ${deepest} deep, or more than ${files} in all. This use is left out; name the file in the job itself.`;
  return { code: 'use-too-deep', severity: 'error', origin, message };
}

/** At the first block of the job: a library was taken that no line names. */
export function libraryAssumed(first: SourceBlock, name: string): Remark {
  const origin = headOrigin(first);
  const message = phrase`No line says which country’s bricks, bonds and limits hold, so the library “${name}” is taken. Say it in the file: use ${name}.`;
  const ways = [
    {
      title: phrase`Add “use ${name}”`,
      edits: [lineAfter(first, origin.span.line, `\nuse ${name}`)],
      preferred: true,
    },
  ];
  return { code: 'library-assumed', severity: 'information', origin, message, ways };
}

/** `elsewhere`: the edition is said, but further down, so that adding it would say it twice. */
export function editionMissing(first: SourceBlock, elsewhere: boolean): Remark {
  const origin = headOrigin(first);
  const start = { block: first, span: { line: 0, start: 0, end: 0 }, text: 'perpend 1\n\n' };
  const message = phrase`The first line of a file names the edition of the notation, so that it keeps its meaning: perpend 1. Edition 1 is taken.`;
  return {
    code: 'edition-missing',
    severity: 'warning',
    origin,
    message,
    ways: elsewhere ? [] : [{ title: phrase`Add “perpend 1”`, edits: [start], preferred: true }],
  };
}

export function editionUnknown(origin: Origin, said: string): Remark {
  const message = phrase`Edition ${said} is not known to this version, which reads edition 1. The file is read as edition 1; a newer version may read it as it was meant.`;
  return { code: 'edition-unknown', severity: 'error', origin, message };
}

export function jobTwice(origin: Origin, first: Origin): Remark {
  return {
    code: 'block-twice',
    severity: 'error',
    origin,
    message: phrase`This block stands twice in the file; the first holds. Take one of them out.`,
    related: [{ origin: first, message: phrase`The first one` }],
  };
}
