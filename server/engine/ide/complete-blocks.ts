/** Whole blocks to fill in: the example’s values are places, and where a word has to be one of some, those are the choice. */

import type { LineKind, Slot } from '../../../grammar/lines';
import { inColumns } from '../../../grammar/print/columns';
import { phrase } from '../../../shared/phrase';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { defaultOf, inForce } from './defaults';
import { exampleOf } from './example';
import { explainKey } from './hover-key';
import { squeezed } from './markdown';
import { namedThings } from './names';
import type { Said } from './said';
import type { Completion } from './types';

/** A block with more lines than this is a list to choose from, not a form to fill in. */
const MOST = 8;
/** More words than anyone looks through. */
const MOST_CHOICES = 24;
/** Lines that a default stands for, and that most jobs say all the same. */
const SAID_TOO: Readonly<Record<string, readonly string[]>> = {
  wall: ['brick', 'bond', 'thick'],
  pier: ['brick'],
};

/** `block`: where it is put, for what may be named there; nothing for a heading in the first column. */
export function blockItem(kind: LineKind, block: SourceBlock | undefined, job: Job): Completion {
  return {
    label: `${kind.key} …`,
    kind: 'block',
    detail: phrase`with its lines to fill in`,
    explains: () => explainKey(kind, job),
    get insert() {
      return bodyOf(kind, block, job);
    },
    isSnippet: true,
  };
}

function bodyOf(kind: LineKind, block: SourceBlock | undefined, job: Job): string {
  const fields = new Fields(block, job);
  const head = [kind.key, fields.of(kind)].filter(Boolean).join(' ');
  const rows = linesOf(kind).map((line, i) => ({
    source: i,
    indent: kind.top ? 2 : 4,
    key: line.key,
    text: fields.of(isAsked(line) ? line : asByDefault(line, job)),
  }));
  // An inner block is put in at its own depth: what comes before its first line is added to all of them.
  const lines = inColumns(rows).map((line) => (kind.top ? line : line.slice(2)));
  return [head, ...lines, '  $0'].join('\n');
}

function linesOf(kind: LineKind): readonly LineKind[] {
  const too = (kind.top && SAID_TOO[kind.key]) || [];
  const asked = (kind.body ?? []).filter((line) => isAsked(line) || too.includes(line.key));
  return asked.length > MOST || isList(kind) ? [] : asked;
}

/** What has happened, day by day: its one line that may stand only once is no beginning. */
function isList({ body = [] }: LineKind): boolean {
  return body.filter((line) => line.many).length * 2 > body.length;
}

/** As the default that holds says it, so that what is put in means what would hold without it. */
function asByDefault(kind: LineKind, job: Job): LineKind {
  const setting = defaultOf(kind, job.book)?.setting;
  if (!setting) return kind;
  return { ...kind, example: squeezed(setting.block.lines[setting.line.syntax.span.line]!) };
}

/** What a block cannot do without: no default stands for it. */
function isAsked(kind: LineKind): boolean {
  const more = kind.many || kind.body || kind.later || kind.open;
  return !more && kind.unless === undefined && kind.takes.length > 0;
}

/** Places to fill in, numbered in the order they are put. */
class Fields {
  private next = 1;

  constructor(
    private readonly block: SourceBlock | undefined,
    private readonly job: Job,
  ) {}

  /** What follows the word of a line: its example, with a place for each value. */
  of(kind: LineKind): string {
    const { from, said } = exampleOf(kind);
    return said.length ? this.filled(kind, from, said) : '';
  }

  private filled({ example }: LineKind, from: number, said: readonly Said[]): string {
    let text = '';
    let at = from;
    for (const each of said) {
      const { start, end } = each.value.span;
      if (start < at) continue;
      text += escaped(example.slice(at, start)) + this.field(each, example.slice(start, end));
      at = end;
    }
    return text + escaped(example.slice(at));
  }

  private field(said: Said, example: string): string {
    const words = wordsOf(said, example, this.block, this.job);
    const number = this.next++;
    if (words.length > 1) return `\${${number}|${words.map(chosen).join(',')}|}`;
    return `\${${number}:${escaped(words[0] ?? example)}}`;
  }
}

/** The words that may stand there, the likeliest first; none where any may. */
function wordsOf(
  { slot, names }: Said,
  example: string,
  block: SourceBlock | undefined,
  job: Job,
): readonly string[] {
  if (slot.slot === 'choice') return firstOf(slot.of, example);
  if (!names.length) return [];
  const things = namedThings(job, names, block).map((thing) => thing.name);
  const likeliest = inForce(job, (slot as Slot & { key: string }).key) ?? example;
  return firstOf([...new Set(things)], likeliest).slice(0, MOST_CHOICES);
}

function firstOf(words: readonly string[], first: string | undefined): readonly string[] {
  if (first === undefined || !words.includes(first)) return words;
  return [first, ...words.filter((word) => word !== first)];
}

function escaped(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}

function chosen(word: string): string {
  return word.replace(/[\\$},|]/g, '\\$&');
}
