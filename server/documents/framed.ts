/** What papers about a job have alike: whose they are, of which job, and the lines round what they say. */
import type { Job } from '../engine/workspace/job';
import { jobFacts } from './about-job';
import { languageOf } from './letterhead';
import type { Letterhead, Paper, PaperKind, Part } from './paper/model';
import { type Words, wordsFor } from './words';

interface Framed {
  readonly job: Job;
  readonly letterhead: Letterhead | undefined;
  /** Of the tool, for the small print. */
  readonly version: string;
  readonly kind: PaperKind;
  title(words: Words): string;
  /** Under what the job says of itself. */
  parts(words: Words): readonly Part[];
  /** Before who made it. */
  foot?(words: Words): string;
}

export function framed({ job, letterhead, version, kind, ...of }: Framed): Paper {
  const lang = languageOf(job);
  const words = wordsFor(lang);
  const about = jobFacts(job, words);
  const name = of.title(words);
  const title = [name, about.ref].filter(Boolean).join(' ');
  return {
    kind,
    lang,
    date: about.date,
    size: job.env.imperial ? 'Letter' : 'A4',
    title: [title, about.title].filter(Boolean).join(' · '),
    letterhead,
    parts: [
      { part: 'heading', level: 1, text: name, under: about.title, from: about.from },
      { part: 'facts', rows: about.rows },
      ...of.parts(words),
    ],
    foot: [of.foot?.(words), words.quote.madeWith(version)].filter(Boolean).join(' '),
    running: [letterhead?.name, title].filter(Boolean).join(' · '),
  };
}
