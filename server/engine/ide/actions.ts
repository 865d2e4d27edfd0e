/** What can be done about some lines, each an edit of the text: ways out of what is told, and changes that mend nothing. */

import type { Finding } from '../../../shared/finding';
import { phrase } from '../../../shared/phrase';
import type { Job } from '../workspace/job';
import { mendAll, mendCode } from './mend';
import { SAFE } from './mend/safe';
import { refactorings } from './refactor';
import type { Action, ActionKind } from './types';

export interface ActionRange {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** A finding by what was told of it; `place` may have moved since. */
export interface Named {
  readonly code: string;
  /** Which it is of those of its code, from the first. */
  readonly nth: number;
}

/** Those whose finding touches the range; the preferred ones first. */
export function actionsFor(job: Job, range: ActionRange, named: readonly Named[] = []): Action[] {
  job.anewTried();
  const found = job.findings.filter(
    (finding) => touches(finding.place, range) || named.some((each) => isNamed(job, finding, each)),
  );
  const actions = found.flatMap(waysOf);
  const all = [...actions.filter((a) => a.preferred), ...actions.filter((a) => !a.preferred)];
  return [...all, ...found.flatMap(fillsOf), ...ofOneKind(job, found)];
}

function isNamed({ findings }: Job, finding: Finding, { code, nth }: Named): boolean {
  return finding.code === code && findings.filter((f) => f.code === code)[nth] === finding;
}

function waysOf(finding: Finding): Action[] {
  return finding.ways.map((way) => ({
    kind: 'quickfix',
    finding,
    title: way.title,
    preferred: way.preferred ?? false,
    edits: way.edits,
  }));
}

function fillsOf(finding: Finding): Action[] {
  return (finding.fills ?? []).map((way) => ({
    kind: 'quickfix',
    finding,
    title: way.title,
    preferred: false,
    edits: way.edits,
    fills: true,
  }));
}

/** Where a file has several of a code that has a preferred way: all of them at once. */
function ofOneKind(job: Job, found: readonly Finding[]): Action[] {
  const codes = new Set(found.filter((f) => f.ways.some((w) => w.preferred)).map((f) => f.code));
  return [...codes].flatMap((code): Action[] => {
    const all = job.findings.filter((f) => f.code === code);
    if (all.length < 2) return [];
    const finding = found.find((f) => f.code === code)!;
    const title = phrase`Mend all ${all.length} of this kind in the file`;
    const later = () => mendCode(job, code);
    return [{ kind: 'quickfix', finding, title, preferred: false, edits: [], later }];
  });
}

/** All that is safe at once; nothing where there is nothing such. */
export function fixAllOf(job: Job): Action[] {
  job.anewTried();
  if (!job.findings.some((f) => SAFE.has(f.code) && f.ways.some((way) => way.preferred))) return [];
  const kind: ActionKind = 'source.fixAll.perpend';
  const title = phrase`Mend all that was plainly meant`;
  return [{ kind, title, preferred: false, edits: [], later: () => mendAll(job) }];
}

/** Changes at a place. @param fills whether places to fill in can be offered */
export function refactoringsFor(job: Job, range: ActionRange, fills: boolean): Action[] {
  const at = { line: range.startLine, column: range.startColumn };
  return refactorings(job, at, fills);
}

function touches(place: { line: number; start: number; end: number }, range: ActionRange): boolean {
  const before =
    place.line < range.startLine ||
    (place.line === range.startLine && place.end < range.startColumn);
  const after =
    place.line > range.endLine || (place.line === range.endLine && place.start > range.endColumn);
  return !before && !after;
}
