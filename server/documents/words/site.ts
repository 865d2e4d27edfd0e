/** What a site sheet says. */
export interface SiteWords {
  readonly title: string;
  readonly notWhole: string;
  readonly cautions: string;
  readonly here: string;
  readonly ask: string;
  readonly source: string;
  /** A source, whose standing words a library has in English. */
  sourced(source: string): string;
  /** What is said under a caution, one after another. */
  labelled(label: string, text: string): string;
  readonly order: string;
  readonly dayHead: string;
  day(number: number): string;
  readonly from: string;
  readonly to: string;
  readonly what: string;
  readonly work: string;
  readonly waits: { readonly lift: string; readonly set: string };
  readonly mixes: string;
  readonly inBatch: string;
  readonly amount: string;
  readonly measure: string;
  readonly packs: string;
  readonly cuts: string;
  readonly cutHeads: readonly [string, string, string, string, string];
  /** Of work that is not in a drawing. */
  readonly materials: string;
  readonly needed: string;
  /** Of work whose gauge rod is that of other work. */
  sameRod(title: string): string;
}

export const SITE_EN: SiteWords = {
  title: 'Site sheet',
  notWhole: 'NOT WHOLE YET.',
  cautions: 'Take care',
  here: 'Here',
  ask: 'Ask',
  source: 'From',
  sourced: (source) => source,
  labelled: (label, text) => `${label}: ${text}${/[.!?]$/.test(text) ? '' : '.'}`,
  order: 'Order of work',
  dayHead: 'Day',
  day: (number) => `Day ${number}`,
  from: 'From',
  to: 'To',
  what: 'What',
  work: 'Where',
  waits: {
    lift: 'The rest waits for the next day: no more goes up than a lift a day.',
    set: 'The rest waits for the next day: the concrete has to set.',
  },
  mixes: 'Mortar',
  inBatch: 'In a batch',
  amount: 'Amount',
  measure: 'Or',
  packs: 'packs',
  cuts: 'Cuts',
  cutHeads: ['Courses', 'Piece', 'Each', 'In all', 'From the left'],
  materials: 'On site',
  needed: 'Needed',
  sameRod: (title) => `Gauge rod: the same as for ${title}.`,
};
