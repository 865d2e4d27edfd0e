/** Marked texts and what the engine tells of them: every finding expected, every way out taken. */
import { expect } from 'vitest';
import type { Finding } from '../../shared/finding';
import { type Files, jobOf } from '../engine/world';
import { applied } from '../harness/edits';
import { expectFindings, parseMarks } from '../harness/marks';

/** A firm with a price for everything that the texts use, so that nothing is told but what they are about. */
export const FIRM = `perpend 1
use uk
brick red "Red facing"
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £1 each
brick engineering
  price  £0.80 each
material cement
  pack  25 kg bag at £6
material lime
  pack  25 kg bag at £9
material hydraulic-lime
  pack  25 kg bag at £16
material sand
  pack  850 kg bag at £50
material ballast
  pack  850 kg bag at £50
brick block-100
  price  £1.80 each
material wall-tie
  price  £0.30 each
material slab "Precast cap"
  price  £30 each
material cap "Another cap"
  price  £25 each
labour
  bricklayer  £27.50 per h
  labourer    £16 per h
  gang        1 bricklayer + 1 labourer
`;

export interface More {
  /** Titles of all ways out, in order. Each is taken, and must clear its finding. */
  readonly ways?: readonly string[];
  /** Other files beside the job. */
  readonly files?: Files;
}

/** Cautions come up at nearly every job. They have a test of their own, and elsewhere are left out. */
export function isCaution(finding: { readonly code: string }): boolean {
  return finding.code.startsWith('caution-');
}

export function findingsIn(text: string, files: Files = {}): readonly Finding[] {
  return jobOf(text, { 'firm.perp': FIRM, ...files }).findings;
}

/** Those of one code. */
export function findingsOf(code: string, text: string, files: Files = {}): readonly Finding[] {
  return findingsIn(text, files).filter((each) => each.code === code);
}

/**
 * Asserts that exactly the marked findings are told, and offered exactly these ways out, each of which clears
 * its finding and leaves a text with no fault that was not there.
 */
export function tells(marked: string, more: More = {}): readonly Finding[] {
  const cautions = parseMarks(marked).expected.some(isCaution);
  const find = (text: string) =>
    findingsIn(text, more.files).filter((each) => cautions || !isCaution(each));
  const { text, found } = expectFindings(marked, find);
  expect(found.flatMap((each) => each.ways.map((way) => way.title))).toEqual(more.ways ?? []);
  for (const finding of found)
    for (const way of finding.ways) clears(text, finding, way.edits, find);
  return found;
}

/** The text after a way out. */
export function afterWay(text: string, edits: Finding['ways'][number]['edits']): string {
  return applied(
    text,
    edits.map((edit) => ({ span: edit.place, text: edit.text })),
  );
}

function clears(
  text: string,
  finding: Finding,
  edits: Finding['ways'][number]['edits'],
  find: (text: string) => readonly Finding[],
): void {
  const before = find(text);
  const after = find(afterWay(text, edits));
  const left = after.filter((each) => each.code === finding.code);
  const run = runOf(finding);
  if (run) expect(left.map(runOf)).not.toContain(run);
  else expect(left.length).toBe(before.filter((each) => each.code === finding.code).length - 1);
  const errors = (all: readonly Finding[]) => all.filter((f) => f.severity === 'error');
  expect(errors(after).length).toBeLessThanOrEqual(errors(before).length);
}

/** Moving an opening settles the run on one side of it and may unsettle the one on the other. */
function runOf(finding: Finding): string | undefined {
  return /\((run-\d+), /.exec(finding.message)?.[1];
}

/** Asserts that this text has no finding of that code. */
export function silent(text: string, code: string, files: Files = {}): void {
  expect(findingsOf(code, text, files)).toEqual([]);
}

/** Ways out of a pier that its wall only butts against: what is told of any such pier beside what a text is about. */
export const BONDED_IN: readonly string[] = [
  'Bond it into the wall, standing out at the back',
  'Bond it into the wall, standing out at the front',
];
