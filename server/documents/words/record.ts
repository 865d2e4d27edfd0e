/** What the page of a record says. */
export interface RecordWords {
  readonly title: string;
  readonly nothing: string;
  readonly heads: readonly [string, string, string, string];
  readonly kinds: Readonly<Record<RecordedKind, string>>;
  options(names: readonly string[]): string;
  workedBy(people: string, hours: string, task: string, done: string): string;
  spentFor(what: string, part: string): string;
  invoiceOf(number: string, what: string): string;
  deducted(amount: string): string;
  /** @param day in words */
  heldUntil(day: string): string;
  readonly moved: string;
  /** @param day in words */
  since(how: 'sent' | 'accepted', day: string, price: string): string;
  readonly was: string;
  readonly is: string;
  readonly what: string;
}

export type RecordedKind =
  | 'sent'
  | 'accepted'
  | 'lost'
  | 'found'
  | 'worked'
  | 'spent'
  | 'invoiced'
  | 'paid'
  | 'retained'
  | 'released';

const joined = (...texts: readonly string[]) => texts.filter(Boolean).join(', ');

export const RECORD_EN: RecordWords = {
  title: 'Record',
  nothing: 'Nothing is recorded yet.',
  heads: ['Day', 'What happened', 'More of it', 'Amount'],
  kinds: {
    sent: 'Quote sent',
    accepted: 'Accepted',
    lost: 'Not won',
    found: 'Turned up',
    worked: 'Worked',
    spent: 'Spent',
    invoiced: 'Invoiced',
    paid: 'Paid',
    retained: 'Held back',
    released: 'Released',
  },
  options: (names) => (names.length ? `With ${names.join(', ')}` : ''),
  workedBy: (people, hours, task, done) =>
    joined(people === '1' ? '1 person' : `${people} people`, hours, task, done),
  spentFor: (what, part) => joined(what, part),
  invoiceOf: (number, what) => joined(number && `Invoice ${number}`, what),
  deducted: (amount) => `and ${amount} kept back as tax`,
  heldUntil: (day) => (day ? `until ${day}` : ''),
  moved: 'What has moved since',
  since: (how, day, price) =>
    how === 'sent'
      ? `Since ${price} was sent on ${day}.`
      : `Since ${price} was accepted on ${day}.`,
  was: 'Then',
  is: 'Now',
  what: 'What',
};
