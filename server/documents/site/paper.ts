/** The site sheet: what whoever builds it needs on the scaffold. Drawings, gauge, mixes, cuts, order, cautions; no money. */
import type { Job } from '../../engine/workspace/job';
import { jobFacts } from '../about-job';
import { languageOf } from '../letterhead';
import type { Letterhead, Paper, Part } from '../paper/model';
import { type SiteWords, wordsFor } from '../words';
import { cautionParts } from './cautions';
import { mixParts } from './mixes';
import { orderParts } from './order';
import { workParts } from './work';

export function sitePaper(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  const lang = languageOf(job);
  const words = wordsFor(lang);
  const about = jobFacts(job, words);
  const title = [words.site.title, about.ref].filter(Boolean).join(' ');
  const rods = new Map<string, string>();
  return {
    kind: 'site',
    lang,
    date: about.date,
    size: job.env.imperial ? 'Letter' : 'A4',
    title: [title, about.title].filter(Boolean).join(' · '),
    letterhead,
    parts: [
      { part: 'heading', level: 1, text: words.site.title, under: about.title },
      { part: 'facts', rows: about.rows },
      ...gaps(job, words.site),
      ...cautionParts(job, words.site),
      ...job.works.flatMap((work) => workParts(work, job, words, rods)),
      ...mixParts(job, words.site),
      ...orderParts(job, words.site),
    ],
    foot: words.quote.madeWith(version),
    running: [letterhead?.name, title].filter(Boolean).join(' · '),
  };
}

/** What is still to be measured: it is measured where the sheet is read. */
function gaps({ price }: Job, words: SiteWords): Part[] {
  const missing = new Set(price.hours.gaps.map((gap) => gap.what));
  if (!missing.size) return [];
  return [{ part: 'warning', strong: words.notWhole, text: [...missing].join('; ') }];
}
