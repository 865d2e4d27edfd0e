/** Findings as lines that a person can read and an editor can jump to: file:line:column. */
import type { Finding, Severity } from '../../../shared/finding';
import { counted } from '../../../shared/show';
import type { Place } from '../../../shared/span';
import { usedWithErrors } from '../../documents/used';
import type { Job } from '../../engine/workspace/job';
import { type Colour, type Io, paint } from '../io';
import type { Session } from '../session';
import { writeLines } from './edits';

/** What each severity is called at a terminal, in the order of their weight. */
const WORDS: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'hint',
};

const COLOURS: Partial<Record<Severity, Colour>> = { error: 'red', warning: 'yellow' };

/** Line and column counted from one, columns in UTF-16 units, as editors do. */
export function placeText(place: Place, session: Session): string {
  return `${session.shown(place.file)}:${place.line + 1}:${place.start + 1}`;
}

/** The gravest first; those of one weight as they stand in the file. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  const weights = Object.keys(WORDS);
  const weight = (f: Finding) => weights.indexOf(f.severity);
  return [...findings].sort(
    (a, b) => weight(a) - weight(b) || a.place.line - b.place.line || a.place.start - b.place.start,
  );
}

export function findingLines(finding: Finding, job: Job, session: Session, io: Io): string[] {
  const colour = COLOURS[finding.severity];
  const word = WORDS[finding.severity];
  const severity = colour ? paint(io, colour, word) : word;
  return [
    `${placeText(finding.place, session)} ${severity} ${finding.code}: ${finding.message}`,
    ...finding.related.map((r) => `    see ${placeText(r.place, session)}: ${r.message}`),
    ...finding.ways.flatMap((way) => [
      `    way out: ${way.title}${way.preferred ? ' (preferred)' : ''}`,
      ...writeLines(way, finding.place, job, session).map((line) => `      ${line}`),
    ]),
    ...elsewhere(finding),
  ];
}

/** Where a used file lies outside, the terminal has a way that an editor has not. */
function elsewhere({ code }: Finding): string[] {
  if (code !== 'use-outside') return [];
  return ['    way out: name a folder that holds both files: --workspace FOLDER'];
}

/** One line for each file that the job uses and that has errors of its own. */
export function usedLines(job: Job, session: Session): string[] {
  return usedWithErrors(job).map(({ file, errors }) => {
    const shown = session.shown(file);
    return `${shown} is used and has ${counted(errors, 'error', 'errors')}: perpend check ${shown}`;
  });
}

/** `2 errors, 1 warning, 4 notes`; empty when there is nothing. */
export function tally(findings: readonly Finding[]): string {
  const parts = (Object.keys(WORDS) as Severity[]).map((severity) => {
    const count = findings.filter((f) => f.severity === severity).length;
    return count ? `${count} ${WORDS[severity]}${count === 1 ? '' : 's'}` : '';
  });
  return parts.filter(Boolean).join(', ');
}
