/** Behind lengths and heights: what they work out to in bricks, joints and courses. */
import type { ReadLine } from '../../../../grammar/read/values';
import type { Work } from '../../brickwork/work';
import { wordOf } from '../../resolve/book';
import { factsNamed } from '../../resolve/env';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { heightFigure, lineText } from '../line-text';
import { behind, type MadeHint, type MadePart } from './made';

const kept = new WeakMap<Work, readonly MadeHint[]>();

/** It hangs on the piece of work alone: worked out once, and stands until it changes. */
export function lineHints(block: SourceBlock, home: Job): readonly MadeHint[] {
  const work = home.workAt(block);
  if (!work) return [];
  const known = kept.get(work) ?? linesOf(work, home);
  kept.set(work, known);
  return known;
}

function linesOf(work: Work, job: Job): MadeHint[] {
  const heading = work.block.read.heading!;
  const parents = [heading, ...heading.body.filter((l) => l.kind.body)];
  return parents.flatMap((parent) =>
    parent.body.flatMap((line): MadeHint[] => {
      const text = lineText(line, parent, work, job.env);
      const part = text ? { text, ...cameFrom(line, parent, work, job) } : undefined;
      return part ? [{ ...behind(line), kind: 'line', parts: [part] }] : [];
    }),
  );
}

/** A height of the work is a figure of it; all else is told of its brick: courses by the gauge, bricks by the size. */
function cameFrom(line: ReadLine, parent: ReadLine, work: Work, job: Job): Partial<MadePart> {
  const height = line.kind.key === 'height';
  const figure = height && parent.kind.top ? heightFigure(line, work) : undefined;
  if (figure) return { term: figure.term };
  const facts = factsNamed(job.env, 'brick', brickOf(work, job));
  const said = (height ? facts?.line('gauge') : undefined) ?? facts?.line('size');
  return said ? { from: { block: said.block, line: said.line } } : {};
}

function brickOf({ block }: Work, { book }: Job): string {
  const own = block.read.heading!.body.find((line) => line.kind.key === 'brick');
  return wordOf((own ?? book.setting('defaults', 'brick')?.line)?.values.brick);
}
