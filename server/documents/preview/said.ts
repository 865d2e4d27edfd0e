/**
 * Which line a text on a paper comes from. Papers hold texts and nothing else, so that none can tell more than it says:
 * the lines are found again here, by what they say, and only for a preview beside the job.
 */
import { wordOf } from '../../engine/resolve/book';
import type { Job } from '../../engine/workspace/job';
import type { SourceBlock } from '../../engine/workspace/source';
import { languageOf } from '../letterhead';
import type { Marked } from '../paper/html/parts';
import { wordsFor } from '../words';
import { lineAt } from './line-at';
import { type Lines, lineIn, NOWHERE, type ReadLine } from './lines';

/** More lines are not looked through. */
const MOST_LINES = 20_000;
/** Shorter texts stand in too many places. */
const LEAST = 3;

interface Place {
  readonly line: ReadLine;
  readonly block: SourceBlock;
}

/** Texts of the files of a firm, and where they stand. */
class Texts {
  private readonly places = new Map<string, Place>();
  private left = MOST_LINES;

  constructor(job: Job) {
    for (const block of job.file.blocks) this.addBlock(block);
    for (const block of job.book.blocks) if (!block.file.shipped) this.addBlock(block);
  }

  private addBlock(block: SourceBlock): void {
    const { heading } = block.read;
    if (heading) this.addLine(heading, block);
  }

  private addLine(line: ReadLine, block: SourceBlock): void {
    if (this.left-- <= 0) return;
    for (const value of Object.values(line.values))
      if (value?.kind === 'text' || value?.kind === 'word')
        this.add(value.text, { line, block }, value.kind === 'text' || line.kind.top === true);
    for (const inner of line.body) this.addLine(inner, block);
  }

  private add(text: string, place: Place, counts: boolean): void {
    const key = plain(text);
    if (counts && key.length >= LEAST && !this.places.has(key)) this.places.set(key, place);
  }

  put(text: string, place: Place): void {
    this.places.set(plain(text), place);
  }

  of(text: string): Place | undefined {
    return this.places.get(plain(text));
  }
}

function plain(text: string): string {
  return text
    .replace(/[\s-]+/g, ' ')
    .trim()
    .toLowerCase();
}

/** Marks for the parts of a paper, in the order they are read: what stands under the heading of a wall is of that wall. */
export function markedBy(job: Job, lines: Lines): Marked {
  const texts = new Texts(job);
  addLabels(texts, job);
  const own = job.file.blocks.find(({ kind }) => kind === 'job');
  const whole = own?.read.heading ? lines.of(own.read.heading, own) : NOWHERE;
  let section: Place | undefined;
  const at = (place: Place | undefined) => (place ? lines.of(place.line, place.block) : NOWHERE);
  return (said, what, row) => {
    const place = (row && lineAt(row, job)) ?? said.map((text) => texts.of(text)).find(Boolean);
    if (what === 'heading') section = place && isWork(place) ? place : undefined;
    const inner = what === 'list' && section ? partNamed(section, said) : undefined;
    const all = [at(place ?? inner ?? section), what === 'table' ? whole : NOWHERE];
    const from = all.find((each) => each !== NOWHERE);
    return from === undefined ? '' : `data-from="${from}"`;
  };
}

/** The opening or the pier of a wall that a sentence names by its title. */
function partNamed({ line: { body }, block }: Place, said: readonly string[]): Place | undefined {
  const line = body.find(({ values }) => {
    const title = wordOf(values.title);
    return title.length >= LEAST && said.some((text) => text.includes(title));
  });
  return line && { line, block };
}

function isWork({ line, block }: Place): boolean {
  return ['wall', 'pier', 'repair'].includes(block.kind ?? '') && line === block.read.heading;
}

/** Facts by what they are called: a date is not written on a paper as in the file. */
function addLabels(texts: Texts, job: Job): void {
  const { facts } = wordsFor(languageOf(job)).quote;
  const block = job.file.blocks.find(({ kind }) => kind === 'job');
  const called: [string, string][] = [
    [facts.ref, 'ref'],
    [facts.date, 'date'],
    [facts.validUntil, 'valid'],
    [facts.client, 'client'],
    [facts.site, 'site'],
  ];
  for (const [label, key] of called) {
    const line = lineIn(block?.read.heading, key);
    if (block && line && wordOf(line.values[key]) !== undefined) texts.put(label, { line, block });
  }
}
