/** The work in a client's words: what the engine says of it, the firm's notes, and a drawing. */

import type { Work } from '../../engine/brickwork/needs';
import { type Paper, type Sheet, toSheet } from '../../engine/drawing';
import { wordOf } from '../../engine/resolve/book';
import { factsOf } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import type { QuoteWords } from '../words';
import { drawingOf } from '../work-drawing';

export interface QuotedWork {
  readonly title: string;
  readonly says: readonly string[];
  readonly notes: readonly string[];
  readonly drawing: { readonly sheet: Sheet; readonly words: string } | undefined;
}

/** A cost of the job by its title, and what the firm says of it to the client. */
export interface Included {
  readonly title: string;
  readonly notes: readonly string[];
}

/** On a quote a brick narrower than a line of print shows nothing; this keeps pages of long walls light. */
const MOST_BRICKS = 5000;

/** Little more than the page is wide between its margins (174 mm), so that its words stay readable. */
const PAPER: Paper = { width: 200, height: 150, margin: 3 };

export function quotedWorks(job: Job, words: QuoteWords): QuotedWork[] {
  return job.works.map((work) => {
    const title = titleOf(work, job.works, words);
    const drawing = drawingOf(work, job.env, { title, mostBricks: MOST_BRICKS });
    return {
      title,
      says: saysOf(work, job),
      notes: work.notes,
      drawing: drawing && {
        sheet: toSheet(drawing, PAPER, true),
        words: drawing.description,
      },
    };
  });
}

/** What will be done: in the firm’s own words where it has said so, else as the engine says it. */
export function saysOf(work: Work, { env }: Job): readonly string[] {
  const own = factsOf(work.block, env)?.lines('says') ?? [];
  return own.length ? own.map((line) => line.word('text')) : work.facts.says;
}

/** Work without a title is called by its kind, and numbered where there are more: its name is the file's own. */
export function titleOf(work: Work, all: readonly Work[], words: QuoteWords): string {
  if (hasTitle(work)) return work.title;
  const alike = all.filter((w) => w.kind === work.kind && !hasTitle(w));
  return words.workCalled(work.kind, alike.length > 1 ? alike.indexOf(work) + 1 : undefined);
}

function hasTitle(work: Work): boolean {
  return wordOf(work.block.read.heading?.values.title) !== '';
}

/**
 * What else the job's own file says is paid for, by its titles and notes. What a firm puts on every job is the firm's
 * business, and a name without a title is the file's own.
 */
export function alsoIncluded(job: Job): Included[] {
  const costs = job.file.blocks.filter((block) => block.kind === 'cost');
  return costs
    .map((block) => ({
      title: wordOf(block.read.heading?.values.title),
      notes:
        factsOf(block, job.env)
          ?.lines('note')
          .map((note) => note.word('text')) ?? [],
    }))
    .filter(({ title }) => title);
}
