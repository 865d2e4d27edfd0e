/** The line of a job that decides for a run, and whether the run keeps to it. */
import type { LaidCut } from '../../brickwork/wall/laid-cut';
import type { BlockFacts } from '../../resolve/env';
import type { CutWay, Fit } from '../../setting-out';
import { lineAfter, type RemarkWay } from '../remark';
import type { RunInText } from './fit';

/** Writes the decision under the last line of its heading, or in place of an older one. */
export function decide(
  run: Pick<RunInText, 'name' | 'home'>,
  words: string,
  title: string,
): RemarkWay {
  const text = `fit ${run.name} ${words}`;
  const old = run.home.lines('fit').find((l) => l.word('run') === run.name);
  if (old) return { title, edits: [{ block: old.block, span: old.line.syntax.span, text }] };
  const { block, heading } = run.home;
  const last = lastOwnLine(run.home);
  const indent = ' '.repeat(heading.syntax.indent + 2);
  return { title, edits: [lineAfter(block, last, indent + text)] };
}

/** The last line of a heading that belongs to it alone, so that a new one stands before headings within it. */
export function lastOwnLine(facts: BlockFacts): number {
  const own = facts.heading.body.filter((l) => !l.kind.body).map((l) => l.syntax.span.line);
  return Math.max(facts.heading.syntax.span.line, ...own);
}

/** What a `fit` line decided for a run. */
export interface Decision {
  readonly how: 'joints' | 'half-bond' | 'cut';
  /** Mm. */
  readonly cut?: number;
  readonly where?: 'left' | 'right' | 'middle';
}

export function decisionFor(home: BlockFacts, name: string): Decision | undefined {
  const line = home.lines('fit').find((l) => l.word('run') === name);
  if (!line) return undefined;
  return {
    how: line.word('how') as Decision['how'],
    cut: line.number('cut'),
    where: (line.word('where') || undefined) as Decision['where'],
  };
}

/** Whether what was decided still answers the run as it is now. `laid` is the cut as it lies in courses. */
export function settled(
  fit: Fit,
  decision: Decision | undefined,
  laid?: LaidCut | undefined,
): boolean {
  if (!decision) return false;
  if (laid && decision.how === 'cut')
    return decision.cut === undefined || laid.lengths.some((mm) => agree(mm, decision.cut!));
  if (decision.how !== 'cut') return fit.ways.some((w) => w.kind === decision.how);
  const cuts = fit.ways.filter((w): w is CutWay => w.kind === 'cut');
  if (decision.cut === undefined) return cuts.length > 0;
  return cuts.some((w) => agree(w.cut, decision.cut!));
}

function agree(a: number, b: number): boolean {
  return Math.abs(a - b) <= CUT_AGREES;
}

/** A cut is marked by hand to the millimetre; sixteenths of an inch are rounded by up to 0.8 mm. */
const CUT_AGREES = 1;
