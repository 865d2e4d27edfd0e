/**
 * What a file shows at a glance: the files it names and the things it gives names to. Hardly any of its blocks is read
 * for that, so that thousands of files can be looked through.
 */
import { type SourceBlock, SourceFile } from '../workspace/source';
import { filesSaid } from './used-file';

export interface Glance {
  /** As they are written: `../firm.perp`. */
  readonly files: readonly string[];
  readonly things: readonly Glimpse[];
}

export interface Glimpse {
  /** The word that opens it: `wall`, `opening`. */
  readonly kind: string;
  readonly name: string;
  readonly title: string;
  /** Counted from 0. */
  readonly line: number;
  /** What it stands in: `wall north`. */
  readonly within?: string;
}

export function glanceAt(text: string): Glance {
  const file = new SourceFile('', text, false, true);
  return {
    files: filesSaid(file).map(({ path }) => path),
    things: file.blocks.flatMap(thingsIn),
  };
}

/** Blocks that are no things of their own. */
const LEFT_OUT: ReadonlySet<string> = new Set(['perpend', 'use']);

function thingsIn(block: SourceBlock): Glimpse[] {
  const { kind, name = '', lines, firstLine } = block;
  if (!kind || LEFT_OUT.has(kind)) return [];
  const at = lines.findIndex((line) => /^[^\s#]/.test(line));
  const own = { kind, name, title: titleIn(lines[at] ?? ''), line: firstLine + at };
  const within = [kind, name].filter(Boolean).join(' ');
  const inner = INNER[kind];
  const parts = inner ? lines.flatMap((line, i) => part(line, inner, firstLine + i, within)) : [];
  return [own, ...parts];
}

/** Lines of a block that give names, by the block’s word. */
const INNER: Readonly<Record<string, RegExp>> = {
  wall: /^\s+(opening|pier)\s+(\p{L}\S*)/u,
  limit: /^\s+(zone)\s+(\p{L}\S*)/u,
};

function part(text: string, inner: RegExp, line: number, within: string): Glimpse[] {
  const found = inner.exec(text);
  if (!found) return [];
  return [{ kind: found[1]!, name: found[2]!, title: titleIn(text), line, within }];
}

function titleIn(line: string): string {
  return /^[^"#]*"([^"]*)"/.exec(line)?.[1] ?? '';
}
