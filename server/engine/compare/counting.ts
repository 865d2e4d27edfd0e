/** Which facts of the files that a job uses count in it. */
import type { ReadLine, Values } from '../../../grammar/read/values';
import { allFigures } from '../views/job-view';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import type { LineChange } from './lines';
import type { SaidLine } from './said';

/** Whether a fact of a used file counts in either of two jobs. */
export class Counting {
  private names: ReadonlySet<string> | undefined;
  private own: readonly Map<string, Set<string>>[] | undefined;
  private lines: readonly [ReadonlySet<string>, ReadonlySet<string>] | undefined;

  constructor(
    private readonly before: Job,
    private readonly after: Job,
  ) {}

  /** A job’s own line of the word is believed before any of a used file. */
  saidByJob(
    { before, after }: LineChange,
    old: readonly SourceBlock[],
    now: readonly SourceBlock[],
  ): boolean {
    this.own ??= [ownWords(this.before), ownWords(this.after)];
    const block = now[0] ?? old[0];
    const [were, are] = this.own.map((words) => block && words.get(idOf(block)));
    const own = (words: ReadonlySet<string> | undefined, line: SaidLine | undefined) =>
      !line || words?.has(line.key) === true;
    return own(were, before) && own(are, after);
  }

  counts({ before, after }: LineChange, block: SourceBlock): boolean {
    if (block.name !== undefined && block.kind !== 'cost') return this.named.has(block.name);
    if (!block.file.shipped && !BY_FIGURE.has(block.kind!)) return true;
    const [old, now] = this.worked;
    const asked = (line: SaidLine | undefined, places: ReadonlySet<string>) =>
      line !== undefined && places.has(placeOf(line));
    return asked(before, old) || asked(after, now);
  }

  /** What the work, the rest of the job and the defaults name, and what those name in turn. */
  private get named(): ReadonlySet<string> {
    this.names ??= namesIn([this.before, this.after]);
    return this.names;
  }

  /** Lines that a figure of each job was worked out from. */
  private get worked(): readonly [ReadonlySet<string>, ReadonlySet<string>] {
    this.lines ??= [workedFrom(this.before), workedFrom(this.after)];
    return this.lines;
  }
}

/** Kinds of which a job asks for a line where its work needs it. */
const BY_FIGURE: ReadonlySet<string> = new Set(['output', 'serving', 'limit', 'currencies']);

/** First words of all lines that a job’s own file says of each thing. */
function ownWords(job: Job): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const block of job.file.blocks) {
    const words = found.get(idOf(block)) ?? new Set();
    found.set(idOf(block), words);
    for (const line of block.read.heading?.body ?? []) words.add(line.syntax.key?.text ?? '');
  }
  return found;
}

const idOf = ({ kind, name }: SourceBlock) => `${kind} ${name ?? ''}`;

function namesIn(jobs: readonly Job[]): Set<string> {
  const names = new Set<string>();
  const all = jobs.flatMap((job) => job.scope.files.flatMap((file) => file.blocks));
  const own = new Set(jobs.flatMap((job) => job.file.blocks));
  let open = all.filter((b) => own.has(b) || b.kind === 'defaults');
  const byName = namedAmong(all);
  while (open.length) {
    const words = new Set(open.flatMap(wordsIn));
    const fresh = [...words].filter((word) => byName.has(word) && !names.has(word));
    for (const word of fresh) names.add(word);
    open = fresh.flatMap((word) => byName.get(word)!);
  }
  return names;
}

function namedAmong(blocks: readonly SourceBlock[]): Map<string, SourceBlock[]> {
  const found = new Map<string, SourceBlock[]>();
  for (const block of blocks) {
    if (block.name === undefined) continue;
    const list = found.get(block.name);
    if (list) list.push(block);
    else found.set(block.name, [block]);
  }
  return found;
}

function wordsIn(block: SourceBlock): string[] {
  const { heading } = block.read;
  return heading ? wordsOf(heading) : [];
}

function wordsOf({ values, body }: ReadLine): string[] {
  return [...inValues(values), ...body.flatMap(wordsOf)];
}

function inValues(values: Values): string[] {
  return Object.values(values).flatMap((value) => {
    if (value?.kind === 'word') return [value.text];
    return value?.kind === 'list' ? value.of.flatMap(inValues) : [];
  });
}

function placeOf(line: SaidLine): string {
  const { file, line: at } = line.place();
  return `${file}:${at}`;
}

function workedFrom(job: Job): Set<string> {
  const places = new Set<string>();
  const seen = new Set<Term>();
  const open = allFigures(job).map(({ term }) => term);
  for (let term = open.pop(); term; term = open.pop()) {
    if (seen.has(term)) continue;
    seen.add(term);
    if (term.origin) {
      const { file, line } = term.origin.block.place(term.origin.span);
      places.add(`${file}:${line}`);
    }
    open.push(...term.args);
  }
  return places;
}
