/** What a line takes, while it is written: each way it can go on, and which part of it the cursor is at. */
import { readLine } from '../../../grammar/blocks';
import { match } from '../../../grammar/read/match';
import type { Item } from '../../../grammar/syntax';

import { askable } from '../life/template';
import type { Job } from '../workspace/job';
import { OF_BLOCKS, OF_OPTION } from './complete-option';
import { expected } from './complete-values';
import { kindOf } from './completion';
import { enclosing, type Home } from './enclosing';
import { explainKey } from './hover-key';
import { type Form, formsOf } from './signature-forms';
import { type Asked, partText } from './signature-part';
import type { Position } from './types';

export interface Signature {
  readonly label: string;
  /** Markdown. */
  readonly text: string;
  readonly parts: readonly SignaturePart[];
  /** Which part the cursor is at; none where nothing may follow in this way. */
  readonly active?: number;
}

/** Where a part stands in the label, and what is told of it in Markdown. */
export interface SignaturePart {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Signatures {
  readonly signatures: readonly Signature[];
  /** The first that what is written so far fits best. */
  readonly active: number;
  /** The cursor is in a text, where a space asks for nothing. */
  readonly inText: boolean;
}

/** Nothing on a line’s own word, in comments, on lines of unknown words, and where nothing more may follow. */
export function signaturesAt(job: Job, at: Position): Signatures | undefined {
  const whole = job.file.lines[at.line] ?? '';
  const line = readLine(whole, 0);
  if (!line?.key || at.column <= line.key.span.end) return undefined;
  if (line.comment && at.column > line.comment.span.start) return undefined;
  const lead = whole.slice(0, line.key.span.start);
  const home = enclosing(job.file, at.line, lead || ' ');
  const kind = kindOf(line.key.text, lead, home);
  if (!kind?.takes.length) return undefined;
  const items = line.items.filter((item) => endOf(item) < at.column);
  const touched = line.items.find(
    (item) => item.span.start < at.column && at.column <= endOf(item),
  );
  const asked = { kind, block: home?.block, job };
  const said = { key: line.key.text, items };
  const found = innerLine(asked, said, home) ?? signatures(asked, said);
  return found && { ...found, inText: touched?.kind === 'text' };
}

/** A text that is not closed goes on to the line’s end. */
function endOf(item: Item): number {
  return item.kind === 'text' && !item.closed ? Number.POSITIVE_INFINITY : item.span.end;
}

interface Written {
  readonly key: string;
  /** What stands before the cursor, and not at it. */
  readonly items: readonly Item[];
}

/** A line of an option, once it says which line of what it writes anew. */
function innerLine(asked: Asked, { key, items }: Written, home: Home | undefined) {
  const [name, word, ...rest] = items;
  const speaks = OF_OPTION.has(asked.kind.key) && OF_BLOCKS.has(home?.parents[0]?.kind.key ?? '');
  if (!speaks || name?.kind !== 'word' || word?.kind !== 'word') return undefined;
  const [target] = askable(asked.job.file.blocks).get(name.text) ?? [];
  const kind = target?.heading.kind.body?.find((each) => each.key === word.text);
  if (!kind?.takes.length || asked.kind.key !== 'change') return undefined;
  const before = `${key} ${name.text} ${word.text}`;
  return signatures({ ...asked, kind }, { key: before, items: rest });
}

type Found = Omit<Signatures, 'inText'>;

function signatures(asked: Asked, { key, items }: Written): Found | undefined {
  const forms = formsOf(asked.kind);
  const places = forms.map((form) => placeIn(form, items));
  const best = Math.max(...places.map((place) => place.reach));
  const active = places.findIndex((p) => p.reach === best && p.part !== undefined);
  if (active < 0) return undefined;
  const list = forms.map((form, i) => signature(form, key, asked, places[i]!.part));
  return { signatures: list, active };
}

/** How far the items fit a way of going on, and the part that comes next in it. */
interface Reached {
  readonly reach: number;
  readonly part?: number;
}

function placeIn(form: Form, items: readonly Item[]): Reached {
  const next = expected(form, items);
  const part = form.parts.findIndex(({ slot }) => slot !== 'on' && next.includes(slot));
  if (part >= 0) return { reach: items.length, part };
  const bare = withoutUnit(form, items);
  if (bare) return bare;
  const { values, mismatch } = match(form.takes, items);
  const goesOn = form.parts.findIndex(({ slot }) => slot === 'on' || slot.slot === 'rest');
  if (values) return { reach: items.length, part: goesOn >= 0 ? goesOn : undefined };
  return { reach: Math.min(mismatch?.at ?? items.length, items.length) - 1 };
}

/** Behind a number that still wants its unit, its own part goes on. */
function withoutUnit(form: Form, items: readonly Item[]): Reached | undefined {
  const last = items.at(-1);
  if (last?.kind !== 'measure' || last.unit) return undefined;
  const before = expected(form, items.slice(0, -1));
  const part = form.parts.findIndex(
    ({ slot }) =>
      slot !== 'on' && ['quantity', 'counted', 'size'].includes(slot.slot) && before.includes(slot),
  );
  return part >= 0 && !match(form.takes, items).values ? { reach: items.length, part } : undefined;
}

function signature(
  { parts }: Form,
  key: string,
  asked: Asked,
  active: number | undefined,
): Signature {
  let label = key;
  const places = parts.map((part) => {
    label += ` ${part.opens}`;
    const start = label.length;
    label += part.text;
    const place = { start, end: label.length, text: partText(part, asked) };
    label += part.closes;
    return place;
  });
  return { label, text: explainKey(asked.kind, asked.job), parts: places, active };
}
