/** Pieces of work of two revisions: which is which, and what of each has changed. */
import type { Work } from '../brickwork/work';
import type { Job } from '../workspace/job';
import { type SourceBlock, WORK } from '../workspace/source';
import { changesIn, type LineChange } from './lines';
import { type Paired, pairedBy, pairedByLikeness, pairedOn } from './pair';
import { type SaidLine, saidBlock } from './said';

/** A piece of work as its job has it. */
export interface WorkIn {
  readonly kind: string;
  readonly name: string;
  readonly title: string;
  readonly said: SaidLine;
  readonly block: SourceBlock;
  /** What it works out to; nothing where it cannot be read at all. */
  readonly work?: Work;
}

/** One piece of work in both jobs, or in one of them. */
export interface WorkPair {
  readonly before?: WorkIn;
  readonly after?: WorkIn;
  /** Of a piece of work in both: which of its lines say something else. */
  readonly lines: readonly LineChange[];
}

/** In the order of the later job, then those that are gone. Matched by name, then by likeness of their lines. */
export function workPairs(before: Job, after: Job): WorkPair[] {
  const [old, now] = [workIn(before), workIn(after)];
  const named = pairedBy(old, now, (w) => w.name || undefined);
  const { pairs, gone, added } = pairedOn(named, alikeOf);
  const both = pairs.map(([a, b]): WorkPair => {
    return { before: a, after: b, lines: changesIn(a.said, b.said) };
  });
  const fresh = added.map((w): WorkPair => ({ after: w, lines: [] }));
  const place = new Map(now.map((w, i) => [w, i]));
  const stands = [...both, ...fresh].sort((a, b) => place.get(a.after!)! - place.get(b.after!)!);
  return [...stands, ...gone.map((w): WorkPair => ({ before: w, lines: [] }))];
}

function workIn(job: Job): WorkIn[] {
  return job.file.blocks.flatMap((block) => {
    const said = block.kind !== undefined && WORK.has(block.kind) ? saidBlock(block) : undefined;
    if (!said) return [];
    const work = job.workAt(block);
    const name = block.name ?? '';
    return [{ kind: block.kind!, name, title: work?.title || name, said, block, work }];
  });
}

/** Those that say the same in every line, then those that are most alike. */
function alikeOf(before: readonly WorkIn[], after: readonly WorkIn[]): Paired<WorkIn> {
  const same = pairedBy(before, after, sayingOf);
  return pairedOn(same, (a, b) => {
    const bags = new Map([...a, ...b].map((w) => [w, linesOf(w)]));
    const like = (p: WorkIn, q: WorkIn) =>
      p.kind === q.kind ? likeness(bags.get(p)!, bags.get(q)!) : 0;
    return pairedByLikeness(a, b, like, (w) => bags.get(w)!.length);
  });
}

/** All of it but its name; of one without a line its heading. */
function sayingOf(work: WorkIn): string {
  const lines = linesOf(work);
  return lines.length ? [work.kind, ...lines].join('\n') : work.said.means;
}

/** Every line below the heading, and its title: what is left of a piece of work without its name. */
function linesOf({ kind, title, name, said }: WorkIn): string[] {
  const titled = title && title !== name ? [`${kind} ${title}`] : [];
  return [...titled, ...said.body.flatMap((line) => below(line, ''))];
}

function below(line: SaidLine, above: string): string[] {
  const own = `${above}${line.means}`;
  return [own, ...line.body.flatMap((inner) => below(inner, `${own} / `))];
}

/** Twice the lines that both have, of the lines of both. */
function likeness(a: readonly string[], b: readonly string[]): number {
  if (!a.length || !b.length) return 0;
  const left = new Map<string, number>();
  for (const line of a) left.set(line, (left.get(line) ?? 0) + 1);
  let both = 0;
  for (const line of b) {
    const some = left.get(line) ?? 0;
    if (some > 0) both++;
    left.set(line, some - 1);
  }
  return (2 * both) / (a.length + b.length);
}

/** Whether the same pieces of work stand in another order. */
export function reordered(pairs: readonly WorkPair[]): boolean {
  const lines = pairs.flatMap(({ before, after }) =>
    before && after ? [before.block.firstLine] : [],
  );
  return lines.some((line, i) => i > 0 && line < lines[i - 1]!);
}
