/** Lines that a piece of work cannot do without, where they are not there yet. */
import { lineOf } from '../../../../grammar/lines';
import { listed } from '../../../../grammar/read/numbers';
import { phrase } from '../../../../shared/phrase';
import type { Action } from '../types';
import { type At, atEnd, change, plainly } from './at';

const NEEDED: Readonly<Record<string, readonly string[]>> = {
  wall: ['length', 'height'],
  pier: ['size', 'height'],
  opening: ['from', 'width'],
};

/** Offered at the heading. A `?` where nothing can be filled in: then they are asked for by `perpend measure`. */
export function addMissing(at: At): Action[] {
  const { line, fills, spot } = at;
  const inWall = spot.parents.length > 0;
  const needed = inWall && line.kind.key === 'pier' ? ['at', 'size'] : NEEDED[line.kind.key];
  const there = new Set(spot.block.read.syntax.lines.map((l) => l.key?.text));
  const own = new Set(line.body.map((l) => l.kind.key));
  const missing = (needed ?? []).filter((key) => !own.has(key) && (inWall || !there.has(key)));
  if (!missing.length) return [];
  const indent = ' '.repeat(line.syntax.indent + 2);
  const texts = missing.map(
    (key, i) => `\n${indent}${key}  ${fills ? filled(line.kind, key, i + 1) : '?'}`,
  );
  const title = phrase`Add ${listed(missing, 'and')}`;
  const edit = atEnd(at, line.syntax.span.line, texts.join(''));
  return [{ ...change('refactor.rewrite', title, [edit]), ...(fills && { fills }) }];
}

/** As the table’s own example has it. */
function filled(parent: At['line']['kind'], key: string, place: number): string {
  const example = lineOf(parent, key)?.example ?? '';
  return `\${${place}:${plainly(example.slice(key.length).trim())}}`;
}
