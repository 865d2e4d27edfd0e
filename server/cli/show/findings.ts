/** Findings as lines that a person can read and an editor can jump to: file:line:column. */

import type { Finding, Severity } from '../../../shared/finding';
import { later, phrase, spoken } from '../../../shared/phrase';
import { counted } from '../../../shared/show';
import type { Place } from '../../../shared/span';
import { usedWithErrors } from '../../documents/used';
import type { Job } from '../../engine/workspace/job';
import { type Colour, type Io, paint } from '../io';
import type { Session } from '../session';
import { writeLines } from './edits';

/** What each severity is called at a terminal, in the order of their weight. */
const WORDS: Readonly<Record<Severity, string>> = {
  error: later`error`,
  warning: later`warning`,
  information: later`note`,
  hint: later`hint`,
};

/** Cautions are notes too, and stand apart: they are for the site, and not for the page. */
type Sort = Severity | 'caution';

const SORTS: Readonly<Record<Sort, string>> = {
  error: WORDS.error,
  warning: WORDS.warning,
  information: WORDS.information,
  caution: later`caution`,
  hint: WORDS.hint,
};

function sortOf({ severity, code }: Finding): Sort {
  return severity === 'information' && code.startsWith('caution-') ? 'caution' : severity;
}

const COLOURS: Partial<Record<Severity, Colour>> = { error: 'red', warning: 'yellow' };

/** Line and column counted from one, columns in UTF-16 units, as editors do. */
export function placeText(place: Place, session: Session): string {
  return `${session.shown(place.file)}:${place.line + 1}:${place.start + 1}`;
}

/** Those of one sort together, the gravest first, each as they stand in the file. */
export function sorted(findings: readonly Finding[]): Finding[][] {
  const sorts = Object.keys(SORTS) as Sort[];
  return sorts
    .map((sort) =>
      findings
        .filter((f) => sortOf(f) === sort)
        .sort((a, b) => a.place.line - b.place.line || a.place.start - b.place.start),
    )
    .filter((group) => group.length > 0);
}

export function findingLines(finding: Finding, job: Job, session: Session, io: Io): string[] {
  const colour = COLOURS[finding.severity];
  const word = spoken(WORDS[finding.severity]);
  const severity = colour ? paint(io, colour, word) : word;
  return [
    `${placeText(finding.place, session)} ${severity} ${finding.code}: ${finding.message}`,
    ...finding.related.map((r) => phrase`    see ${placeText(r.place, session)}: ${r.message}`),
    ...finding.ways.flatMap((way) => [
      phrase`    way out: ${way.title}${way.preferred ? phrase` (preferred)` : ''}`,
      ...writeLines(way, finding.place, job, session).map((line) => `      ${line}`),
    ]),
    ...elsewhere(finding),
  ];
}

/** Where a used file lies outside, the terminal has a way that an editor has not. */
function elsewhere({ code }: Finding): string[] {
  if (code !== 'use-outside') return [];
  return [phrase`    way out: name a folder that holds both files: --workspace FOLDER`];
}

/** One line for each file that the job uses and that has errors of its own. */
export function usedLines(job: Job, session: Session): string[] {
  return usedWithErrors(job).map(({ file, errors }) => {
    const shown = session.shown(file);
    return phrase`${shown} is used and has ${counted(errors, phrase`error`, phrase`errors`)}: perpend check ${shown}`;
  });
}

/** `2 errors, 1 warning, 4 notes, 6 cautions`; empty when there is nothing. */
export function tally(findings: readonly Finding[]): string {
  return sorted(findings)
    .map((group) => {
      const word = SORTS[sortOf(group[0]!)];
      return counted(group.length, word, `${word}s`);
    })
    .join(', ');
}
