/** What the file of a paper is called: which paper it is, and of which job. */
import { calledBy } from '../../documents/about-job';
import type { Paper } from '../../documents/paper/model';
import type { Job } from '../../engine/workspace/job';

/** Longer ones some file systems do not take, with a folder before them. */
const MOST = 80;

/**
 * `Quote 26-041`; of a job without a reference `Quote Orchard boundary wall`, else two quotes in a folder have one name.
 * @param file what the job’s file is called, for a job that says neither
 */
export function titleOf(paper: Paper, job: Job, file: string): string {
  const [title = ''] = paper.title.split(' · ');
  const heading = paper.parts.find((part) => part.part === 'heading' && part.level === 1);
  const numbered = heading?.part === 'heading' && title !== heading.text;
  return numbered ? title : [title, calledBy(job) || stemOf(file)].filter(Boolean).join(' ');
}

function stemOf(file: string): string {
  return file.replace(/^.*[\\/:]/, '').replace(/\.perp$/i, '');
}

/** What no file system minds; nothing that could lead into another folder. */
export function nameFrom(title: string): string {
  const plain = title.replace(/[\p{C}/\\:*?"<>|]+/gu, '-').replace(/\s+/g, ' ');
  // By characters: half of one is none.
  const short = [...plain].slice(0, MOST).join('');
  return short.replace(/^[\s.]+|[\s.]+$/g, '') || 'job';
}
