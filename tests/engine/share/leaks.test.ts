/** A copy for a partner firm lets nothing out: figures and names planted wherever a job hides something are looked for in it. */
import fc from 'fast-check';
import '../../harness/seed';
import { expect, test } from 'vitest';
import { sharedCopy } from '../../../server/engine/share';
import { wrongIn } from '../../../server/engine/share/proof';
import { allFigures } from '../../../server/engine/views/job-view';
import type { Job } from '../../../server/engine/workspace/job';
import { jobOf } from '../world';

/** Figures and names, each of them once; and which of the lines of a job are there. */
interface Planted {
  readonly amounts: readonly number[];
  readonly shares: readonly number[];
  readonly names: readonly string[];
  readonly there: readonly boolean[];
  readonly spelt: number;
}

const letters = fc.string({
  unit: fc.constantFrom(...'bcdfghjklmnpqrstvwxz'),
  minLength: 7,
  maxLength: 9,
});
const planted: fc.Arbitrary<Planted> = fc.record({
  // Pence too, so that no length or count of the job is like one by chance.
  amounts: fc.uniqueArray(fc.integer({ min: 111_111, max: 989_989 }), {
    minLength: 24,
    maxLength: 24,
    selector: (n) => n,
  }),
  shares: fc.uniqueArray(fc.integer({ min: 11_111, max: 39_999 }), {
    minLength: 8,
    maxLength: 8,
  }),
  names: fc.uniqueArray(letters, { minLength: 30, maxLength: 30 }),
  there: fc.array(fc.boolean(), { minLength: 20, maxLength: 20 }),
  spelt: fc.nat(11),
});

/** How people write money. */
const SPELLINGS: readonly ((pence: number) => string)[] = [
  (p) => `£${(p / 100).toFixed(2)}`,
  (p) => `£${(p / 100).toLocaleString('en-GB', { minimumFractionDigits: 2 })}`,
  (p) => `${(p / 100).toFixed(2)} GBP`,
  (p) => `GBP ${(p / 100).toFixed(2)}`,
  (p) => `${(p / 100).toFixed(2)} pounds`,
  (p) => `${(p / 100).toFixed(2)}`,
  (p) => `${(p / 100).toLocaleString('de-DE', { minimumFractionDigits: 2 })} €`,
  (p) => `${(p / 100).toLocaleString('fr-FR', { minimumFractionDigits: 2 })} £`,
  (p) => `£ ${Math.trunc(p / 100)}·${String(p % 100).padStart(2, '0')}`,
  (p) => `${(p / 100).toFixed(2)}k`,
  (p) => `£\u200b${(p / 100).toFixed(2)}`,
  (p) => `£${(p / 100).toFixed(2)}`.replace(/\d/g, (d) => '٠١٢٣٤٥٦٧٨٩'[Number(d)]!),
];

const PRICE = 123_456;

function textsOf({ amounts, shares, names, there, spelt }: Planted) {
  let [a, s, n, t] = [0, 0, 0, 0];
  const money = () => {
    const amount = (amounts[a++]! / 100).toFixed(2);
    return [`£${amount}`, `${amount} £`, `GBP ${amount}`, `${amount} GBP`][(spelt + a) % 4]!;
  };
  const share = () => (shares[s++]! / 10_000).toFixed(4);
  const name = () => {
    const word = names[n++]!;
    return word.charAt(0).toUpperCase() + word.slice(1);
  };
  const some = (...lines: string[]) => (there[t++] ? lines : []);
  const inText = () => SPELLINGS[spelt]!(amounts[a++]!);
  const client = name();
  const job = [
    'perpend 1',
    `# ${name()} said ${money()}`,
    `job "Wall for ${inText()}"`,
    `  client "${client} Estates"  # ${name()}`,
    `  site "${name()} Row"`,
    ...some(`  note "Agreed with the office: ${inText()} all in"`),
    'use "firm.perp"',
    `bill-to "${name()} Holdings"`,
    `  address "${name()} House"`,
    'wall north "North wall"',
    '  brick red',
    '  thick 1 brick',
    `  length 4.49 m # ${name()}`,
    '  height 10 courses',
    ...some(`  note "Paid on site, ${inText()}"`),
    'wall shed "Shed wall"',
    `  length 2.24 m`,
    '  height 8 courses',
    '  option shed',
    ...some(`cost hire "${name()} hire" 1 at ${money()}`, `  note "${name()}"`),
    ...some(
      'travel',
      `  run 2 x 11 miles per day at ${money()} per mile`,
      `  charge "${name()}" ${money()} per day`,
    ),
    'price',
    ...some(`  overhead ${share()}%`),
    ...some(`  profit ${share()}%`),
    ...some(`  contingency ${share()}% "${name()}"`),
    ...some(`  least ${money()}`),
    ...some(`  discount ${share()}% "${name()}"`),
    ...some(`  stage "${name()}" ${money()}`, `  stage "${name()}" rest`),
    ...some(`  deducted ${share()}% of labour "${name()}"`),
    `option shed "${name()} shed"`,
    `  note "${name()}"`,
    `  change north length 4.72 m`,
    'record',
    `  sent 2026-03-02 £${(PRICE / 100).toFixed(2)}`,
    `    was job.cost ${money()}`,
    ...some(`  worked 2026-03-09 2 people ${share()} h`),
    ...some(`  spent 2026-03-09 ${money()} "${name()}"`),
    ...some(
      `  invoiced 2026-03-12 £${(amounts[a++]! / 100).toFixed(2)} as X-${name()} "${name()}"`,
    ),
    ...some(`  paid 2026-03-20 ${money()}`),
  ].join('\n');
  const firm = [
    'perpend 1',
    `# ${name()}`,
    'use uk',
    'firm "Reed & Daughter"',
    `  account "${name()}"`,
    `  tax-number "${name()}"`,
    ...some(`  terms "${name()}"`),
    'brick red "Red facing"',
    `  source "${name()} merchants"`,
    '  size 215 x 102.5 x 65 mm',
    `  price ${money()} each # ${name()}`,
    'material cement',
    `  pack 25 kg bag at ${money()}`,
    'labour',
    `  bricklayer ${money()} per h`,
    `  gang 1 bricklayer`,
    'output',
    `  facework ${share()} bricks per h`,
  ].join('\n');
  const hidden = names.slice(0, n).filter((each) => `${job}\n${firm}`.toLowerCase().includes(each));
  return { job, firm, hidden, client, amounts: amounts.slice(0, a), shares: shares.slice(0, s) };
}

/** Digits of any script, whatever stands between those of one number. */
function digitsIn(text: string): string {
  const plain = text.normalize('NFKC').replace(/[٠-٩]/g, (d) => String(d.charCodeAt(0) - 0x660));
  return plain.replace(/(?<=\d)[.,'’·\s\u200b]+(?=\d)/g, '');
}

const errorsOf = (job: Job) =>
  job.findings.filter((f) => f.severity === 'error').map((f) => f.message);
const bricksOf = (job: Job) =>
  allFigures(job)
    .find(({ key }) => key === 'north.bricks')
    ?.term.value.toFixed();

function holdsNothing(made: Job, texts: ReturnType<typeof textsOf>, without: 'costs' | 'money') {
  const { hidden, client, amounts, shares } = texts;
  const { text, names } = sharedCopy(made, { without, client: false, head: 'A copy.' });
  expect(names).toEqual([]);
  expect(wrongIn(text, without)).toBe(undefined);
  const low = text.toLowerCase();
  for (const each of [...hidden, client.toLowerCase()]) expect(low).not.toContain(each);
  const digits = digitsIn(text);
  for (const each of [...amounts, ...shares]) expect(digits).not.toContain(String(each));
  expect(digits.includes(String(PRICE))).toBe(without === 'costs');
  const tokens = new Set(digits.match(/\d+/g));
  expect(workedOut(made).filter((said) => tokens.has(said))).toEqual([]);
  return text;
}

/** Every amount that the job comes to, but the price that was sent. */
function workedOut(job: Job): string[] {
  const figures = allFigures(job).filter(({ term }) => term.unit === 'GBP');
  const said = figures.map(({ term }) => term.value.abs().toFixed(2).replace('.', ''));
  return said
    .map((each) => each.replace(/^0+/, ''))
    .filter((each) => each.length > 4 && each !== String(PRICE));
}

test('nothing hidden is in a copy without costs, or without money', () => {
  let count = 0;
  fc.assert(
    fc.property(planted, (all) => {
      const texts = textsOf(all);
      const made = jobOf(texts.job, { 'firm.perp': texts.firm });
      const faults = made.file.blocks.flatMap((b) => b.read.faults);
      expect(faults.filter((f) => f.severity === 'error')).toEqual([]);
      holdsNothing(made, texts, 'money');
      const text = holdsNothing(made, texts, 'costs');
      if (count++ % 8) return;
      // It is still the work: the copy reads without an error, and lays as many bricks.
      const copy = jobOf(text);
      expect(errorsOf(made)).toEqual([]);
      expect(errorsOf(copy)).toEqual([]);
      expect(bricksOf(copy)).toBe(bricksOf(made));
    }),
    { numRuns: 40, endOnFailure: true },
  );
});
