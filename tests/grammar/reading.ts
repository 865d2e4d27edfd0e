/** What the tests of the notation share: reading a whole text, and what it says without where it stands. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { cutBlocks, splitLines } from '../../grammar/blocks';
import type { Fault } from '../../grammar/read/fault';
import { read } from '../../grammar/read/read';
import type { ReadBlock, ReadLine, Value, Values } from '../../grammar/read/values';
import { Decimal } from '../../shared/exact';
import type { Span } from '../../shared/span';
import type { Found } from '../harness/marks';

const folder = path.join(import.meta.dirname, 'fixtures');

/** The design's own examples, one a file. */
export const fixtures: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(folder).map((name) => [name, readFileSync(path.join(folder, name), 'utf8')]),
);

export function fixture(name: string): string {
  const text = fixtures[name];
  if (text === undefined) throw new Error(`There is no fixture ${name}.`);
  return text;
}

export interface BlockAt {
  readonly first: number;
  readonly lines: readonly string[];
  readonly block: ReadBlock;
}

export function blocksOf(text: string): BlockAt[] {
  const lines = splitLines(text);
  const starts = cutBlocks(lines);
  return starts.map((first, i) => {
    const own = lines.slice(first, starts[i + 1]);
    return { first, lines: own, block: read(own) };
  });
}

/** A fault with its places counted from the first line of the text. */
export interface FaultAt extends Found, Omit<Fault, 'span'> {}

export function faultsOf(text: string): FaultAt[] {
  return blocksOf(text).flatMap(({ first, block }) =>
    block.faults.map((fault) => ({
      ...fault,
      place: down(fault.span, first),
      ways: fault.ways.map((way) => ({
        ...way,
        edits: way.edits.map((edit) => ({ ...edit, span: down(edit.span, first) })),
      })),
    })),
  );
}

function down(span: Span, lines: number): Span {
  return { ...span, line: span.line + lines };
}

/** What the first line under a heading says. @throws when it says nothing */
export function valuesOf(heading: string, line: string): Values {
  const [first] = blocksOf(`${heading}\n  ${line}`);
  const found = first?.block.heading?.body[0];
  if (!found || first.block.faults.length)
    throw new Error(`Cannot be read: ${first?.block.faults.map((f) => f.message).join(' ')}`);
  return found.values;
}

/** What a text says: kinds and values, without places and spelling of units. */
export function meaning(text: string): unknown[] {
  return blocksOf(text).flatMap(({ block }) => (block.heading ? [said(block.heading)] : []));
}

function said(line: ReadLine): unknown {
  return [line.kind.key, line.syntax.key?.text, plain(line.values), line.body.map(said)];
}

function plain(values: Values): unknown {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, valueOnly(value)]));
}

function valueOnly(value: Value | undefined): unknown {
  if (value === undefined) return undefined;
  if (value.kind === 'list') return value.of.map(plain);
  const { span: _, ...rest } = value;
  return JSON.parse(JSON.stringify(rest, spelled)) as unknown;
}

/** `m²` in a word such as `per m²` says the same as `m2`. */
function spelled(key: string, value: unknown): unknown {
  // Where a line stands within a line is no part of what it says.
  if (key === 'span') return undefined;
  if (key === 'unit') return (value as { name: string } | undefined)?.name;
  if (value instanceof Decimal) return value.toString();
  if (key !== 'text' || typeof value !== 'string') return value;
  return value.replace(/²/g, '2').replace(/³/g, '3').replace(/^°C$/, 'C');
}

/** Every comment, in the order of the text. */
export function commentsOf(text: string): string[] {
  return blocksOf(text).flatMap(({ block }) => {
    const trailing = block.syntax.lines.flatMap((line) => (line.comment ? [line.comment] : []));
    const all = [...block.syntax.comments, ...trailing].sort((a, b) => a.span.line - b.span.line);
    return all.map((comment) => comment.text.replace(/[ \t\u00a0\u202f\ufeff]+$/, ''));
  });
}
