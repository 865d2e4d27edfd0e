/** What names stand for: behind a line, of the name it gives; at a heading, of what is taken without being said. */
import type { NamedKind } from '../../../../grammar/lines/slots';
import { phrase } from '../../../../shared/phrase';
import { wordOf } from '../../resolve/book';
import { factsNamed } from '../../resolve/env';
import type { Job } from '../../workspace/job';
import { type SourceBlock, WORK } from '../../workspace/source';
import { squeezed } from '../markdown';
import { atEnd, behind, type MadeHint, type MadePart } from './made';

/** What tells a reader most of each: the lines of it that are shown. */
const TOLD: Readonly<Partial<Record<NamedKind, readonly string[]>>> = {
  brick: ['size', 'price'],
  mix: ['parts'],
};

export function nameHints(block: SourceBlock, job: Job): MadeHint[] {
  if (!WORK.has(block.kind ?? '')) return [];
  return block.read.heading!.body.flatMap((line): MadeHint[] => {
    const kind = line.kind.key as NamedKind;
    if (!Object.hasOwn(TOLD, kind)) return [];
    const parts = standsFor(kind, wordOf(line.values[kind]), job);
    return parts.length ? [{ ...behind(line), kind: 'name', parts }] : [];
  });
}

function standsFor(kind: NamedKind, name: string, job: Job): MadePart[] {
  const facts = factsNamed(job.env, kind, name);
  return (TOLD[kind] ?? []).flatMap((key): MadePart[] => {
    const said = facts?.line(key);
    if (!said) return [];
    const text = squeezed(said.block.lines[said.line.syntax.span.line]!).slice(key.length + 1);
    return [{ text, from: { block: said.block, line: said.line } }];
  });
}

/** Lines that a piece of work may leave out, and that decide how it looks and what it costs. */
const TAKEN: Readonly<Record<string, readonly string[]>> = {
  wall: ['brick', 'bond', 'thick', 'mix'],
  pier: ['brick', 'mix'],
  repair: ['brick', 'mix'],
};

export function takenHints(block: SourceBlock, job: Job): MadeHint[] {
  const heading = block.read.heading!;
  const keys = TAKEN[block.kind ?? ''];
  if (!keys || !heading.values.name) return [];
  const said = new Set(heading.body.map((line) => line.kind.key));
  const parts = keys.filter((key) => !said.has(key)).flatMap((key) => takenPart(key, job));
  const [first, ...rest] = parts;
  if (!first) return [];
  const all = [{ ...first, text: phrase`taken: ${first.text}` }, ...rest];
  return [{ ...atEnd(block, heading), kind: 'taken', parts: all }];
}

function takenPart(key: string, job: Job): MadePart[] {
  const setting = job.book.setting('defaults', key);
  if (!setting) return [];
  const { block, line } = setting;
  return [{ text: squeezed(block.lines[line.syntax.span.line]!), from: { block, line } }];
}
