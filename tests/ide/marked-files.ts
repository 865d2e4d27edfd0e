/**
 * Several files as one marked text. A line `--- name` begins a file; a text without one is `job.perp`. `$0` is the
 * cursor, and «…» stands around every place that is looked for:
 *
 *     --- firm.perp
 *     brick «red»
 *     --- job.perp
 *     use "firm.perp"
 *     wall north
 *       brick «re$0d»
 */

import { glanceAt } from '../../server/engine/ide/glance';
import type { World } from '../../server/engine/ide/sight';
import type { Position } from '../../server/engine/ide/types';
import { worldOf } from '../../server/engine/ide/world';
import type { Job } from '../../server/engine/workspace/job';
import type { TextEdit } from '../../shared/finding';
import type { Place } from '../../shared/span';
import { type Files, hostOf, inRoot, ROOT, workspaceOf } from '../engine/world';

export interface MarkedFiles {
  readonly files: Files;
  readonly file: string;
  readonly at: Position;
  /** `file:line:start-end` of what stands between « and », lines from 0, in order. */
  readonly places: readonly string[];
  /** The texts with another word in each of these places; a plural of a marked word stays one. */
  readonly with: (word: string) => Files;
}

const PIECE = /«|»|\$0/g;
const MARK = /«[^»]*»/g;

function plain(mark: string): string {
  return mark.replace(PIECE, '');
}

function marks(text: string): string[] {
  return (text.match(MARK) ?? []).map(plain);
}

export function markedFiles(marked: string): MarkedFiles {
  const texts = parted(marked);
  const files: Record<string, string> = {};
  const places: string[] = [];
  let cursor: { file: string; at: Position } | undefined;
  for (const [file, text] of texts) {
    files[file] = text.replace(PIECE, '');
    text.split('\n').forEach((line, number) => {
      const read = inLine(line);
      places.push(...read.spans.map(([start, end]) => `${file}:${number}:${start}-${end}`));
      if (read.cursor !== undefined) cursor = { file, at: { line: number, column: read.cursor } };
    });
  }
  const said = new Set(texts.flatMap(([, text]) => marks(text)));
  const other = (word: string, mark: string) => (said.has(mark.slice(0, -1)) ? `${word}s` : word);
  const filled = (word: string) =>
    Object.fromEntries(
      texts.map(([file, text]) => [
        file,
        text.replace(MARK, (mark) => other(word, plain(mark))).replace(PIECE, ''),
      ]),
    );
  return {
    files,
    file: cursor?.file ?? texts[0]![0],
    at: cursor?.at ?? { line: 0, column: 0 },
    places,
    with: filled,
  };
}

function parted(marked: string): [file: string, text: string][] {
  const whole = dedented(marked);
  if (!/^--- /m.test(whole)) return [['job.perp', whole]];
  return whole
    .split(/^--- /m)
    .slice(1)
    .map((part) => {
      const [name = '', ...lines] = part.split('\n');
      return [name.trim(), lines.join('\n')];
    });
}

function dedented(marked: string): string {
  const lines = marked
    .replace(/^\n/, '')
    .replace(/\n[ \t]*$/, '\n')
    .split('\n');
  const rooms = lines.filter((line) => line.trim()).map((line) => /^ */.exec(line)![0].length);
  return lines.map((line) => line.slice(Math.min(...rooms))).join('\n');
}

function inLine(line: string) {
  const spans: [number, number][] = [];
  let removed = 0;
  let start = 0;
  let cursor: number | undefined;
  for (const { 0: mark, index } of line.matchAll(PIECE)) {
    const at = index - removed;
    if (mark === '«') start = at;
    else if (mark === '»') spans.push([start, at]);
    else cursor = at;
    removed += mark.length;
  }
  return { spans, cursor };
}

export interface Around {
  readonly world: World;
  readonly jobOf: (file: string) => Job;
}

/** The files in memory, as a server knows those of its folders. */
export function aroundOf(files: Files): Around {
  const workspace = workspaceOf(files);
  const { resolve } = hostOf(files);
  const text = (name: string) => files[name.slice(ROOT.length + 1)];
  const steps = worldOf(Object.keys(files).map(inRoot), {
    store: workspace,
    resolve,
    text,
    glance: (name) => (text(name) === undefined ? undefined : glanceAt(text(name)!)),
    source: (name) => (text(name) === undefined ? undefined : workspace.file(name)),
  });
  return { world: done(steps), jobOf: (file) => workspace.job(inRoot(file))! };
}

/** All steps of what may be done in stretches. */
export function done<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

export function saidPlace({ file, line, start, end }: Place): string {
  return `${file.replace(/^.*[/:]/, '')}:${line}:${start}-${end}`;
}

/** The files after edits. @throws when two edits overlap */
export function edited(files: Files, edits: readonly TextEdit[]): Files {
  const texts: Record<string, string> = { ...files };
  const fromTheEnd = [...edits].sort(
    (a, b) => b.place.line - a.place.line || b.place.start - a.place.start,
  );
  for (const { place, text } of fromTheEnd) {
    const name = place.file.slice(ROOT.length + 1);
    const lines = texts[name]!.split('\n');
    const line = lines[place.line]!;
    lines[place.line] = line.slice(0, place.start) + text + line.slice(place.end);
    texts[name] = lines.join('\n');
  }
  return texts;
}
