/**
 * Lines over headings: of a piece of work its part of the price, its hours and what is missing; of the job the price and what
 * it earns an hour. Where they stand is told at once and hangs on the headings alone; what they say is asked for those in sight.
 */
import { phrase } from '../../../shared/phrase';
import { missingOf, showTerm } from '../views/show';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import { type SourceBlock, type SourceFile, WORK } from '../workspace/source';

/** Figures that are told; ways to go on: to the drawing, to how the figures came about. */
export const LENS_KINDS = ['figures', 'drawing', 'working'] as const;
export type LensKind = (typeof LENS_KINDS)[number];

export interface Lens {
  /** Of the heading. */
  readonly line: number;
  readonly kind: LensKind;
}

export interface LensText {
  readonly title: string;
  /** The figure whose working it leads to. */
  readonly figure?: string;
}

/** In the order of the text; a heading that cannot be read for the moment keeps its own, so that no line moves. */
export function lensesOf(file: SourceFile, wanted: ReadonlySet<LensKind>): Lens[] {
  if (!file.blocks.some((block) => WORK.has(wordOf(block)))) return [];
  return file.blocks.flatMap((block) => {
    const kinds = kindsOver(block).filter((kind) => wanted.has(kind));
    const line = block.firstLine + (block.read.syntax.heading?.span.line ?? 0);
    return kinds.map((kind) => ({ line, kind }));
  });
}

function kindsOver(block: SourceBlock): readonly LensKind[] {
  const word = wordOf(block);
  if (word === 'job') return ['figures', 'working'];
  return WORK.has(word) ? LENS_KINDS : [];
}

function wordOf(block: SourceBlock): string {
  return block.read.syntax.heading?.key?.text ?? '';
}

/** What one says. Never nothing: it keeps its room while its heading cannot be read. */
export function lensText(job: Job, { line, kind }: Lens): LensText {
  const block = job.file.blocks[job.file.blockAt(line)];
  if (kind === 'drawing') return { title: phrase`Drawing` };
  const home = block ? job.homeOf(block) : job;
  const work = home.workAt(block);
  if (block?.kind === 'job') return kind === 'figures' ? jobFigures(job) : jobWorking();
  if (!work?.name) return { title: kind === 'figures' ? '…' : phrase`Working` };
  const figure = `${work.name}.price`;
  if (kind === 'working') return { title: phrase`Working`, figure };
  const { price } = home.shareOf(work);
  const hours = work.figures.find((each) => each.key === 'hours')?.term;
  const said = [phrase`${showTerm(price, home.env)} of the price`, ...shownOf(hours, home)];
  return {
    title: withMissing(said.join(' · '), openOf([...work.figures.map((f) => f.term)])),
    figure,
  };
}

function jobWorking(): LensText {
  return { title: phrase`Working`, figure: 'job.price' };
}

function jobFigures(job: Job): LensText {
  const { total, tax, taxName, earns } = job.price;
  const price = showTerm(total, job.env);
  const incl = tax.value.isZero() ? price : phrase`${price} incl. ${taxName}`;
  const earned = earns ? [phrase`earns ${showTerm(earns, job.env)} an hour`] : [];
  return {
    title: withMissing([incl, ...earned].join(' · '), missingOf(total)),
    figure: 'job.price',
  };
}

function shownOf(term: Term | undefined, { env }: Job): string[] {
  return term && !term.value.isZero() ? [showTerm(term, env)] : [];
}

function openOf(terms: readonly Term[]): string[] {
  return [...new Set(terms.flatMap((term) => term.gaps.map((gap) => gap.what)))];
}

/** More would run out of the line; the working tells all of it. */
const MOST_MISSING = 2;

function withMissing(text: string, missing: readonly string[]): string {
  if (!missing.length) return text;
  const some = missing.slice(0, MOST_MISSING).join('; ');
  const more = missing.length - MOST_MISSING;
  const all = more > 0 ? phrase`${some}; and ${more} more` : some;
  return phrase`${text} · not complete: ${all}`;
}
