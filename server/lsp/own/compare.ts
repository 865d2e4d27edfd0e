/** A job beside what it was: by meaning, and as two texts that an editor shows side by side. */

import { phrase } from '../../../shared/phrase';
import type { FileParams } from '../../../shared/protocol';
import { COMPARE, type Compared, type CompareParams, USED } from '../../../shared/protocol/compare';
import type { Refused } from '../../../shared/protocol/pages';
import { VERSION } from '../../../shared/version';
import { comparePage, keptPage } from '../../documents/pages/compare';
import { sideTexts } from '../../documents/pages/compare/sides';
import { inItsLanguage } from '../../documents/spoken';
import { compared, sinceSent } from '../../engine/compare';
import { lastOf } from '../beside';
import type { Parts } from '../parts';
import type { OpenFile, Session } from '../session';
import { onFile, onFileLong } from './asked';
import { beforeOf } from './before';
import { refused } from './exports';
import { pageOfPaper } from './pages';

export function registerCompare(parts: Parts): void {
  const { session } = parts;
  onFileLong<CompareParams, Compared | Refused>(parts, COMPARE, async (params, file) =>
    comparedWith(session(), file, params),
  );
  onFile<FileParams, readonly string[]>(parts, USED, (_, file) => {
    const used = session().job(file).scope.files.slice(1);
    return used.filter(({ shipped }) => !shipped).map(({ name }) => session().uriOf(name));
  });
}

function comparedWith(session: Session, file: OpenFile, { before }: CompareParams) {
  const found = beforeOf(session, file, before);
  if (typeof found === 'string') return refused(found);
  if ('kept' in found) return besideKept(session, file);
  const after = session.job(file);
  const labels = { left: found.label, right: lastOf(file.uri) ?? file.uri };
  const { took } = found;
  return inItsLanguage([after, found.job], (now, then) => {
    const both = compared(then!, now!);
    const page = pageOfPaper(comparePage(both, labels, VERSION));
    return { nothing: both.nothing, took, labels, ...sideTexts(both), page };
  });
}

/** No text holds what was sent: its price and its figures are all that there is. */
function besideKept(session: Session, file: OpenFile): Compared | Refused {
  const job = session.job(file);
  const since = sinceSent(job);
  if (!since) return refused(phrase`The record says of nothing that it was sent.`);
  const right = lastOf(file.uri) ?? file.uri;
  const labels = { left: phrase`${right}, sent ${since.date}`, right };
  const page = inItsLanguage([job], (own) => pageOfPaper(keptPage(own!, labels, VERSION)));
  const nothing = !since.figures.length && !since.total;
  return { nothing, labels, left: '', right: '', page };
}
