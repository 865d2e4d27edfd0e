/** Where what stands on a paper comes from: made when a preview asks for it, and written into no file. */
import { type BlockFacts, factsOf, type LineFacts } from '../engine/resolve/env';
import { linesBehind } from '../engine/views/depends';
import type { Origin, Term } from '../engine/working/term';
import type { Job } from '../engine/workspace/job';
import type { SourceBlock } from '../engine/workspace/source';
import type { From } from './paper/model';

/** Of a figure, or of several that stand together: the first of them leads. */
export function fromTerms(...terms: readonly (Term | undefined)[]): From {
  return () => terms.flatMap((term) => (term ? linesBehind(term) : []));
}

export function fromOrigins(...origins: readonly (Origin | undefined)[]): From {
  return () => origins.flatMap((of) => (of ? of.block.place(of.span) : []));
}

/** The heading of a block. */
export function fromBlock(...blocks: readonly (SourceBlock | undefined)[]): From {
  return () => blocks.flatMap((block) => block?.headPlace ?? []);
}

/** Lines as they were read: all of them, those that there are. */
export function fromLines(...lines: readonly (LineFacts | undefined)[]): From {
  return fromOrigins(...lines.map((line) => line?.origin));
}

/** One after the other. */
export function fromAll(...all: readonly (From | undefined)[]): From {
  return () => all.flatMap((from) => from?.() ?? []);
}

/** The job’s own block. */
export function ownFacts(job: Job): BlockFacts | undefined {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  return block && factsOf(block, job.env);
}

/** Lines of a word in it. */
export function fromOwn(job: Job, key: string): From {
  return () => fromLines(...(ownFacts(job)?.lines(key) ?? []))();
}
