/** A paper or a page of the job as a preview shows it: as it would go out now, with the lines that it comes from. */
import { escaped } from '../../../shared/escaped';
import type { PageKind } from '../../../shared/protocol/pages';
import type { PaperShown } from '../../../shared/protocol/preview';
import type { Job } from '../../engine/workspace/job';
import { pageOf } from '../pages';
import type { Picture } from '../paper';
import { shownIn } from '../paper/html';
import type { Paper } from '../paper/model';
import type { Lines } from './lines';
import { markedBy } from './marks';
import { pictureOf } from './sheets';

/** What a paper has that is not in its job: the version of the tool, for the small print, and the firm’s logo. */
export interface Around {
  readonly version: string;
  readonly logo?: Omit<Picture, 'words'>;
  /** Why there is none. */
  readonly logoAsides?: readonly string[];
}

/** @returns a sentence where there is no such paper of the job */
export function paperOf(
  kind: PageKind,
  job: Job,
  lines: Lines,
  { version, logo, logoAsides = [] }: Around,
): (PaperShown & { readonly title: string }) | string {
  const made = pageOf(job, kind, { version, logo });
  if (typeof made === 'string') return made;
  const { paper } = made;
  const asides = [...made.asides, ...(paper.letterhead ? logoAsides : [])];
  return { title: paper.title, asides, ...shown(paper, job, lines) };
}

/** Drawings are told as drawings are, in the colours of the editor; in the HTML stands where they go. */
function shown(paper: Paper, job: Job, lines: Lines): Omit<PaperShown, 'asides'> {
  const pictures: PaperShown['pictures'][number][] = [];
  const marked = markedBy(job, lines);
  const html = shownIn(
    paper,
    (sheet, words) => {
      pictures.push(pictureOf(sheet));
      const from = marked(undefined, 'drawing');
      const at = `data-picture="${pictures.length - 1}"${from && ` ${from}`}`;
      return `<figure ${at} aria-label="${escaped(words)}"></figure>`;
    },
    marked,
  );
  return { lang: paper.lang, html, pictures };
}
