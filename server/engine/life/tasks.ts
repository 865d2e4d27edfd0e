/** Estimate against what happened, task by task. Hours are of one person. */
import { phrase } from '../../../shared/phrase';
import type { Work } from '../brickwork/work';
import type { Gang } from '../labour/gang';
import { product, quotient, sum, type Term } from '../working/term';
import type { Job } from '../workspace/job';
import { recordOf, type Worked } from './record';
import { taskWords } from './task-words';

export interface TaskResult {
  /** As the output block calls it; empty for hours whose task is not said. */
  readonly task: string;
  readonly estimated?: Term;
  /** How much of it there is to do, where the work says it in one unit. */
  readonly amountEstimated?: Term;
  readonly worked?: Term;
  /** How much was done, where every line of the task says it in one unit. */
  readonly amount?: Term;
  /** Done in an hour by one who lays, where the others of the gang serve: as the output block says it. */
  readonly output?: Term;
}

/** Everybody in the gang. */
export function peopleOf({ laying, serving }: Gang): Term {
  return sum(phrase`people of the gang`, '', [laying, ...(serving ? [serving] : [])]);
}

/** `agreed`: the job that was done. Tasks in the order of its work; what was only recorded comes last. */
export function taskResults(job: Job, agreed: Job): TaskResult[] {
  const { worked } = recordOf(job);
  const people = peopleOf(agreed.price.gang);
  const planned = plannedIn(agreed.works);
  const done = byTask(worked, planned);
  const names = [...new Set([...planned.keys(), ...done.keys()])];
  return names.map((task) => ({
    task,
    ...estimateOf(planned.get(task) ?? [], people),
    ...doneOf(task, done.get(task) ?? [], agreed.price.gang, people),
  }));
}

/** A word that is no task stands with those that none is said for: a finding tells of it. */
function byTask(worked: readonly Worked[], planned: ReadonlyMap<string, unknown>) {
  const words = new Set(taskWords());
  const done = new Map<string, Worked[]>();
  for (const each of worked) {
    const task = words.has(each.task) || planned.has(each.task) ? each.task : '';
    const list = done.get(task);
    if (list) list.push(each);
    else done.set(task, [each]);
  }
  return done;
}

function plannedIn(works: readonly Work[]): Map<string, Term[]> {
  const planned = new Map<string, Term[]>();
  for (const { task, hours, by } of works.flatMap((w) => w.needs.tasks)) {
    if (by) continue;
    const list = planned.get(task);
    if (list) list.push(hours);
    else planned.set(task, [hours]);
  }
  return planned;
}

function estimateOf(hours: readonly Term[], people: Term) {
  const gang = sum(phrase`hours of the gang`, 'h', hours);
  if (!hours.length || (gang.value.isZero() && !gang.gaps.length)) return {};
  const amounts = hours.flatMap((each) => amountIn(each) ?? []);
  return {
    estimated: product(phrase`Estimated`, 'h', [gang, people]),
    amountEstimated: amounts.length === hours.length ? added(phrase`to do`, amounts) : undefined,
  };
}

/** What hours were worked out from: they are an amount divided by what one does in an hour. */
function amountIn(hours: Term): Term | undefined {
  let term: Term | undefined = hours;
  while (term && term.op !== 'quotient') term = term.args[0];
  const [amount] = term?.args ?? [];
  return amount?.unit === 'h' ? amountIn(amount) : amount;
}

/** Nothing where they are in several units. */
function added(label: string, terms: readonly Term[]): Term | undefined {
  const units = new Set(terms.map((t) => unitOf(t)));
  const [unit] = units;
  return units.size === 1 ? sum(label, unit!, terms) : undefined;
}

function unitOf({ unit }: Term): string {
  return unit === 'brick' ? 'bricks' : unit;
}

function doneOf(task: string, days: readonly Worked[], gang: Gang, people: Term) {
  if (!days.length) return {};
  const label = task ? phrase`Worked at ${task}` : phrase`Worked, no task said`;
  const worked = sum(
    label,
    'h',
    days.map((d) => d.hours),
  );
  const amounts = days.flatMap((d) => d.amount ?? []);
  const amount = task && amounts.length === days.length ? added(phrase`Done`, amounts) : undefined;
  if (!amount || worked.value.isZero()) return { worked, amount };
  const laying = product(phrase`hours of those who lay`, 'h', [
    worked,
    quotient(phrase`those who lay, of all`, '', gang.laying, people),
  ]);
  const unit = `${amount.unit}/h`;
  return {
    worked,
    amount,
    output: quotient(phrase`Done in an hour, ${task}`, unit, amount, laying),
  };
}
