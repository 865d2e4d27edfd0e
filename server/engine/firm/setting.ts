/** What a job’s record is taken by: its currency, its tax, its gang. Of what the job itself says and the files it uses. */
import { type Exact, HUNDRED, ONE, ZERO } from '../../../shared/exact';
import type { FigureStyle } from '../../../shared/show';
import { gangOf } from '../labour/gang';
import { peopleOf } from '../life/tasks';
import { generalTax } from '../price/tax/kinds';
import { Book, bookBlocks } from '../resolve/book';
import { defaultLine, type Env, envOf, type Money } from '../resolve/env';
import { type FileStore, scopeOf } from '../resolve/uses';
import { SourceFile } from '../workspace/source';
import type { FiledJob } from './summary';

/** So much of what a client pays, tax in it, is at this rate: the amount before tax, as a part of all. */
export interface TaxPart {
  readonly share: Exact;
  /** In percent, as charged. */
  readonly rate: Exact;
}

export interface Setting {
  readonly money: Money;
  /** How its money is written for a reader. */
  readonly style: FigureStyle;
  /** Made anew whenever it is asked for: of thousands of jobs that each say something of their own none may be kept. */
  readonly env: Env;
  /** Names of the files it comes from, the job’s own left out. */
  readonly files: ReadonlySet<string>;
  /** A file that it uses is missing, or may not be used: then what that says is not in it. */
  readonly lost: boolean;
  /** All at one rate; nothing where a cost of a file it uses has a tax line of its own. */
  readonly tax?: readonly TaxPart[];
  /** Those who lay, as a part of the gang. */
  readonly laying: number;
  /** Within how many days an invoice is to be paid. */
  readonly payment?: number;
  /** A month, 1 to 12, that a quarter begins with. */
  readonly quarter: number;
}

/** Jobs that say the same in one folder have one setting: most of a firm’s do. */
export class Settings {
  private readonly known = new Map<string, Setting>();
  private generation = -1;

  constructor(private readonly store: FileStore) {}

  /** A file that jobs use was edited. */
  forget(): void {
    this.known.clear();
  }

  of({ file, summary }: FiledJob): Setting {
    if (this.generation !== this.store.generation) this.known.clear();
    this.generation = this.store.generation;
    const key = `${folderOf(file)}\n${summary.own}`;
    const known = this.known.get(key) ?? settingOf(file, summary.own, this.store);
    this.known.set(key, known);
    return known;
  }
}

function folderOf(file: string): string {
  return file.slice(0, Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
}

function settingOf(name: string, own: string, store: FileStore): Setting {
  const scope = () => scopeOf(new SourceFile(name, own), store);
  const { files, remarks } = scope();
  const env = envIn(files);
  const gang = gangOf(env);
  const people = peopleOf(gang).value;
  const laying = gang.laying.value.div(people.isZero() ? 1 : people).toNumber();
  return {
    money: env.money,
    style: env.style,
    get env() {
      return envIn(scope().files);
    },
    files: new Set(files.slice(1).map((each) => each.name)),
    lost: remarks.length > 0,
    tax: taxIn(env),
    laying: laying > 0 && laying <= 1 ? laying : 1,
    payment: daysIn(env),
    quarter: quarterIn(env),
  };
}

function envIn(files: readonly SourceFile[]): Env {
  return envOf(new Book(bookBlocks(files)), 'middle');
}

function taxIn(env: Env): readonly TaxPart[] | undefined {
  if (env.book.all('cost', 'tax').length) return undefined;
  const { rate } = generalTax(env);
  if (rate.gaps.length) return undefined;
  return [partAt(rate.value)];
}

function partAt(rate: Exact): TaxPart {
  return { rate, share: HUNDRED.div(HUNDRED.add(rate.lt(0) ? ZERO : rate)) };
}

function daysIn(env: Env): number | undefined {
  const own = env.book.setting('firm', 'payment')?.line.values.days;
  const days = own ?? defaultLine(env, 'payment')?.values.days;
  return days?.kind === 'quantity' ? days.low.floor().toNumber() : undefined;
}

function quarterIn(env: Env): number {
  const month = defaultLine(env, 'quarters')?.values.month;
  const at = month?.kind === 'quantity' ? month.low : ONE;
  return at.gte(1) && at.lte(12) ? at.floor().toNumber() : 1;
}
