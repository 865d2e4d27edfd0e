/** Jobs whose papers are awkward to write: invented, and each with something that another paper goes wrong on. */

import type { Asked } from '../../../server/documents/invoice/billed';
import { invoiceOf, type Made } from '../../../server/documents/invoice/make';
import type { Job } from '../../../server/engine/workspace/job';
import { FIRM, HALF, JOB, RANGED, WRONG } from '../../cli/jobs';
import { jobOf } from '../../engine/world';

/** The firm with all that an electronic invoice needs; its figures are planted in {@link FIRM}. */
export const WHOLE_FIRM = FIRM.replace(
  '  terms ',
  '  country     GB\n  payment     14 days\n  account     "GB00 TEST 1234"\n  terms ',
);

/** Clients of three lines and two taxes of their own, and a cost that is taxed otherwise. */
const SEVERAL = `${JOB.replace('"T. Alder"', '"T. Alder"\n  client  "Alder House"')}  tax  5%

cost ramp "Ramp for the chair" 1 at £301.13
  tax  none "Built for a disabled person"

cost crane "Crane" 1 at £157.41
  tax  reverse-charge 20%

bill-to "T. Alder & Sons"
  address     "Alder House"
  town        "Oddmouth"
  postcode    "OD1 2AB"
  country     GB
  tax-number  "GB 222 3333 44"
`;

const priced = (price: string, job = JOB) => `${job}\nprice\n${price}`;
const LONG = 'A long tale of the hedge, the lane and the old gatepost; '.repeat(400);

/** Priced, and nobody says who builds it or for whom. */
const BARE = `perpend 1
use uk
wall a
  length 3 m
  height 6 courses
brick standard
  price £0.83 each
material cement
  pack 25 kg bag at £6
material lime
  pack 25 kg bag at £9
material sand
  pack 850 kg bag at £50
labour
  bricklayer £25 per h
  gang 1 bricklayer
`;

/** Every job by what is odd about it. All use `firm.perp`. */
export const ODD: Readonly<Record<string, string>> = {
  plain: JOB,
  ranges: RANGED,
  gaps: HALF,
  errors: WRONG,
  'no firm, no client, no title': `perpend 1\n\nwall a\n  length 3 m\n  height 6 courses\n`,
  'no firm, no client': BARE,
  'several taxes': SEVERAL,
  'no tax': JOB.replace('  valid ', '  tax     none "Not registered for VAT"\n  valid '),
  'reverse charge': JOB.replace('  valid ', '  tax     reverse-charge 20%\n  valid '),
  discounts: priced('  discount  7.3% "Second job"\n  discount  £13.37\n', SEVERAL),
  'agreed with tax': priced('  agreed  £3,333.33 with tax\n', SEVERAL),
  'retention and deductions': priced(
    '  retention  5% for 180 days\n  deducted   20% of labour "Deducted at source"\n  stage "First" 33.3%\n  stage "Second" 41.9%\n  stage "Last" rest\n',
  ),
  'options, one of them accepted': `${JOB}
option higher "Two courses more"
  note    "Higher than the lane looks over."
  change  walnorth height 14 courses

option lower "Two courses less"
  instead-of  higher
  change      walnorth height 10 courses

record
  sent      2026-01-16 £4,000.00
  accepted  2026-01-20 higher £4,500.00
`,
  'long texts': JOB.replace('"The hedge is cut back by the owner."', `"${LONG}"`).replace(
    '"Long garden wall"',
    `"${LONG.slice(0, 900)}"`,
  ),
  'other alphabets': JOB.replace('"T. Alder"', '"Łódź, Ελλάδα, Київ"').replace(
    '"Long garden wall"',
    '"Мур біля Łódź"',
  ),
  'marks of HTML and Markdown': JOB.replace(
    '"Long garden wall"',
    '"<script>alert(1)</script> **_x_** [a](b) | #"',
  ),
};

/** A file with its prices as so many of another currency: what it costs is of no matter here. */
export function inCurrency(code: string, text: string): string {
  return text
    .replace(/£([\d,.]+)/g, (_, figure: string) => `${figure} ${code}`)
    .replace('  valid ', `  currency  ${code}\n  valid `);
}

export function oddJob(text: string, firm = WHOLE_FIRM): Job {
  return jobOf(text, { 'firm.perp': firm });
}

export function madeOf(job: Job, asked: Asked = {}): Made {
  const made = invoiceOf(job, asked);
  if (typeof made === 'string') throw new Error(made);
  return made;
}
