/** What to take care of on site: each caution once, why it stands here, what to do, and whose word counts. */
import type { CautionView } from '../../../shared/views';
import { cautionViews } from '../../engine/views/caution-view';
import type { Job } from '../../engine/workspace/job';
import type { Part } from '../paper/model';
import type { SiteWords } from '../words';

export function cautionParts(job: Job, words: SiteWords): Part[] {
  const all = cautionViews(job);
  if (!all.length) return [];
  return [
    { part: 'heading', level: 2, text: words.cautions },
    ...all.map((caution) => oneCaution(caution, words)),
  ];
}

function oneCaution({ title, here, say, ask, source }: CautionView, words: SiteWords): Part {
  const why = here.map((each) => [each.title || each.name, each.why.join('; ')]);
  const small = [
    [words.here, why.map((each) => each.filter(Boolean).join(': ')).join('. ')],
    [words.ask, ask.join(' ')],
    [words.source, source.map((each) => words.sourced(each)).join('; ')],
  ];
  const under = small
    .filter(([, text]) => text)
    .map(([label, text]) => words.labelled(label!, text!));
  const parts: Part[] = [
    { part: 'heading', level: 3, text: title, from: () => here.flatMap(({ places }) => places) },
    { part: 'list', items: say.map((each) => [each]) },
    { part: 'words', text: under.join(' '), small: true },
  ];
  return { part: 'together', parts };
}
