/** The work in a client's words: what the engine says of it, the firm's notes, and a drawing. */

import type { Work } from '../../engine/brickwork/work';
import { type Paper, type Sheet, toSheet } from '../../engine/drawing';
import { wordOf } from '../../engine/resolve/book';
import { factsOf, type LineFacts } from '../../engine/resolve/env';
import type { Job } from '../../engine/workspace/job';
import { fromBlock, fromLines, fromOrigins } from '../from';
import type { From } from '../paper/model';
import type { QuoteWords } from '../words';
import { drawingOf } from '../work-drawing';
import type { Told } from './money';

export interface QuotedWork {
  readonly title: string;
  readonly says: readonly Told[];
  readonly notes: readonly Told[];
  /** Of its heading. */
  readonly from: From;
  readonly drawing: { readonly sheet: Sheet; readonly words: string } | undefined;
}

/** A cost of the job by its title, and what the firm says of it to the client. */
export interface Included {
  readonly title: string;
  readonly notes: readonly Told[];
  readonly from: From;
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
      says: toldOf(work, job),
      notes: notesOf(work, job),
      from: fromBlock(work.block),
      drawing: drawing && {
        sheet: toSheet(drawing, PAPER, true),
        words: drawing.description,
      },
    };
  });
}

/** What will be done: in the firm’s own words where it has said so, else as the engine says it. */
export function saysOf(work: Work, job: Job): readonly string[] {
  return toldOf(work, job).map(({ text }) => text);
}

/** The same, each with the lines that it tells of. */
function toldOf(work: Work, { env }: Job): readonly Told[] {
  const own = factsOf(work.block, env)?.lines('says') ?? [];
  return own.length ? own.map((line) => toldBy(line, 'text')) : saidOf(work);
}

/** In the engine’s words; what tells of no line by itself is of the work. */
export function saidOf({ facts, block }: Work): readonly Told[] {
  const all = facts.said ?? facts.says.map((text) => ({ text, from: [] }));
  return all.map(({ text, from }) => ({
    text,
    from: from.length ? fromOrigins(...from) : fromBlock(block),
  }));
}

function toldBy(line: LineFacts, key: string): Told {
  return { text: line.word(key), from: fromLines(line) };
}

/** The firm’s notes on a piece of work. */
export function notesOf({ block, notes }: Work, { env }: Job): readonly Told[] {
  const lines = factsOf(block, env)?.lines('note') ?? [];
  return notes.map((text, i) => ({ text, from: fromLines(lines[i]) }));
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
          .map((note) => toldBy(note, 'text')) ?? [],
      from: fromBlock(block),
    }))
    .filter(({ title }) => title);
}
