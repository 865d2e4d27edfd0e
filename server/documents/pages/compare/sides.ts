/**
 * Two jobs as two texts of lines that stand beside each other: what each piece of work takes and costs, what is bought, the
 * hours and the money. Made for an editor that shows two texts side by side and marks the lines that differ.
 */
import type { Comparison } from '../../../engine/compare';
import { workFigures } from '../../../engine/views/job-view';
import { missingOf, showTerm } from '../../../engine/views/show';
import type { Term } from '../../../engine/working/term';
import type { Job } from '../../../engine/workspace/job';
import { languageOf } from '../../letterhead';
import { type CompareWords, wordsFor } from '../../words';
import { stepLines } from '../price/step-table';

/** A line of both: what it is called, and what each side says; nothing where it has none. */
interface Pair {
  readonly label: string;
  readonly left?: string;
  readonly right?: string;
}

interface Section {
  readonly left?: string;
  readonly right?: string;
  readonly pairs: readonly Pair[];
}

export interface SideTexts {
  readonly left: string;
  readonly right: string;
}

/** Two texts whose lines stand beside each other, for an editor that shows what differs. */
export function sideTexts(found: Comparison): SideTexts {
  const { compare, price } = wordsFor(languageOf(found.after)).pages;
  const sections = [
    ...found.pairs.map((pair) => workSection(pair, found)),
    buying(found, compare),
    hours(found, compare),
    money(found, compare, price),
    missing(found, compare),
  ].filter(({ pairs }) => pairs.length);
  const width = Math.max(0, ...sections.flatMap(({ pairs }) => pairs.map((p) => p.label.length)));
  return { left: textOf(sections, 'left', width), right: textOf(sections, 'right', width) };
}

/** Sections that a side does not have are left out of it: the editor shows the gap. */
function textOf(sections: readonly Section[], side: 'left' | 'right', width: number): string {
  const blocks = sections.flatMap((section) => {
    const head = section[side];
    const lines = section.pairs.flatMap((pair) => {
      const said = pair[side];
      return said === undefined ? [] : [`  ${pair.label.padEnd(width)}  ${said}`.trimEnd()];
    });
    return head === undefined || !lines.length ? [] : [[head, ...lines].join('\n')];
  });
  return blocks.length ? `${blocks.join('\n\n')}\n` : '';
}

function workSection({ before, after }: Comparison['pairs'][number], found: Comparison): Section {
  const figures = (piece: typeof before, job: Job) =>
    piece?.work ? workFigures(piece.work, job) : [];
  const bare = (key: string) => key.slice(key.indexOf('.') + 1);
  const of = (piece: typeof before, job: Job) =>
    figures(piece, job).map(({ key, term }) => ({ key: bare(key), label: term.label, term }));
  const head = (piece: typeof before) => piece && headOf(piece);
  return {
    left: head(before),
    right: head(after),
    pairs: paired(of(before, found.before), of(after, found.after), found),
  };
}

function headOf({ kind, name, title }: NonNullable<Comparison['pairs'][number]['after']>): string {
  return [kind, name, title !== name && `“${title}”`].filter(Boolean).join(' ');
}

interface Keyed {
  readonly key: string;
  readonly label: string;
  readonly term: Term;
}

/** In the order of the later one, then those that are gone. */
function paired(left: readonly Keyed[], right: readonly Keyed[], found: Comparison): Pair[] {
  const old = new Map(left.map((each) => [each.key, each]));
  const now = new Map(right.map((each) => [each.key, each]));
  const keys = new Set([...now.keys(), ...old.keys()]);
  return [...keys].map((key) => {
    const [was, is] = [old.get(key), now.get(key)];
    return {
      label: (is ?? was)!.label,
      left: was && amountText(was.term, found.before),
      right: is && amountText(is.term, found.after),
    };
  });
}

/** What is not known at all is a question mark. */
function amountText(term: Term, { env }: Job): string {
  if (!term.gaps.length) return showTerm(term, env);
  return term.value.isZero() ? '?' : `${showTerm(term, env)} …`;
}

function both(title: string, pairs: readonly Pair[]): Section {
  return { left: title, right: title, pairs };
}

function buying(found: Comparison, { sides }: CompareWords): Section {
  const of = ({ price }: Job) =>
    price.purchases.map(({ kind, name, title, bought }) => {
      return { key: `${kind} ${name}`, label: title, term: bought };
    });
  return both(sides.buy, paired(of(found.before), of(found.after), found));
}

function hours(found: Comparison, { sides }: CompareWords): Section {
  const of = ({ price }: Job) =>
    [price.hours, price.days].map((term) => ({ key: term.unit, label: term.label, term }));
  const own = (job: Job) => (job.isJob ? of(job) : []);
  return both(sides.hours, paired(own(found.before), own(found.after), found));
}

function money(
  found: Comparison,
  { sides }: CompareWords,
  words: Parameters<typeof stepLines>[1],
): Section {
  const of = (job: Job) => (job.isJob ? stepLines(job, words) : []);
  return both(sides.price, paired(of(found.before), of(found.after), found));
}

function missing({ before, after }: Comparison, { sides }: CompareWords): Section {
  const [left, right] = [before, after].map((job) => (job.isJob ? missingOf(job.price.total) : []));
  const all = [...new Set([...right!, ...left!])];
  const on = (side: readonly string[], text: string) => (side.includes(text) ? '' : undefined);
  return both(
    sides.missing,
    all.map((text) => ({ label: text, left: on(left!, text), right: on(right!, text) })),
  );
}
