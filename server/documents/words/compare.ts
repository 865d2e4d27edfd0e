/** What is said of two revisions of a job beside each other. */
export interface CompareWords {
  readonly title: string;
  fromTo(before: string, after: string): string;
  readonly nothing: string;
  readonly work: string;
  readonly facts: string;
  readonly quantities: string;
  readonly price: string;
  readonly moved: string;
  readonly byWork: string;
  readonly cautions: string;
  readonly findings: string;
  readonly drawing: string;
  readonly what: string;
  readonly was: string;
  readonly is: string;
  readonly by: string;
  readonly bought: string;
  toBuy(material: string): string;
  readonly together: string;
  readonly incomplete: string;
  readonly reordered: string;
  isNew(what: string): string;
  isGone(what: string): string;
  renamed(what: string, before: string): string;
  changed(what: string, before: string, after: string): string;
  movedLines(what: string): string;
  cautionAt(title: string, works: readonly string[]): string;
  pieces(title: string, back: boolean, fresh: number, gone: number, same: number): string;
  idle(count: number): string;
  readonly none: string;
  /** Only what the record keeps of what was sent. */
  kept(day: string, price: string): string;
  readonly nothingKept: string;
  /** Heads of the report that both sides have. */
  readonly sides: {
    readonly buy: string;
    readonly hours: string;
    readonly price: string;
    readonly missing: string;
  };
}

export const COMPARE_EN: CompareWords = {
  title: 'What has changed',
  fromTo: (before, after) => (before === after ? before : `${before} → ${after}`),
  nothing: 'Nothing that counts has changed.',
  work: 'Work',
  facts: 'Facts',
  quantities: 'Quantities',
  price: 'Price',
  moved: 'What moved it, the biggest first',
  byWork: 'By piece of work, before tax',
  cautions: 'Cautions',
  findings: 'Findings',
  drawing: 'Drawing',
  what: 'What',
  was: 'Before',
  is: 'Now',
  by: 'Difference',
  bought: 'Bought',
  toBuy: (material) => `To buy: ${material}`,
  together: 'Together',
  incomplete: 'A price is incomplete.',
  reordered: 'The pieces of work stand in another order.',
  isNew: (what) => `${what}: new`,
  isGone: (what) => `${what}: gone`,
  renamed: (what, before) => `${what}, before: ${before}`,
  changed: (what, before, after) => `${what} ${before || '(nothing)'} → ${after || '(nothing)'}`,
  movedLines: (what) => `${what}: its lines stand in another order`,
  cautionAt: (title, works) => `${title}: ${works.join(', ')}`,
  pieces: (title, back, fresh, gone, same) =>
    `${title}${back ? ', back' : ''}: pieces ${fresh} new where they lie, ${gone} gone, ${same} as before`,
  idle: (count) =>
    `Of the files it uses ${count === 1 ? '1 other fact' : `${count} other facts`} changed that this job does not ask for.`,
  none: 'none',
  kept: (day, price) => `Beside what the record keeps of ${day}, sent at ${price}.`,
  nothingKept: 'The record keeps no figures of it but the price.',
  sides: { buy: 'To buy', hours: 'Hours', price: 'From cost to price', missing: 'Still missing' },
};
