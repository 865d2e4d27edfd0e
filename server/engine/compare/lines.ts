/** Which lines of a block are new, gone or say something else: fact by fact, in the words of the notation. */
import { printItems } from '../../../grammar/print/items';
import { type Paired, pairedBy, pairedInOrder, pairedOn } from './pair';
import type { SaidLine } from './said';

export interface LineChange {
  /** `moved`: lines of which only the order is another. */
  readonly change: 'new' | 'gone' | 'changed' | 'moved';
  /** Headings within the block that it stands under: `opening gate`. */
  readonly under: readonly string[];
  readonly before?: SaidLine;
  readonly after?: SaidLine;
}

/** What one change says: the words that both share, and the rest of each. */
export interface ChangeSaid {
  /** `length`, or `stage "Deposit"`. */
  readonly what: string;
  readonly before?: string;
  readonly after?: string;
}

/** Of two headings, and all that stands under them. */
export function changesIn(before: SaidLine, after: SaidLine): LineChange[] {
  return changesOf(before, after, [], []);
}

/** `inner`: what their own lines stand under. */
function changesOf(
  before: SaidLine,
  after: SaidLine,
  under: readonly string[],
  inner: readonly string[],
): LineChange[] {
  if (before.meansAll === after.meansAll) return [];
  const own: LineChange[] =
    before.means === after.means ? [] : [{ change: 'changed', under, before, after }];
  return [...own, ...changesAmong(before.body, after.body, inner)];
}

/** Of two lists of lines, those of one word with one another. */
function changesAmong(
  before: readonly SaidLine[],
  after: readonly SaidLine[],
  under: readonly string[],
): LineChange[] {
  const [old, now] = [byKey(before), byKey(after)];
  const keys = new Set([...now.keys(), ...old.keys()]);
  return [...keys].flatMap((key) => ofOneKey(old.get(key) ?? [], now.get(key) ?? [], under));
}

function byKey(lines: readonly SaidLine[]): Map<string, SaidLine[]> {
  const found = new Map<string, SaidLine[]>();
  for (const line of lines) {
    const list = found.get(line.key);
    if (list) list.push(line);
    else found.set(line.key, [line]);
  }
  return found;
}

function ofOneKey(
  before: readonly SaidLine[],
  after: readonly SaidLine[],
  under: readonly string[],
): LineChange[] {
  const { pairs, gone, added } = paired(before, after);
  const changed = pairs.flatMap(([a, b]) => changesOf(a, b, under, [...under, headOf(b)]));
  const all: LineChange[] = [
    ...changed,
    ...gone.map((line): LineChange => ({ change: 'gone', under, before: line })),
    ...added.map((line): LineChange => ({ change: 'new', under, after: line })),
  ];
  return all.length ? all : movedIn(before, after, under);
}

function paired(before: readonly SaidLine[], after: readonly SaidLine[]): Paired<SaidLine> {
  const named = pairedBy(before, after, (line) => line.name);
  const same = pairedOn(named, (a, b) => pairedBy(a, b, (line) => line.meansAll));
  const alike = pairedOn(same, (a, b) => pairedBy(a, b, firstWord));
  return pairedOn(alike, pairedInOrder);
}

/** `"Deposit"` of a stage, the date of a day on site. */
function firstWord({ items, source }: SaidLine): string | undefined {
  const [first] = items;
  return first && items.length > 1 ? printItems([first], source) : undefined;
}

/** Lines that are told in their order, such as notes and stages. A name says which is which, wherever it stands. */
function movedIn(
  before: readonly SaidLine[],
  after: readonly SaidLine[],
  under: readonly string[],
): LineChange[] {
  const at = before.findIndex((line, i) => line.meansAll !== after[i]?.meansAll);
  if (at < 0 || before[at]!.name !== undefined) return [];
  return [{ change: 'moved', under, before: before[at], after: after[at] }];
}

/** `opening gate`: what a reader finds it by. */
export function headOf({ key, name, text }: SaidLine): string {
  return name === undefined ? text : `${key} ${name}`;
}

export function saidChange({ change, before, after }: LineChange): ChangeSaid {
  if (change === 'moved') return { what: after!.key };
  if (!before || !after) return whole(change, (before ?? after)!);
  const shared = sharedItems(before, after);
  return {
    what: wordsTo(after, shared),
    before: wordsFrom(before, shared),
    after: wordsFrom(after, shared),
  };
}

function whole(change: LineChange['change'], line: SaidLine): ChangeSaid {
  const said = allOf(line);
  const what = line.key || said;
  const rest = said.slice(what.length).trimStart();
  return change === 'gone' ? { what, before: rest } : { what, after: rest };
}

/** A line with those under it: `opening gate (from left 2.7 m, width 1010 mm)`. */
function allOf({ text, body }: SaidLine): string {
  return body.length ? `${text} (${body.map(allOf).join(', ')})` : text;
}

/** How many of the first words of both are the same. */
function sharedItems(before: SaidLine, after: SaidLine): number {
  if (before.key !== after.key) return -1;
  const of = (line: SaidLine, i: number) => printItems([line.items[i]!], line.source);
  const most = Math.min(before.items.length, after.items.length);
  let shared = 0;
  while (shared < most && of(before, shared) === of(after, shared)) shared++;
  return shared;
}

function wordsTo({ key, items, source }: SaidLine, shared: number): string {
  if (shared < 0) return '';
  return [key, printItems(items.slice(0, shared), source)].filter(Boolean).join(' ');
}

function wordsFrom({ text, items, source }: SaidLine, shared: number): string {
  return shared < 0 ? text : printItems(items.slice(shared), source);
}
