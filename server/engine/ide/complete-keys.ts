/** Words that open a line: headings in the first column, and the lines that fit under a heading and are not there yet. */

import { HEADINGS, type LineKind } from '../../../grammar/lines';
import type { ReadLine } from '../../../grammar/read/values';
import { spoken } from '../../../shared/phrase';
import type { Job } from '../workspace/job';
import { blockItem } from './complete-blocks';
import type { Home } from './enclosing';
import { explainKey } from './hover-key';
import type { Completion } from './types';

/** Each heading as a bare word, and as a block to fill in. One that stands in the file once is left out. */
export function headings(job: Job): Completion[] {
  const there = new Set(job.file.blocks.map((b) => b.kind));
  const open = HEADINGS.filter((kind) => kind.many || !there.has(kind.key));
  return open.flatMap((kind) => {
    const word = heading(kind, job);
    return kind.body ? [word, blockItem(kind, undefined, job)] : [word];
  });
}

function heading(kind: LineKind, job: Job): Completion {
  const more = kind.takes.length > 0;
  return {
    label: kind.key,
    kind: 'heading',
    detail: spoken(kind.means),
    explains: () => explainKey(kind, job),
    insert: more ? `${kind.key} ` : kind.key,
    more,
  };
}

export function keysUnder(home: Home, job: Job): Completion[] {
  const parent = home.parents.at(-1)!;
  const said = new Set(others(parent, home.line).map((line) => line.kind));
  const fitting = (parent.kind.body ?? []).filter((kind) => kind.many || !said.has(kind));
  const column = valueColumn(parent, home.line);
  return fitting.flatMap((kind) => {
    if (kind.open) return [];
    const key = keyItem(kind, column, job);
    return kind.body && !kind.inColumn ? [key, blockItem(kind, home.block, job)] : [key];
  });
}

function others(parent: ReadLine, line: number): readonly ReadLine[] {
  return parent.body.filter((l) => l.syntax.span.line !== line);
}

function keyItem(kind: LineKind, column: number, job: Job): Completion {
  const room = kind.body && !kind.inColumn ? 1 : Math.max(1, column - kind.key.length);
  return {
    label: kind.key,
    kind: 'key',
    detail: kind.example,
    explains: () => explainKey(kind, job),
    insert: kind.takes.length ? kind.key + ' '.repeat(room) : kind.key,
    more: kind.takes.length > 0,
  };
}

/** Where the values of the other lines begin, counted from their words: so that a new one lines up. */
function valueColumn(parent: ReadLine, line: number): number {
  const columns = others(parent, line).flatMap(({ kind, syntax }) => {
    const first = syntax.items[0];
    return first && syntax.key && (!kind.body || kind.inColumn)
      ? [first.span.start - syntax.key.span.start]
      : [];
  });
  return columns.length ? Math.max(...columns) : 0;
}
