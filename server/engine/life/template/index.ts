/** A template as its lines say it: what is asked, where the answers go, and what holds without one. Pure. */
import { printItems } from '../../../../grammar/print/items';
import type { ReadLine } from '../../../../grammar/read/values';
import { wordOf } from '../../resolve/book';
import { type SourceBlock, SourceFile } from '../../workspace/source';
import { type LinePlace, placeOf, type Trouble } from '../step';
import { type Targets, type ToChange, targetsIn } from '../targets';

export interface Ask {
  readonly line: ReadLine;
  /** A name of the file, or `job`. */
  readonly what: string;
  /** The word of the line that is asked for. */
  readonly word: string;
  readonly question: string;
}

export interface Template {
  readonly title: string;
  readonly block: SourceBlock;
  readonly asks: readonly Ask[];
}

/** Where an answer goes, or why it can go nowhere. */
export type AskPlace =
  | { readonly target: ToChange; readonly place: LinePlace }
  | { readonly why: Trouble['why']; readonly targets: readonly ToChange[] };

/** Of several such headings the first holds. Nothing for a file that is no template. */
export function templateOf(file: SourceFile): Template | undefined {
  const block = file.blocks.find((each) => each.kind === 'template');
  const heading = block?.read.heading;
  if (!block || !heading) return undefined;
  const lines = heading.body.filter((l) => l.kind.key === 'ask');
  return { title: wordOf(heading.values.title), block, asks: lines.map(askOf) };
}

function askOf(line: ReadLine): Ask {
  const { what, line: word, question } = line.values;
  return { line, what: wordOf(what), word: wordOf(word), question: wordOf(question) };
}

/** What may be asked of: {@link targetsIn}, and the job itself. */
export function askable(blocks: readonly SourceBlock[]): Targets {
  const found = new Map(targetsIn(blocks));
  const job = blocks.find((block) => block.kind === 'job');
  const heading = job?.read.heading;
  if (job && heading) found.set('job', [...(found.get('job') ?? []), { block: job, heading }]);
  return found;
}

export function askPlace(ask: Pick<Ask, 'what' | 'word'>, targets: Targets): AskPlace {
  const found = targets.get(ask.what) ?? [];
  const [target] = found;
  if (!target) return { why: 'nothing', targets: found };
  if (found.length > 1) return { why: 'several', targets: found };
  const place = placeOf(ask.word, target);
  return typeof place === 'string' ? { why: place, targets: found } : { target, place };
}

/** The questions of a text that an answer can be written for. */
export function asksOf(text: string): readonly Ask[] {
  const file = new SourceFile('', text);
  const targets = askable(file.blocks);
  return (templateOf(file)?.asks ?? []).filter((ask) => 'place' in askPlace(ask, targets));
}

/** The answer that holds where none is given: what stands there. */
export function answerNow(ask: Ask, targets: Targets): string | undefined {
  const found = askPlace(ask, targets);
  if (!('place' in found) || found.place.put.after) return undefined;
  const { block } = found.target;
  const line = block.read.syntax.lines.find((l) => l.span.line === found.place.put.at);
  return line && printItems(line.items, block.lines[found.place.put.at]!);
}
