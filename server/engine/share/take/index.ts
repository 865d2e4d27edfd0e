/**
 * What a partner’s file says otherwise, written into ours: lines that are new or say something else. Nothing of ours is
 * taken out; comments, and lines that theirs never had, stay.
 */
import { type LineChange, type SaidLine, saidBlock } from '../../compare';
import { changesIn, headOf } from '../../compare/lines';
import { type SourceBlock, SourceFile } from '../../workspace/source';
import { type LineEdits, withLines } from './lines';
import { couldHave, mayTakeBlock, mayTakeLine } from './may';
import { placed } from './place';

export interface TakeWishes {
  /** Names of blocks, or their kinds where they have none; nothing for all. */
  readonly names?: ReadonlySet<string>;
  readonly rates: boolean;
}

export interface Taking {
  /** `wall north` */
  readonly block: string;
  /** Within it: `opening gate`. */
  readonly under: readonly string[];
  readonly change: 'new' | 'changed';
  readonly before?: string;
  readonly after: string;
}

export interface Taken {
  readonly text: string;
  /** The same line by line: every other line stays. */
  readonly lines: LineEdits;
  readonly edits: readonly Taking[];
  /** Lines of theirs that are not taken: money, or something was left out of them. */
  readonly refused: number;
  /** Lines of ours that theirs does not have, which stay: `wall north: coping brick-on-edge`. */
  readonly ours: readonly string[];
  /** Names of blocks that theirs has and that could be taken. */
  readonly offered: readonly string[];
}

/** `used`: what the files say that ours uses, nearest first: it is ours already, and is not written into the job again. */
export function taken(
  text: string,
  theirs: SourceFile,
  used: readonly SourceBlock[],
  wishes: TakeWishes,
): Taken {
  const work = new Work(text, used, wishes);
  const seen = new Set<string>();
  const offered: string[] = [];
  for (const block of theirs.blocks) {
    const id = idOf(block);
    // Two of one name: which is meant cannot be told, and the first holds.
    if (!block.read.heading || seen.has(id) || !mayTakeBlock(block.kind, wishes.rates)) continue;
    seen.add(id);
    offered.push(block.name ?? block.kind!);
    if (!wishes.names || wishes.names.has(block.name ?? block.kind!)) work.take(block, id);
  }
  return { ...work.done(), offered: [...new Set(offered)] };
}

function idOf({ kind, name }: SourceBlock): string {
  return [kind, name].filter(Boolean).join(' ');
}

class Work {
  private readonly file: SourceFile;
  private readonly over = new Map<number, string>();
  private readonly after = new Map<number, string[]>();
  private readonly last: string[] = [];
  private readonly edits: Taking[] = [];
  private readonly ours: string[] = [];
  private refused = 0;

  constructor(
    private readonly text: string,
    private readonly used: readonly SourceBlock[],
    private readonly wishes: TakeWishes,
  ) {
    this.file = new SourceFile('', text);
  }

  done(): Omit<Taken, 'offered'> {
    const { over, after, last, edits, ours, refused } = this;
    const lines = { over, after, last };
    return { text: withLines(this.text, lines), lines, edits, ours, refused };
  }

  take(block: SourceBlock, id: string): void {
    const known = this.file.blocks.find((each) => each.read.heading && idOf(each) === id);
    const said = saidBlock(block)!;
    if (!known) this.beside(said, id, block.kind!);
    else
      for (const change of changesIn(saidBlock(known)!, said))
        this.change(change, known, id, block.kind!);
  }

  /** Of a thing that files of ours speak of only what they do not say. */
  private beside(said: SaidLine, id: string, kind: string): void {
    const known = this.saidByUsed(id);
    if (!known.length) {
      this.wholly(said, id, kind);
      return;
    }
    const fresh = said.body.filter((line) => !isSaid(line, known));
    const lines = fresh.filter((line) => this.may(kind, line, ofWord(line, known)));
    if (!lines.length) return;
    this.last.push('', headOf(said), ...this.inner(lines, kind, '  '));
    for (const line of lines) {
      const before = ofWord(line, known)?.text;
      this.edits.push({ block: id, under: [], change: 'new', before, after: line.text });
    }
  }

  private saidByUsed(id: string): SaidLine[] {
    const blocks = this.used.filter((block) => idOf(block) === id);
    return blocks.flatMap((block) => saidBlock(block) ?? []);
  }

  private wholly(said: SaidLine, id: string, kind: string): void {
    if (!this.may(kind, said)) return;
    this.last.push('', said.text, ...this.inner(said.body, kind, '  '));
    this.edits.push({ block: id, under: [], change: 'new', after: said.text });
  }

  /** Those that may be taken, with what stands under them. */
  private inner(body: readonly SaidLine[], kind: string, indent: string): string[] {
    return body
      .filter((line) => this.may(kind, line))
      .flatMap((line) => [indent + line.text, ...this.inner(line.body, kind, `${indent}  `)]);
  }

  private may(kind: string, theirs: SaidLine, ours?: SaidLine): boolean {
    const may = mayTakeLine(kind, theirs, ours, this.wishes.rates);
    if (!may) this.refused++;
    return may;
  }

  private change(
    { change, under, before, after }: LineChange,
    block: SourceBlock,
    id: string,
    kind: string,
  ) {
    if (change === 'gone' && couldHave(kind, before!))
      this.ours.push(`${[id, ...under].join(', ')}: ${before!.text}`);
    if (change !== 'new' && change !== 'changed') return;
    const known = this.saidByUsed(id);
    if (isSaid(after!, known) || !this.may(kind, after!, before ?? ofWord(after!, known))) return;
    if (before) this.over.set(before.place().line, rewritten(before, after!, this.file));
    else this.add(block, under, after!, kind);
    this.edits.push({ block: id, under, change, before: before?.text, after: after!.text });
  }

  private add(block: SourceBlock, under: readonly string[], line: SaidLine, kind: string): void {
    const { at, indent, column } = placed(saidBlock(block)!, under, block);
    const space = ' '.repeat(indent);
    const values = line.text.slice(line.key.length).trimStart();
    const own = line.body.length ? line.text : `${line.key.padEnd(column - indent)}${values}`;
    const list = this.after.get(at) ?? [];
    list.push((space + own).trimEnd(), ...this.inner(line.body, kind, `${space}  `));
    this.after.set(at, list);
  }
}

/** Whether files that ours uses say it already: a line, or a heading. */
function isSaid(line: SaidLine, known: readonly SaidLine[]): boolean {
  return known.some(
    (head) => head.means === line.means || head.body.some((l) => l.meansAll === line.meansAll),
  );
}

function ofWord({ key }: SaidLine, known: readonly SaidLine[]): SaidLine | undefined {
  return known.flatMap(({ body }) => body).find((line) => line.key === key);
}

/** Our line with their words: its indent, its column and its comment stay. */
function rewritten(ours: SaidLine, theirs: SaidLine, { lines }: SourceFile): string {
  const old = lines[ours.place().line]!;
  const [first] = ours.items;
  const last = ours.items.at(-1);
  const same = ours.key === theirs.key && first && last;
  const head = same ? old.slice(0, first.span.start) : `${/^\s*/.exec(old)![0]}`;
  const words = same ? theirs.text.slice(theirs.key.length).trimStart() : theirs.text;
  const rest = last ? old.slice(last.span.end) : '';
  return `${head}${words}${rest}`.trimEnd();
}
