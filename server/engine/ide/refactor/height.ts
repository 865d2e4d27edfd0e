/** A height said in courses as a length, and one said as a length in courses. */
import { phrase } from '../../../../shared/phrase';
import { toBase, unitNamed } from '../../../../shared/units';
import { lengthText } from '../../brickwork/lengths';
import type { Action } from '../types';
import { type At, change } from './at';

/** Where beds are drawn out or nothing fits, the other way of saying it would be another height. */
const OTHERWISE: ReadonlySet<string> = new Set(['height-joints', 'fit-height', 'courses-whole']);

export function heightOtherwise({ job, spot, line }: At): Action[] {
  const { block, parents } = spot;
  if (line.kind.key !== 'height' || parents.length !== 1) return [];
  const value = line.values.courses ?? line.values.height ?? line.values.length;
  if (value?.kind !== 'quantity' || value.high || isOdd(job, block.firstLine + spot.line))
    return [];
  const inCourses = value.unit?.dimension === 'courses';
  const figure = job
    .workAt(block)
    ?.figures.find((f) => f.key === (inCourses ? 'height' : 'courses'));
  if (!figure || figure.term.gaps.length) return [];
  const { value: said, unit } = figure.term;
  const number = (inCourses ? toBase(said, unitNamed(unit)!) : said).toNumber();
  const text = inCourses
    ? lengthText(job.env, number)
    : `${number} ${number === 1 ? 'course' : 'courses'}`;
  if (text === block.lines[spot.line]!.slice(value.span.start, value.span.end)) return [];
  const edits = [{ place: block.place(value.span), text }];
  return [change('refactor.rewrite', phrase`Write the height as ${text}`, edits)];
}

function isOdd(job: At['job'], line: number): boolean {
  return job.findings.some((f) => f.place.line === line && OTHERWISE.has(f.code));
}
