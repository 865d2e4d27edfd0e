/** From the syntax of a block to what its lines say, with a fault for each line that says nothing. */
import { cover, type Span, span } from '../../shared/span';
import { readBlock } from '../blocks';
import { BODY_ONLY, HEADINGS, headingNamed, type LineKind, lineOf } from '../lines';
import type { Item, LineSyntax } from '../syntax';
import { describe, pattern } from './describe';
import { type Fault, fault, replace } from './fault';
import { type Mismatch, match } from './match';
import { nearest } from './nearest';
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
    if (inner.indent > 0 && !inner.strayed) return;
    const under = `${parent.key?.text ?? ''}`;
    const message = `This line belongs to the ${under} above. Indent it to match; the formatter does it.`;
    this.faults.push(fault('indent-astray', 'hint', inner.key!.span, message));
  }

  private values(kind: LineKind, line: LineSyntax) {
    const unclosed = line.items.find((i) => i.kind === 'text' && !i.closed);
    if (unclosed) this.faults.push(openText(unclosed));
    const result = match(kind.takes, line.items);
    this.faults.push(...result.faults);
    if (result.mismatch && !result.faults.length)
      this.faults.push(misfit(kind, line, result.mismatch));
    return result.values;
  }
}

function unknownHeading(line: LineSyntax): Fault {
  const key = line.key?.text ?? line.items[0]?.span;
  if (typeof key !== 'string')
    return fault(
      'line-unreadable',
      'error',
      line.span,
      'A line begins with a word that says what it is, such as wall or job. This line and those under it are left out.',
    );
  const known = HEADINGS.map((h) => h.key);
  const meant = nearest(key, known);
  const ways = meant ? [replace(`Write ${meant}`, line.key!.span, meant, true)] : [];
  const hint = meant ? ` Did you mean “${meant}”?` : ` It can be ${listed(known.slice(1, 12))}, ….`;
  const message = `“${key}” opens no block that is known, so this line and those under it are left out.${hint}`;
  return fault('heading-unknown', 'error', line.key!.span, message, ways);
}

function indented(line: LineSyntax): Fault {
  if (BODY_ONLY.has(line.key?.text ?? ''))
    return fault('line-homeless', 'error', line.span, 'No heading stands above this line.');
  const at = span(line.span.line, 0, line.span.start);
  const message = 'A heading begins in the first column. Take the space before it away.';
  return fault('heading-indented', 'warning', line.key!.span, message, [
    replace('Move it to the first column', at, '', true),
  ]);
}

function unknownLine(parent: LineKind, line: LineSyntax): Fault {
  if (!line.key)
    return fault(
      'line-unreadable',
      'error',
      line.span,
      'A line begins with a word that says what it is. This one is left out; the others stand.',
    );
  const key = line.key.text;
  const known = (parent.body ?? []).map((k) => k.key);
  const meant = nearest(key, known);
  const where = known.length
    ? `A ${parent.key} can have ${listed(known)}.`
    : `A ${parent.key} has no lines.`;
  const hint = meant ? `Did you mean “${meant}”?` : where;
  const message = `“${key}” is no line of a ${parent.key}, so it is left out. ${hint}`;
  const ways = meant ? [replace(`Write ${meant}`, line.key.span, meant, true)] : [];
  return fault('line-unknown', 'error', line.key.span, message, ways);
}

function twice(line: LineSyntax, first: LineSyntax): Fault {
  const key = line.key!.text;
  const up = line.span.line - first.span.line;
  const message = `“${key}” is said twice; the first, ${up} ${up === 1 ? 'line' : 'lines'} up, holds. Take one of them out.`;
  const whole: Span = { line: line.span.line, start: 0, end: line.span.end };
  return fault('line-twice', 'error', line.span, message, [
    replace('Take this line out', whole, ''),
  ]);
}

function openText(item: Item): Fault {
  const end = { ...item.span, start: item.span.end };
  return fault(
    'text-open',
    'warning',
    item.span,
    'The closing quotation mark is missing; the text is taken to the end of the line.',
    [replace('Close the text', end, '"', true)],
  );
}

function misfit(kind: LineKind, line: LineSyntax, miss: Mismatch): Fault {
  const item = line.items[miss.at];
  const example = `Write it like this: ${kind.example}`;
  if (!item) {
    const wanted = listed([...new Set(miss.expected.map(describe))]);
    const message = `“${line.key!.text}” is not finished: it needs ${wanted}. ${example}`;
    return fault('value-missing', 'error', line.span, message);
  }
  const there = cover(item.span, miss.expected.length ? item.span : line.items.at(-1)!.span);
  if (!miss.expected.length) {
    const message = `Nothing more is read after “${line.key!.text}” here. ${example}`;
    return fault('value-spare', 'error', there, message, [replace('Take it out', there, '')]);
  }
  return wrongValue(kind, line, miss, there);
}

function wrongValue(kind: LineKind, line: LineSyntax, miss: Mismatch, there: Span): Fault {
  const wanted = listed([...new Set(miss.expected.map(describe))]);
  const item = line.items[miss.at]!;
  const bare = item.kind === 'measure' && !item.unit;
  const hint =
    bare && miss.expected.some((s) => s.slot === 'quantity' && !s.bare)
      ? ' A number here needs its unit.'
      : '';
  const rangeSaid =
    item.kind === 'code' ? ' A range is written with two points, such as 60..75.' : '';
  const message = `“${kind.key}” wants ${wanted} here.${hint}${rangeSaid} Write it like this: ${kind.example}`;
  const words = miss.expected.flatMap((s) =>
    s.slot === 'choice' ? s.of : s.slot === 'literal' ? [s.text] : [],
  );
  const meant = item.kind === 'word' ? nearest(item.text, words) : undefined;
  const ways = meant ? [replace(`Write ${meant}`, item.span, meant, true)] : [];
  return fault('value-wrong', 'error', there, message, ways);
}

export { pattern };
