/** What pages say that are for the firm itself: the figures of a job, worked out and gone over before it is priced. */
import { COMPARE_EN, type CompareWords } from './compare';
import { JOBS_EN, type JobsWords } from './jobs';
import { ofHundred, PRICE_EN, type PriceWords } from './price';
import { RECORD_EN, type RecordWords } from './record';

export interface PagesWords {
  /** At the foot of each that holds costs. */
  readonly forFirm: string;
  readonly price: PriceWords;
  readonly measure: MeasureWords;
  readonly cuts: CutsWords;
  readonly day: DayWords;
  readonly match: MatchWords;
  readonly mortar: MortarWords;
  readonly record: RecordWords;
  readonly jobs: JobsWords;
  readonly compare: CompareWords;
}

export interface MeasureWords {
  readonly title: string;
  readonly nothing: string;
  readonly open: string;
  readonly line: string;
  readonly where: string;
  readonly waits: string;
  /** Of many that wait the first, and how many more. */
  waiting(first: readonly string[], more: number): string;
  readonly findOut: string;
  readonly what: string;
  readonly of: string;
  /** A line that would say it. */
  readonly saidBy: string;
  readonly ranges: string;
  readonly range: string;
  readonly share: string;
  /** What no range alone accounts for: “27%”. */
  rest(share: string): string;
  /** @param percent so many of a hundred jobs alike */
  priced(likely: string, percent: number, low: string, high: string): string;
}

export interface CutsWords {
  readonly title: string;
  readonly nothing: string;
  nothingCut(title: string): string;
  eachOf(count: number): string;
  onEdge(count: number): string;
  batsLeft(count: string, length: string): string;
}

export interface DayWords {
  readonly title: string;
  readonly noWork: string;
  readonly noTime: string;
  dayFromTo(number: number, from: string, to: string): string;
  charged(hours: string, days: string): string;
  longer(days: number): string;
  onlyFirst(days: number): string;
}

export interface MatchWords {
  readonly title: string;
  beside(what: string): string;
  ranked(order: readonly string[]): string;
  readonly heads: readonly [string, string, string, string, string];
  /** How the columns are read. */
  readonly columns: string;
  readonly bought: string;
  size(text: string): string;
  readonly honest: string;
}

export interface MortarWords {
  readonly title: string;
  readonly nothing: string;
  readonly left: string;
  readonly material: string;
  readonly leftOver: string;
  /** Mortar that could be made of what is left. */
  made(mix: string): string;
  lays(bricks: string): string;
  points(area: string, joints: string): string;
  either(ways: readonly string[]): string;
}

export const PAGES_EN: PagesWords = {
  forFirm: 'For the firm alone: it holds costs and profit.',
  price: PRICE_EN,
  measure: {
    title: 'To measure',
    nothing: 'Nothing is left to measure, and no range moves the price.',
    open: 'Still to be measured',
    line: 'Line',
    where: 'Where',
    waits: 'Waits for it',
    waiting: (first, more) =>
      more > 0 ? `${first.join(', ')} and ${more} more` : first.join(', '),
    findOut: 'To find out on site',
    what: 'What',
    of: 'Of',
    saidBy: 'Said by a line like',
    ranges: 'Measure this before you price',
    range: 'Range',
    share: 'Of the spread',
    rest: (share) =>
      `The other ${share}: small ranges, several together, and steps of whole packs and days.`,
    priced: (likely, percent, low, high) =>
      `Price likely ${likely}; in ${ofHundred(percent)} jobs alike ${low} to ${high}.`,
  },
  cuts: {
    title: 'Cut list',
    nothing: 'There is nothing laid that bricks could be cut for.',
    nothingCut: (title) => `${title}: nothing is cut.`,
    eachOf: (count) => `Each of ${count} alike.`,
    onEdge: (count) => `${count} of these bricks cut on edge.`,
    batsLeft: (count, length) => `${count} bats of ${length} at hand are left.`,
  },
  day: {
    title: 'Timetable',
    noWork: 'There is no work in it that takes time.',
    noTime:
      'Nothing is left of a working day for the work: see the day, set-up and clear-up lines.',
    dayFromTo: (number, from, to) => `Day ${number}, ${from} to ${to}`,
    charged: (hours, days) => `${hours} of work; charged as ${days}.`,
    longer: (days) =>
      `In this order it takes ${days} days, more than the price has, since work waits for work to set. Put what goes up in lifts or has to set first, or charge the rest as a cost.`,
    onlyFirst: (days) => `Only the first ${days} days are shown.`,
  },
  match: {
    title: 'Bricks that match',
    beside: (what) => `Beside ${what}.`,
    ranked: (order) => `Ranked by ${order.join(', ')}.`,
    heads: ['Brick', 'Differs by', 'Bed joint', 'Drift', 'Cost'],
    columns:
      'Differs by: its length, width and height, more (+) or less (−) than what stands. Bed joint: the one that keeps the gauge. Drift: how far its courses come out too high, or too low (−), at its usual joint. Cost: of all that is short, before overhead, profit and tax.',
    bought: 'This one is bought.',
    size: (text) => `Size: ${text}.`,
    honest: 'To the client',
  },
  mortar: {
    title: 'Mortar',
    nothing: 'No mortar is mixed for it.',
    left: 'Left over',
    material: 'What',
    leftOver: 'Left',
    made: (mix) => `That would make ${mix}`,
    lays: (bricks) => `lays ${bricks}`,
    points: (area, joints) => (joints ? `points ${area}, ${joints}` : `points ${area}`),
    either: (ways) => ways.join(' or '),
  },
  record: RECORD_EN,
  jobs: JOBS_EN,
  compare: COMPARE_EN,
};
