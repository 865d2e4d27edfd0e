/** Facts of the files that a job uses, a firm’s or a country’s: those that are others now, and that count in this job. */
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { Counting } from './counting';
import type { FactChange } from './facts';
import { changesIn, headOf, type LineChange } from './lines';
import { type SaidLine, saidBlock } from './said';

export interface UsedChanges {
  readonly facts: readonly FactChange[];
  /** How many facts are others and do not count in this job: bricks that it does not lay. */
  readonly idle: number;
}

export function usedFacts(before: Job, after: Job): UsedChanges {
  const [old, now] = [blocksOf(before), blocksOf(after)];
  const ids = [...new Set([...now.keys(), ...old.keys()])];
  const others = ids.filter((id) => !sameText(old.get(id) ?? [], now.get(id) ?? []));
  if (!others.length) return { facts: [], idle: 0 };
  const counts = new Counting(before, after);
  const found = others.map((id) => factsOf(old.get(id) ?? [], now.get(id) ?? [], counts));
  return {
    facts: found.flatMap((each) => each.fact ?? []),
    idle: found.reduce((sum, each) => sum + each.idle, 0),
  };
}

/** By kind and name; of one thing the nearest file’s first, as they are asked. */
function blocksOf(job: Job): Map<string, SourceBlock[]> {
  const found = new Map<string, SourceBlock[]>();
  for (const block of job.scope.files.slice(1).flatMap((file) => file.blocks)) {
    if (!block.kind || NOT_FACTS.has(block.kind)) continue;
    const id = idOf(block);
    const list = found.get(id);
    if (list) list.push(block);
    else found.set(id, [block]);
  }
  return found;
}

const NOT_FACTS: ReadonlySet<string> = new Set([
  'perpend',
  'template',
  'use',
  'job',
  'option',
  'record',
]);

const idOf = ({ kind, name }: SourceBlock) => `${kind} ${name ?? ''}`;

function sameText(a: readonly SourceBlock[], b: readonly SourceBlock[]): boolean {
  return a.length === b.length && a.every((block, i) => sameLines(block.lines, b[i]!.lines));
}

function sameLines(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((line, i) => line === b[i]);
}

function factsOf(old: readonly SourceBlock[], now: readonly SourceBlock[], counts: Counting) {
  const [before, after] = [merged(old), merged(now)];
  const all = linesOf(before, after).filter((line) => !counts.saidByJob(line, old, now));
  const lines = all.filter((line) => counts.counts(line, (now[0] ?? old[0])!));
  const idle = all.length - lines.length;
  if (!lines.length) return { idle };
  const head = headOf((after ?? before)!);
  const change = before && after ? 'changed' : after ? 'new' : 'gone';
  const fact: FactChange = { change, head, before, after, lines, used: true };
  return { fact, idle };
}

/** All that the files say of one thing: of a word that two of them say the nearest is believed. */
function merged(blocks: readonly SourceBlock[]): SaidLine | undefined {
  const said = blocks.flatMap((block) => saidBlock(block) ?? []);
  const [first, ...others] = said;
  if (!first) return undefined;
  const body = [...first.body];
  const known = new Set(body.map((line) => line.key));
  for (const other of others) {
    const fresh = other.body.filter((line) => !known.has(line.key));
    for (const line of fresh) {
      body.push(line);
      known.add(line.key);
    }
  }
  const meansAll = [first.means, ...body.map((line) => line.meansAll)].join('\n');
  return { ...first, body, meansAll };
}

/** Of a thing that is new or gone: each of its lines. */
function linesOf(before: SaidLine | undefined, after: SaidLine | undefined): LineChange[] {
  if (before && after) return changesIn(before, after);
  if (after) return wholly(after, (line) => ({ change: 'new', under: [], after: line }));
  return before ? wholly(before, (line) => ({ change: 'gone', under: [], before: line })) : [];
}

function wholly(block: SaidLine, change: (line: SaidLine) => LineChange): LineChange[] {
  return block.body.length ? block.body.map(change) : [change(block)];
}
