/** The site sheet: what whoever builds it needs on the scaffold. Drawings, gauge, mixes, cuts, order, cautions; no money. */
import type { Job } from '../../engine/workspace/job';
import { framed } from '../framed';
import { fromTerms } from '../from';
import type { Letterhead, Paper, Part } from '../paper/model';
import type { SiteWords } from '../words';
import { cautionParts } from './cautions';
import { mixParts } from './mixes';
import { orderParts } from './order';
import { workParts } from './work';

export function sitePaper(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  const rods = new Map<string, string>();
  return framed({
    job,
    letterhead,
    version,
    kind: 'site',
    title: (words) => words.site.title,
    parts: (words) => [
      ...gaps(job, words.site),
      ...cautionParts(job, words.site),
      ...job.works.flatMap((work) => workParts(work, job, words, rods)),
      ...mixParts(job, words.site),
      ...orderParts(job, words.site),
    ],
  });
}

/** What is still to be measured: it is measured where the sheet is read. */
function gaps({ price }: Job, words: SiteWords): Part[] {
  const missing = new Set(price.hours.gaps.map((gap) => gap.what));
  if (!missing.size) return [];
  const from = fromTerms(price.hours);
  return [{ part: 'warning', strong: words.notWhole, text: [...missing].join('; '), from }];
}
