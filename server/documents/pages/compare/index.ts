/** Two revisions of a job beside each other, by what they mean, for the one who does it. */
import type { CautionChange, Comparison } from '../../../engine/compare';
import type { Job } from '../../../engine/workspace/job';
import { under } from '../../cells';
import { faceChanges } from '../../compared';
import { framed } from '../../framed';
import type { Paper, Part } from '../../paper/model';
import type { CompareWords, Words } from '../../words';
import { factParts } from './facts';
import { keptParts, moneyParts } from './money';
import { quantityParts, workParts } from './work';

export interface Labels {
  readonly left: string;
  readonly right: string;
}

export function comparePage(found: Comparison, labels: Labels, version: string): Paper {
  return framedOf(found.after, labels, version, (words) => partsOf(found, words));
}

/** Where nobody holds what was sent: what the record keeps of it beside what is now. */
export function keptPage(job: Job, labels: Labels, version: string): Paper {
  return framedOf(job, labels, version, (words) => keptParts(job, words));
}

function framedOf(
  job: Job,
  { left, right }: Labels,
  version: string,
  parts: (words: Words) => readonly Part[],
): Paper {
  return framed({
    job,
    letterhead: undefined,
    version,
    kind: 'compare',
    title: (words) => words.pages.compare.title,
    parts: (words) => [
      { part: 'words', text: words.pages.compare.fromTo(left, right) },
      ...parts(words),
    ],
    foot: (words) => words.pages.forFirm,
  });
}

function partsOf(found: Comparison, { pages: { compare: words } }: Words): Part[] {
  const { idle, nothing } = found;
  return [
    ...(nothing ? [{ part: 'words' as const, text: words.nothing, strong: true }] : []),
    ...workParts(found, words),
    ...factParts(found, words),
    ...quantityParts(found, words),
    ...moneyParts(found, words),
    ...listUnder(words.cautions, cautions(found, words)),
    ...listUnder(words.findings, findings(found, words)),
    ...listUnder(words.drawing, faces(found, words)),
    ...(idle ? [{ part: 'words' as const, text: words.idle(idle) }] : []),
  ];
}

function listUnder(title: string, items: readonly string[]): Part[] {
  if (!items.length) return [];
  return under(title, { part: 'list', items: items.map((text) => [text]) });
}

function cautions({ cautions: { new: fresh, gone } }: Comparison, words: CompareWords): string[] {
  const said = ({ caution: { title }, works }: CautionChange) => words.cautionAt(title, works);
  return [
    ...fresh.map((each) => words.isNew(said(each))),
    ...gone.map((each) => words.isGone(said(each))),
  ];
}

function findings({ findings: { new: fresh, gone } }: Comparison, words: CompareWords): string[] {
  return [
    ...fresh.map(({ message }) => words.isNew(message)),
    ...gone.map(({ message }) => words.isGone(message)),
  ];
}

/** That all of a piece of work is new, or gone, is told with the work. */
function faces(found: Comparison, words: CompareWords): string[] {
  const changed = faceChanges(found).filter(({ change }) => change === 'changed');
  return changed.map(({ title, face, placed }) =>
    words.pieces(title, face === 'back', placed.new, placed.gone, placed.same),
  );
}
