/** A line that all pieces of work of a file say alike, said once for all of them. */
import { headingNamed, lineOf } from '../../../../grammar/lines';
import { phrase } from '../../../../shared/phrase';
import { type SourceBlock, WORK } from '../../workspace/source';
import { editsBetween } from '../mend/edited';
import type { Action } from '../types';
import type { At } from './at';

export function intoDefaults({ job, spot, line }: At): Action[] {
  const { key } = line.kind;
  if (spot.parents.length !== 1 || !WORK.has(spot.block.kind ?? '')) return [];
  if (line.kind.unless !== `the defaults’ ${key}` || !lineOf(headingNamed('defaults')!, key))
    return [];
  const work = job.file.blocks.filter((b) => b.kind && WORK.has(b.kind));
  const text = textOf(spot.block, spot.line);
  const alike = work.map((block) => ({ block, at: linesSaying(block, key) }));
  const same = alike.filter(({ block, at }) => at.length === 1 && textOf(block, at[0]!) === text);
  // Whoever says nothing takes what the defaults have: then it would be laid otherwise.
  if (same.length < 2 || alike.some(({ at }) => !at.length) || saidInDefaults(job.file.blocks, key))
    return [];
  const gone = new Set(same.map(({ block, at }) => block.firstLine + at[0]!));
  const title = phrase`Say “${text}” once for all work of this file`;
  const later = () => editsBetween(job.file.lines, moved(job, gone, text));
  return [{ kind: 'refactor.extract', title, preferred: false, edits: [], later }];
}

/** Without its indent and remark; words parted by one blank. */
function textOf(block: SourceBlock, line: number): string {
  return block.lines[line]!.replace(/#.*$/, '').trim().replace(/\s+/g, ' ');
}

function linesSaying(block: SourceBlock, key: string): number[] {
  const body = block.read.heading?.body ?? [];
  return body.filter((l) => l.kind.key === key).map((l) => l.syntax.span.line);
}

function saidInDefaults(blocks: readonly SourceBlock[], key: string): boolean {
  return blocks.some((b) => b.kind === 'defaults' && linesSaying(b, key).length > 0);
}

function moved({ file }: At['job'], gone: ReadonlySet<number>, text: string): string[] {
  const own = file.blocks.find((b) => b.kind === 'defaults');
  const first = file.blocks.find((b) => b.kind && WORK.has(b.kind))!;
  const before = own ? own.firstLine + 1 : headLine(first);
  const said = own ? [`  ${text}`] : ['defaults', `  ${text}`, ''];
  return file.lines.flatMap((line, i) => [
    ...(i === before ? said : []),
    ...(gone.has(i) ? [] : [line]),
  ]);
}

/** Remarks above a heading belong to it: what comes before it comes before them. */
function headLine(block: SourceBlock): number {
  return block.firstLine;
}
