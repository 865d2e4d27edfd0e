/** What a job does not know yet, and what hangs on it: the list to take to the site. */
import type { Place } from '../../../shared/span';
import { toFindOut } from '../../engine/views/find-out';
import { rangePlace, rangeText, unmeasuredIn } from '../../engine/views/measure';
import { showTerm } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { rowOf, tableOf, tableUnder, under } from '../cells';
import { framed } from '../framed';
import { fromTerms } from '../from';
import type { Letterhead, Paper, Part, Row } from '../paper/model';
import type { MeasureWords } from '../words';
import { percentAlike } from './price';

/** More figures that wait for one measure are not told one by one. */
const MOST_WAITING = 4;
/** In percent; less is the rounding of the shares. */
const WORTH_TELLING = 5;

export function measurePage(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  return framed({
    job,
    letterhead,
    version,
    kind: 'measure',
    title: (words) => words.pages.measure.title,
    parts(words) {
      const { measure } = words.pages;
      const parts = [...open(job, measure), ...findOut(job, measure), ...ranges(job, measure)];
      return parts.length ? parts : [{ part: 'words', text: measure.nothing }];
    },
    foot: (words) => words.pages.forFirm,
  });
}

function open(job: Job, words: MeasureWords): Part[] {
  const rows = unmeasuredIn(job).map(({ block, span, text, waiting }) =>
    rowAt(block.place(span), (where) => [text, where, waitingText(waiting, words)]),
  );
  const table = tableOf('to-measure', [words.line, words.where, words.waits], rows, []);
  return tableUnder(words.open, table);
}

function findOut(job: Job, words: MeasureWords): Part[] {
  const heads = [words.what, words.of, words.where, words.saidBy];
  const rows = toFindOut(job).map(({ what, line, works, place }) =>
    rowAt(place, (where) => [what, waitingText(works, words), where, line ?? '']),
  );
  return tableUnder(words.findOut, tableOf('to-find-out', heads, rows, []));
}

function ranges({ spread, env, price }: Job, words: MeasureWords): Part[] {
  if (!spread) return [];
  const shares = spread.ranges.map(({ share }) => Math.round(share * 100));
  const rows = spread.ranges.map((range, i) =>
    rowAt(rangePlace(range), (where) => [rangeText(range), where, `${shares[i]}%`]),
  );
  // As they are shown, so that a reader who adds them up finds the rest.
  const rest = 100 - shares.reduce((sum, share) => sum + share, 0);
  const [likely, low, high] = [price.total, spread.low, spread.high].map((t) => showTerm(t, env));
  const said = [
    ...(rest >= WORTH_TELLING ? [words.rest(`${rest}%`)] : []),
    words.priced(likely!, percentAlike(env), low!, high!),
  ];
  return under(
    words.ranges,
    tableOf('ranges', [words.range, words.where, words.share], rows, [2]),
    ...said.map((text): Part => ({ part: 'words', text, from: fromTerms(price.total) })),
  );
}

/** A row of the line that stands there. */
function rowAt(place: Place, texts: (where: string) => readonly [string, ...string[]]): Row {
  return { ...rowOf(...texts(placeText(place))), from: () => [place] };
}

function waitingText(ids: readonly string[], words: MeasureWords): string {
  return words.waiting(ids.slice(0, MOST_WAITING), ids.length - MOST_WAITING);
}

/** The file’s own name and the line, counted from 1: where it lies is nothing for a page. */
function placeText({ file, line }: Place): string {
  return `${file.split(/[\\/]/).at(-1)}:${line + 1}`;
}
