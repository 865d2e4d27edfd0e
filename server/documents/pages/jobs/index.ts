/** A firm’s jobs together: how they stand, what is out, in hand, invoiced, owed, and turned over by the quarter. */
import type { Overview } from '../../../engine/firm/overview';
import type { Paper, Part } from '../../paper/model';
import { wordsFor } from '../../words';
import { jobsIn, owed, standing } from './lists';
import { paying, turnover } from './money';
import type { Showing } from './showing';

/** @param lang of its words, BCP 47 */
export function jobsPage(
  { day, jobs, others, currencies }: Overview,
  {
    lang,
    version,
    ...how
  }: {
    readonly lang: string;
    readonly version: string;
    readonly all: boolean;
    readonly named: (file: string) => string;
  },
): Paper {
  const { date, pages, quote } = wordsFor(lang);
  const words = pages.jobs;
  const several = currencies.length > 1;
  return {
    kind: 'jobs',
    lang,
    date: day,
    size: 'A4',
    title: words.title,
    letterhead: undefined,
    parts: [
      { part: 'heading', level: 1, text: words.title, under: words.asOf(jobs, others, date(day)) },
      ...currencies.flatMap((of) => [
        ...heading(several ? words.inCurrency(of.code) : ''),
        ...partsOf({ of, day, words, date, ...how }),
      ]),
    ],
    foot: [pages.forFirm, quote.madeWith(version)].join(' '),
    running: words.title,
  };
}

function heading(text: string): Part[] {
  return text ? [{ part: 'heading', level: 2, text }] : [];
}

function partsOf(to: Showing): Part[] {
  const { words } = to;
  return [
    ...standing(to),
    ...jobsIn('out', to),
    ...jobsIn('in-hand', to),
    ...paying(to),
    ...owed(to),
    ...turnover(words.byInvoice, ({ invoiced }) => invoiced, to),
    ...turnover(words.byPayment, ({ paid }) => paid, to),
    ...notes(to),
  ];
}

function notes({ of: { jobs }, words }: Showing): Part[] {
  const left = jobs.reduce((sum, job) => sum + job.leftOut, 0);
  const moved = jobs.filter((job) => job.priceMoved).length;
  const lost = jobs.filter((job) => job.setting.lost).length;
  const said = [lost && words.lost(lost), left && words.leftOut(left), moved && words.moved(moved)];
  return said.filter((text) => text !== 0).map((text) => ({ part: 'words', text }));
}
