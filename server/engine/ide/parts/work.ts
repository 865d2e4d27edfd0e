/** The pieces of work, each with its figures under it. */
import { phrase } from '../../../../shared/phrase';
import type { PartKind } from '../../../../shared/protocol/parts';
import type { Place } from '../../../../shared/span';
import type { Work } from '../../brickwork/work';
import { headOrigin } from '../../findings/remark';
import { workFigures } from '../../views/job-view';
import { showTerm } from '../../views/show';
import type { Term } from '../../working/term';
import type { Job } from '../../workspace/job';
import { figurePart, groupPart, heard, type JobPart, originOf, placeOf } from './part';
import { Steady } from './steady';

/** What a heading shows beside the money: the first of these amounts that the work has, and its hours. */
const AMOUNTS = ['bricks', 'short', 'area', 'joints', 'length'];

/** Figures of a piece of work that its children begin with; the others follow as they come. */
const FIRST = ['bricks', 'mortar', 'hours'];

/** More pieces of work are counted and not listed: nobody reads a tree of thousands while typing. */
const MOST_WORKS = 250;

export function workParts(job: Job): JobPart[] {
  const { length } = job.works;
  const ids = new Steady('work');
  const listed = job.works
    .slice(0, MOST_WORKS)
    .map((work) => workPart(work, ids.id(work.name), job));
  const more = length > MOST_WORKS ? [morePart(length - MOST_WORKS)] : [];
  const head = { id: 'work', kind: 'work', label: phrase`Work`, text: String(length) } as const;
  return groupPart(head, [...listed, ...more]);
}

function morePart(count: number): JobPart {
  const label = phrase`and ${count} more`;
  return { id: 'work/', kind: 'work', label, text: '', heard: label, children: [] };
}

/** @param own its id: a wall that was copied has the name of the first until it is given another */
function workPart(work: Work, own: string, job: Job): JobPart {
  // By its name a figure of the first would be told.
  const named = own === `work/${work.name}`;
  const figures = workFigures(work, job).map(({ key, term }) => ({
    key: key.slice(work.name.length + 1),
    id: key,
    term,
  }));
  const has = (key: string) => figures.find((f) => f.key === key && !f.term.value.isZero());
  const amount = AMOUNTS.map(has).find(Boolean);
  // Money first: in a narrow view the end is cut off.
  const shown = [figures.find((f) => f.key === 'price'), amount, has('hours')];
  const text = shown.flatMap((f) => (f ? [showTerm(f.term, job.env)] : [])).join(' · ');
  const incomplete = figures.some(({ term }) => term.gaps.length > 0);
  const label = work.title || work.name;
  return {
    id: own,
    kind: kindOf(work.kind),
    label,
    text: incomplete ? `${text} …` : text,
    heard: heard(label, text, incomplete),
    figure: named ? `${work.name}.price` : undefined,
    draws: work.name,
    at: headOrigin(work.block).block.headPlace,
    lacks: incomplete ? missing(figures) : undefined,
    children: inOrder(figures).map(({ key, id, term }) =>
      figurePart(
        {
          id: `${own}/${key}`,
          kind: 'figure',
          figure: named ? id : undefined,
          term,
          at: ownPlace(term, work),
        },
        job.env,
      ),
    ),
  };
}

/** A line of the block itself; what comes from a firm’s file or a library is told at the heading. */
function ownPlace(term: Term, { block }: Work): Place | undefined {
  const origin = originOf(term);
  return origin?.block === block ? placeOf(origin) : headOrigin(block).block.headPlace;
}

function kindOf(kind: string): PartKind {
  return kind === 'wall' || kind === 'pier' || kind === 'repair' ? kind : 'work';
}

function missing(
  figures: readonly { readonly term: { readonly gaps: readonly { what: string }[] } }[],
) {
  return [...new Set(figures.flatMap(({ term }) => term.gaps.map((gap) => gap.what)))].slice(0, 20);
}

function inOrder<T extends { readonly key: string }>(figures: readonly T[]): T[] {
  const rank = ({ key }: T) => (FIRST.includes(key) ? FIRST.indexOf(key) : FIRST.length);
  return [...figures].sort((a, b) => rank(a) - rank(b));
}
