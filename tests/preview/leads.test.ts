/** Every figure on every paper and page of every example leads to a line, and it is a line that moves it. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { KINDS } from '../../server/documents/pages';
import type { Shown } from '../../shared/protocol/preview';
import { Previewing } from './shown';

const EXAMPLES = path.resolve(import.meta.dirname, '../../examples');
const read = (name: string) => readFileSync(path.join(EXAMPLES, name), 'utf8');
const FILES = Object.fromEntries(
  ['firm.perp', 'repairs.perp', 'de/firm.perp', 'us/firm.perp'].map((name) => [name, read(name)]),
);
const JOBS = readdirSync(EXAMPLES, { recursive: true, encoding: 'utf8' })
  .filter((name) => /(job|02-.*|11-.*)\.perp$/.test(name))
  .sort();

function opened(name: string, text = read(name), files = FILES): Previewing {
  return new Previewing(text, files, name);
}

/** Something that is read at once, as it stands in the HTML: its tag, its marks, its words. */
interface Said {
  readonly tag: string;
  readonly from: number | undefined;
  readonly also: readonly number[];
  readonly text: string;
}

const READ = /<(h[1-3]|p|li|dd|th|td)\b([^>]*)>([\s\S]*?)<\/\1>|<tr\b([^>]*)>/g;

/** Cells that say nothing themselves say what their row does. */
function saidIn(html: string): Said[] {
  let row = '';
  return [...html.matchAll(READ)].flatMap(([, tag, own = '', inner = '', head]) => {
    if (tag === undefined) {
      row = head ?? '';
      return [];
    }
    const isCell = tag === 'td' || tag === 'th';
    const marks = own.includes('data-from') || !isCell ? own : row;
    const from = /data-from="(\d+)"/.exec(marks)?.[1];
    const also = /data-also="([\d ]+)"/.exec(marks)?.[1]?.split(' ') ?? [];
    const text = inner.replace(/<[^>]+>/g, ' ').trim();
    return [
      { tag, from: from === undefined ? undefined : Number(from), also: also.map(Number), text },
    ];
  });
}

/** A head of a column is a word; what stands in it is a figure. */
function figuresIn({ paper }: Shown): Said[] {
  const body = (paper?.html ?? '').replace(/<thead>[\s\S]*?<\/thead>/g, '');
  return saidIn(body).filter(({ text }) => /\d/.test(text));
}

/** What was never invoiced nor paid is nothing, and no line says so. */
const isNothing = (kind: string, { text }: Said) =>
  ['result', 'record'].includes(kind) && /^\D*0[.,]00\D*$/.test(text);

test.each(JOBS)('%s: whatever has a figure in it leads somewhere', (name) => {
  const job = opened(name);
  const bad = KINDS.flatMap(({ kind }) =>
    figuresIn(job.shown({ show: kind }))
      .filter((said) => said.from === undefined && !isNothing(kind, said))
      .map(({ tag, text }) => `${kind} <${tag}> ${text}`),
  );
  expect(bad).toEqual([]);
});

/** A page of a job, and the same with a line changed, of the job or of its firm’s file. */
class Changed {
  private readonly pages = new Map<string, readonly Said[]>();
  private readonly job: Previewing;
  private readonly before: Shown;
  readonly figures: readonly Said[];

  constructor(
    private readonly name: string,
    private readonly kind: string,
  ) {
    this.job = opened(name);
    this.before = this.job.shown({ show: kind });
    this.figures = figuresIn(this.before);
  }

  /** A line of a file that can be changed, with a number in it. */
  lineOf(at: number): { file: string; line: number; text: string } | undefined {
    const { uri, line } = this.before.from[at]!;
    const file = uri ? uri.replace(/^.*\/jobs\//, '') : this.name;
    const text = Object.hasOwn(FILES, file) ? FILES[file]! : file === this.name ? read(file) : '';
    const own = text.split('\n')[line]?.replace(/"[^"]*"|#.*/g, '') ?? '';
    return /(^|[^\w-])\d/.test(own) ? { file, line, text } : undefined;
  }

  called(at: number): string {
    return this.before.from[at]!.label;
  }

  /** The page with every number of the line so much larger; with 0, without the line. */
  with(at: number, by: number): readonly Said[] {
    const key = `${at} ${by}`;
    const known = this.pages.get(key) ?? this.made(at, by);
    this.pages.set(key, known);
    return known;
  }

  private made(at: number, by: number): readonly Said[] {
    const { file, line, text } = this.lineOf(at)!;
    const lines = text.split('\n');
    lines[line] = by ? otherNumbers(lines[line]!, by) : '';
    this.job.edit(lines.join('\n'), file);
    const figures = figuresIn(this.job.shown({ show: this.kind }));
    this.job.edit(text, file);
    return figures;
  }

  /** Whether a figure reads otherwise then, wherever it stands by then. */
  moves(i: number, at: number, by: number): boolean {
    const { text } = this.figures[i]!;
    const other = this.with(at, by);
    const count = (of: readonly Said[]) => of.filter((said) => said.text === text).length;
    return other.length === this.figures.length
      ? other[i]!.text !== text
      : count(other) < count(this.figures);
  }
}

/** Numbers that stand by themselves, outside texts and comments. */
function otherNumbers(line: string, by: number): string {
  return line.replace(/"[^"]*"|#.*|(?<![\w.-])\d+(?:\.\d+)?/g, (found) =>
    /^\d/.test(found) ? String(Math.round(Number(found) * by * 1000) / 1000) : found,
  );
}

/** Not every wall can be twice as long, and rounding hides a little: the first of these that moves the figure will do. */
const BY = [2, 0.5, 0];

test.each([
  ['garden-wall/job.perp', 'price', 20],
  ['garden-wall/job.perp', 'quote', 5],
  ['repair/job.perp', 'price', 20],
  ['whole-life/11-paid.perp', 'invoice', 5],
  ['gate-piers/job.perp', 'mortar', 5],
])('%s, %s: a figure leads to a line that moves it', (name, kind, least) => {
  const page = new Changed(name, kind);
  const tried = page.figures.flatMap(({ tag, from, text }, i) =>
    tag !== 'th' && from !== undefined && page.lineOf(from) ? [{ i, from, text }] : [],
  );
  const still = tried.filter(({ i, from }) => !BY.some((by) => page.moves(i, from, by)));
  expect(tried.length).toBeGreaterThan(least);
  expect(still.map(({ text, from }) => `${text}: ${page.lineOf(from)?.line}`)).toEqual([]);
});

/**
 * What rounding makes up moves with every penny of the price, and a gang of one bricklayer is no factor of its working.
 */
const NO_MARK = ['£2.39', 'gang'];

test('what moves by more than a little with a line is marked when the cursor is in it', () => {
  const page = new Changed('garden-wall/job.perp', 'price');
  const amount = ({ text }: Said) => Number(text.replace(/[^\d.]/g, ''));
  const lines = new Set(page.figures.flatMap(({ from, also }) => [from ?? -1, ...also]));
  const missed = [...lines].flatMap((at) => {
    if (at < 0 || !page.lineOf(at)) return [];
    const other = page.with(at, 1.1);
    // A line that breaks the job with it is of another page.
    if (other.length !== page.figures.length) return [];
    return page.figures.flatMap((said, i) => {
      const by = Math.abs(amount(other[i] ?? said) / amount(said) - 1);
      const marked = said.from === at || said.also.includes(at);
      const told = `${said.text}, ${page.called(at)}`;
      const counts = said.tag === 'td' && !NO_MARK.some((text) => told.includes(text));
      return counts && by > 0.05 && !marked ? [told] : [];
    });
  });
  expect(missed).toEqual([]);
});
