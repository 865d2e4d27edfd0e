/** Behind lengths and heights: what they work out to in bricks, joints and courses. */
import type { Work } from '../../brickwork/needs';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { lineText } from '../line-text';
import { behind, type MadeHint } from './made';

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
      return text ? [{ ...behind(line), kind: 'line', parts: [{ text }] }] : [];
    }),
  );
}
