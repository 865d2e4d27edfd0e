/** What can be shown of a job: drawings of a piece of work, papers, pages. */
import { phrase } from '../../../shared/phrase';
import { type Choice, DRAWINGS, FRONT } from '../../../shared/protocol/preview';
import type { Work } from '../../engine/brickwork/work';
import type { Job } from '../../engine/workspace/job';
import { KINDS, pagesOf } from '../pages';
import type { View } from '../work-sheets';

/** In the language that is spoken now. */
export function viewWords(): Readonly<Record<View, string>> {
  return {
    front: phrase`Front`,
    back: phrase`Back`,
    plan: phrase`Plan`,
    top: phrase`From above`,
    rod: phrase`Gauge rod`,
  };
}

/** Drawings that there are of the work, and papers. What is shown is always among them. */
export function choicesFor(work: Work | undefined, job: Job, show: string): Choice[] {
  const words = viewWords();
  const group = phrase`Drawings`;
  const drawings = DRAWINGS.filter(
    (view) => view === FRONT || view === show || (work && hasView(work, view)),
  );
  return [...drawings.map((id) => ({ id, label: words[id], group })), ...papersOf(job, show)];
}

/** Those that go to somebody, and pages for the firm. One that there is none of stays while it is shown. */
function papersOf(job: Job, show: string): Choice[] {
  const groups = { client: phrase`Papers`, site: phrase`Papers`, firm: phrase`Pages` };
  const there = pagesOf(job).filter(({ kind, why }) => kind === show || why === undefined);
  return KINDS.flatMap(({ kind, reader, title }) =>
    there.some((item) => item.kind === kind)
      ? [{ id: kind, label: title(), group: groups[reader] }]
      : [],
  );
}

/** Without drawing it: this is asked at every edit. */
function hasView({ facts }: Work, view: View): boolean {
  const { settingOut, pier, rebuilt, tops, carved, laid } = facts;
  switch (view) {
    case 'front':
      return true;
    case 'back':
      return settingOut !== undefined;
    case 'plan':
      return Boolean(settingOut ?? laid ?? carved ?? pier?.placed ?? rebuilt?.settingOut);
    case 'top':
      return Boolean(tops?.length);
    case 'rod':
      return Boolean(settingOut ?? pier);
  }
}
