/** From the syntax of a block to what its lines say, with a fault for each line that says nothing. */

import { nearest } from '../../shared/nearest';
import { phrase } from '../../shared/phrase';
import { type Span, span } from '../../shared/span';
import { readBlock } from '../blocks';
import { BODY_ONLY, HEADINGS, headingNamed, type LineKind, lineOf } from '../lines';
import type { Item, LineSyntax, TextItem } from '../syntax';
import { article } from './describe';
import { clipped, type Fault, type FaultWay, fault, replace } from './fault';
import { type Match, match } from './match';
import { misfit } from './misfit';
import { listed } from './numbers';
import type { ReadBlock, ReadLine } from './values';

/** Reads a block's text. Depends on nothing but the text; never throws. */
export function read(lines: readonly string[]): ReadBlock {
  const syntax = readBlock(lines);
  if (!syntax.heading) return { syntax, faults: [] };
  const reading = new Reading();
  const heading = reading.heading(syntax.heading);
  return { syntax, heading, faults: reading.faults };
}

class Reading {
  readonly faults: Fault[] = [];

  heading(line: LineSyntax): ReadLine | undefined {
    const kind = line.key && headingNamed(line.key.text);
    if (!kind) {
      this.faults.push(unknownHeading(line));
      return undefined;
    }
    if (line.indent > 0) this.faults.push(indented(line));
    const values = this.values(kind, line);
    const body = this.body(kind, line);
    return { kind, syntax: line, values: values ?? {}, body };
  }

  private body(parent: LineKind, line: LineSyntax): ReadLine[] {
    const read: ReadLine[] = [];
    const seen = new Map<string, LineSyntax>();
    for (const inner of line.body) {
      const kind = inner.key && lineOf(parent, inner.key.text);
      if (!kind) {
        this.faults.push(unknownLine(parent, inner));
        continue;
      }
      const first = seen.get(kind.key);
      if (first && !kind.many) {
        this.faults.push(twice(inner, first));
        continue;
      }
      this.place(inner, line);
      const values = this.values(kind, inner);
      if (!values && !kind.body) continue;
      seen.set(kind.key, inner);
      read.push({ kind, syntax: inner, values: values ?? {}, body: this.body(kind, inner) });
    }
    return read;
  }

  private place(inner: LineSyntax, parent: LineSyntax): void {
    if (inner.parted) this.faults.push(parted(inner, parent));
    else if (inner.indent === 0 || inner.strayed) this.faults.push(astray(inner, parent));
  }

  private values(kind: LineKind, line: LineSyntax) {
    const unclosed = line.items.find((i) => i.kind === 'text' && !i.closed) as TextItem | undefined;
    if (unclosed) this.faults.push(openText(unclosed));
    const result = matched(kind, line.items);
    this.faults.push(...result.faults);
    if (result.mismatch && !result.faults.length)
      this.faults.push(misfit(kind, line, result.mismatch));
    return result.values;
  }
}

/** A line that was read lately keeps its items, and with them what they matched. */
const kept = new WeakMap<readonly Item[], { readonly kind: LineKind; readonly match: Match }>();

function matched(kind: LineKind, items: readonly Item[]): Match {
  const known = kept.get(items);
  if (known?.kind === kind) return known.match;
  const fresh = match(kind.takes, items);
  kept.set(items, { kind, match: fresh });
  return fresh;
}

function astray(line: LineSyntax, parent: LineSyntax): Fault {
  const message = phrase`This line belongs to the ${parent.key!.text} above. Indent it to match; the formatter does it.`;
  const depth = parent.indent > 0 ? parent.indent + 2 : 2;
  return fault('indent-astray', 'hint', line.key!.span, message, [
    replace(phrase`Indent it to match`, roomOf(line), ' '.repeat(depth), true),
  ]);
}

/** It is as deep as the lines of an opening, say, but a line of the wall has come since. */
function parted(line: LineSyntax, parent: LineSyntax): Fault {
  const message = phrase`This line is read as one of the ${parent.key!.text} above, because it stands deeper; a line of the block stands between them. Move it up, or take its indent back.`;
  return fault('indent-parted', 'warning', line.key!.span, message, [
    replace(phrase`Take its indent back`, roomOf(line), ' '.repeat(parent.indent)),
  ]);
}

/** The space before a line. */
function roomOf(line: LineSyntax): Span {
  return span(line.span.line, 0, line.span.start);
}

function unknownHeading(line: LineSyntax): Fault {
  const key = line.key?.text ?? line.items[0]?.span;
  if (typeof key !== 'string')
    return fault(
      'line-unreadable',
      'error',
      line.span,
      phrase`A line begins with a word that says what it is, such as wall or job. This line and those under it are left out.`,
    );
  if (BODY_ONLY.has(key)) return homeless(line);
  const known = HEADINGS.map((h) => h.key);
  const meant = nearest(key, known);
  const ways = meant ? [replace(phrase`Write ${meant}`, line.key!.span, meant, true)] : [];
  const hint = meant
    ? phrase` Did you mean “${meant}”?`
    : phrase` It can be ${listed(known.slice(1))}.`;
  const message = phrase`“${clipped(key)}” opens no block that is known, so this line and those under it are left out.${hint}`;
  return fault('heading-unknown', 'error', line.key!.span, message, ways);
}

function indented(line: LineSyntax): Fault {
  const message = phrase`A heading begins in the first column. Take the space before it away.`;
  return fault('heading-indented', 'warning', line.key!.span, message, [outdent(line)]);
}

function outdent(line: LineSyntax): FaultWay {
  return replace(phrase`Move it to the first column`, roomOf(line), '', true);
}

/** A line of a block, at the top of a file. */
function homeless(line: LineSyntax): Fault {
  const key = line.key!.text;
  const message = phrase`“${key}” is ${placesOf(key)}, and no heading stands above it. It and what stands under it are left out.`;
  return fault('line-homeless', 'error', line.span, message);
}

/** Where a line of this word can stand: `a line of wall or pier`. Empty when nowhere. */
function placesOf(key: string, among?: LineKind): string {
  const has = (kind: LineKind): boolean => (kind.body ?? []).some((k) => !k.open && k.key === key);
  const tops = HEADINGS.filter(has);
  const ofOwn = (kind: LineKind) =>
    kind.key === among?.key ? phrase`${article(kind.key)} in a block of its own` : kind.key;
  const inner = HEADINGS.flatMap((h) =>
    (h.body ?? []).filter((k) => k.body && has(k) && !tops.some((top) => top.key === k.key)),
  );
  const homes = [...new Set([...tops.map(ofOwn), ...inner.map(insideOther)])];
  return homes.length ? phrase`a line of ${listed(homes)}` : '';
}

/** `opening`; but `a pier inside a wall`, since a pier can also stand alone and has other lines then. */
function insideOther(kind: LineKind): string {
  if (!headingNamed(kind.key)) return kind.key;
  const outer = HEADINGS.filter((h) => h.body?.includes(kind)).map((h) => article(h.key));
  return phrase`${article(kind.key)} inside ${listed(outer)}`;
}

function unknownLine(parent: LineKind, line: LineSyntax): Fault {
  if (!line.key)
    return fault(
      'line-unreadable',
      'error',
      line.span,
      phrase`A line begins with a word that says what it is. This one is left out; the others stand.`,
    );
  const key = line.key.text;
  if (headingNamed(key)) return blockInside(parent, line);
  const known = (parent.body ?? []).map((k) => k.key);
  const meant = nearest(key, known);
  const left = line.body.length
    ? phrase`so it and the lines under it are left out`
    : phrase`so it is left out`;
  const hint = meant ? phrase`Did you mean “${meant}”?` : whereTo(parent, key, known);
  const message = phrase`“${clipped(key)}” is no line of ${parent.key}, ${left}. ${hint}`;
  const ways = meant ? [replace(phrase`Write ${meant}`, line.key.span, meant, true)] : [];
  return fault('line-unknown', 'error', line.key.span, message, ways);
}

function whereTo(parent: LineKind, key: string, known: readonly string[]): string {
  const places = placesOf(key, parent);
  if (places) return phrase`It is ${places}.`;
  return known.length
    ? phrase`Under ${parent.key} there can be ${listed(known)}.`
    : phrase`Nothing stands under ${parent.key}.`;
}

/** `job` among the lines of a wall. */
function blockInside(parent: LineKind, line: LineSyntax): Fault {
  const message = phrase`“${line.key!.text}” opens a block of its own and cannot stand in ${parent.key}, so it is left out. A heading begins in the first column.`;
  return fault('heading-indented', 'error', line.key!.span, message, [outdent(line)]);
}

function twice(line: LineSyntax, first: LineSyntax): Fault {
  const key = line.key!.text;
  const up = line.span.line - first.span.line;
  const message = phrase`“${key}” is said twice; the first, ${up} ${up === 1 ? phrase`line` : phrase`lines`} up, holds. Take one of them out.`;
  const whole: Span = { line: line.span.line, start: 0, end: line.span.end };
  return fault('line-twice', 'error', line.span, message, [
    replace(phrase`Take this line out`, whole, ''),
  ]);
}

function openText(item: TextItem): Fault {
  const end = { ...item.span, start: item.span.end };
  return fault(
    'text-open',
    'warning',
    item.span,
    phrase`The closing quotation mark is missing; the text is taken to the end of the line.`,
    [replace(phrase`Close the text`, end, item.closing ?? '"', true)],
  );
}
