/** A job’s file cut to what is kept of it: of its work not a line is read. */
import { cutBlocks, splitLines } from '../../../grammar/blocks';
import { read } from '../../../grammar/read/read';
import type { ReadBlock, ReadLine, Value } from '../../../grammar/read/values';
import { toBase } from '../../../shared/units';
import { namesIn } from '../life/option';
import { wordOf } from '../resolve/book';
import { headingWords, MOST_CHARACTERS, WORK } from '../workspace/source';
import {
  ENTRY_KINDS,
  type EntryKind,
  type JobEntry,
  type JobSummary,
  type Written,
} from './summary';

const NONE: JobSummary = {
  isJob: false,
  ref: '',
  title: '',
  client: '',
  date: '',
  entries: [],
  unread: 0,
  own: '',
  taxes: false,
};

/** Blocks whose lines say how a record is to be taken. */
const OWN: ReadonlySet<string> = new Set(['use', 'defaults', 'labour', 'firm', 'currencies']);

/** Never throws; a text too large for the engine holds nothing. */
export function summaryOf(text: string): JobSummary {
  if (text.length > MOST_CHARACTERS) return NONE;
  const lines = splitLines(text.replace(/^\ufeff/, ''));
  const starts = cutBlocks(lines);
  const blocks = starts.map((start, i) => blockOf(lines.slice(start, starts[i + 1])));
  const of = (kind: string) => blocks.find((block) => block.kind === kind);
  const job = of('job');
  const heading = job && read(job.lines);
  const record = of('record');
  return {
    isJob: blocks.some(({ kind }) => kind === 'job' || WORK.has(kind)),
    ...headingOf(heading?.heading),
    ...recorded(record && read(record.lines)),
    own: ownText(job && heading, blocks),
    taxes: blocks.some(hasTax),
  };
}

interface Cut {
  readonly kind: string;
  readonly lines: readonly string[];
}

function blockOf(lines: readonly string[]): Cut {
  return { kind: headingWords(lines)[0] ?? '', lines };
}

const TAXED: ReadonlySet<string> = new Set([...WORK, 'cost', 'option']);

function hasTax({ kind, lines }: Cut): boolean {
  return TAXED.has(kind) && lines.some((line) => /^\s+(change\s+\S+\s+)?tax\b/.test(line));
}

function headingOf(job: ReadLine | undefined) {
  const first = (key: string) => wordOf(job?.body.find((l) => l.kind.key === key)?.values[key]);
  const title = wordOf(job?.values.title);
  return { title, ref: first('ref'), client: first('client'), date: first('date') };
}

/** Of the job’s block only what counts: two jobs of one firm then have the same. */
function ownText(job: ReadBlock | undefined, blocks: readonly Cut[]): string {
  const body = job?.heading?.body ?? [];
  const kept = body.filter(({ kind }) => kind.key === 'tax' || kind.key === 'currency');
  const lines = job?.syntax.text.split('\n') ?? [];
  const said = kept.map(({ syntax }) => `  ${lines[syntax.span.line]!.trim()}`);
  const others = blocks.filter(({ kind }) => OWN.has(kind)).map((b) => b.lines.join('\n').trim());
  return [...(said.length ? ['job', ...said] : []), ...others].join('\n');
}

function recorded(block: ReadBlock | undefined) {
  const lines = (block?.heading?.body ?? []).filter((line) => line.values.date);
  const unread = block?.faults.filter((fault) => fault.severity === 'error').length ?? 0;
  return { entries: lines.flatMap(entryOf), unread };
}

function entryOf(line: ReadLine): JobEntry[] {
  const kind = ENTRY_KINDS.find((each) => each === line.kind.key);
  return kind ? [{ kind, date: wordOf(line.values.date), ...PARTS[kind]?.(line) }] : [];
}

type Part = Omit<JobEntry, 'kind' | 'date'>;

const PARTS: { readonly [kind in EntryKind]?: (line: ReadLine) => Part } = {
  sent: moneyIn,
  accepted: (line) => ({ ...moneyIn(line), options: namesIn(line.values.options) }),
  worked: ({ values }) => ({
    hours: hoursOf(values.people, values.hours),
    task: wordOf(values.task),
    amount: amountOf(values.amount),
  }),
  spent: moneyIn,
  invoiced: moneyIn,
  paid: (line) => ({ ...moneyIn(line), deducted: moneyOf(line.values.deducted) }),
  retained: moneyIn,
  released: moneyIn,
};

function moneyIn({ values }: ReadLine): Part {
  return { money: moneyOf(values.money) };
}

function moneyOf(value: Value | undefined): Written | undefined {
  return value?.kind === 'money' ? [value.amount.toFixed(), value.currency] : undefined;
}

function hoursOf(people: Value | undefined, hours: Value | undefined): string {
  if (people?.kind !== 'quantity' || hours?.kind !== 'quantity' || !hours.unit) return '0';
  return people.low.mul(toBase(hours.low, hours.unit)).toFixed();
}

const IN: Readonly<Record<string, readonly [unit: string, of: number]>> = {
  bricks: ['bricks', 1],
  area: ['m2', 1],
  length: ['m', 1000],
  pieces: ['pieces', 1],
};

function amountOf(value: Value | undefined): Written | undefined {
  if (value?.kind !== 'quantity' || !value.unit) return undefined;
  const [unit, of] = IN[value.unit.dimension] ?? ['', 1];
  return unit ? [toBase(value.low, value.unit).div(of).toFixed(), unit] : undefined;
}
