/** The timetable of a job: its tasks in the order they are done, in the firm’s day. */
import { phrase } from '../../../shared/phrase';
import type { Work } from '../brickwork/work';
import { TaskOrder } from '../labour/order';
import {
  type Break,
  type Chunk,
  type Day,
  type DayPlan,
  type Entry,
  timetable,
} from '../labour/timetable';
import { LineFacts } from '../resolve/env';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';

/** @param start minutes from midnight; without it, the firm’s `start` line, else the defaults’ */
export function timetableOf(job: Job, start?: number): Day[] {
  return timetable(chunksOf(job), planOf(job, start));
}

function chunksOf(job: Job): Chunk[] {
  const { loading } = job.price;
  const first = loading
    ? [{ work: '', label: phrase`Loading out`, hours: loading.value.toNumber(), of: loading }]
    : [];
  const order = new TaskOrder(job.env);
  return [...first, ...job.works.flatMap((work) => chunksOfWork(work, order))];
}

/** Work that takes several days for its height is built up in as many lifts. */
function chunksOfWork(work: Work, order: TaskOrder): Chunk[] {
  const { tasks, leastDays } = work.needs;
  const lifts = Math.max(1, leastDays?.value.toNumber() ?? 1);
  const name = work.title || work.name;
  const all = tasks
    // What a partner does is in its own days.
    .filter((task) => !task.by)
    .sort((a, b) => order.placeOf(a.task) - order.placeOf(b.task))
    .map(({ task, hours }) => {
      return { task, label: hours.label, hours: hours.value.toNumber(), of: hours };
    });
  return liftsOf(all, lifts, order).map(({ task, ...chunk }) => ({
    ...chunk,
    work: name,
    sets: order.sets(task) || undefined,
  }));
}

interface Step extends Omit<Chunk, 'work' | 'sets'> {
  readonly task: string;
}

/** What raises the work parted into lifts; what is let into it comes after the first of them. */
function liftsOf(tasks: readonly Step[], lifts: number, order: TaskOrder): readonly Step[] {
  if (lifts === 1) return tasks;
  const raising = tasks.filter((t) => order.raises(t.task));
  const one = (i: number) =>
    raising.map((t) => ({
      ...t,
      label: phrase`${t.label}, lift ${i + 1} of ${lifts}`,
      hours: t.hours / lifts,
      lift: i + 1,
    }));
  const rest = tasks.filter((t) => !order.raises(t.task));
  const first = raising.length ? tasks.indexOf(raising[0]!) : 0;
  const before = rest.filter((t) => tasks.indexOf(t) < first);
  const letIn = rest.filter((t) => !before.includes(t) && order.isLetIn(t.task));
  const after = rest.filter((t) => !before.includes(t) && !order.isLetIn(t.task));
  const later = Array.from({ length: lifts - 1 }, (_, i) => one(i + 1)).flat();
  return [...before, ...one(0), ...letIn, ...later, ...after];
}

function planOf({ env, price }: Job, start: number | undefined): DayPlan {
  const { driving, setUp, clearUp } = price.around;
  const part = (term: Term | undefined, label: string) =>
    term ? [{ label, hours: term.value.toNumber(), of: term }] : [];
  const half = driving ? driving.value.toNumber() / 2 : 0;
  const drive = half ? [{ label: phrase`Driving`, hours: half, of: driving }] : [];
  return {
    start: start ?? startOf(env),
    hours: price.gang.day.value.toNumber(),
    before: [...drive, ...part(setUp, phrase`Setting up`)],
    after: [...part(clearUp, phrase`Cleaning down`), ...drive],
    breaks: breaksOf(env),
  };
}

function startOf({ book }: Job['env']): number {
  const said = book.setting('labour', 'start') ?? book.setting('defaults', 'start');
  const at = said?.line.values.at;
  return at?.kind === 'clock' ? at.minutes : 0;
}

function breaksOf(env: Job['env']): Break[] {
  return env.book.settings('labour', 'break').flatMap(({ line, block }) => {
    const at = line.values.at;
    const facts = new LineFacts(block, line, env);
    const hours = facts.number('time');
    const of = facts.term('time', phrase`Break`);
    return at?.kind === 'clock' && hours ? [{ at: at.minutes, minutes: hours * 60, of }] : [];
  });
}

/** The hours that an entry of a timetable is some of. */
export function hoursOf({ of }: Entry): Term | undefined {
  return of as Term | undefined;
}

/** `08:30`, to the nearest minute. */
export function clockText(minutes: number): string {
  const all = Math.round(minutes);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${two(Math.floor(all / 60))}:${two(all % 60)}`;
}

/** `8:30` in minutes from midnight; nothing for what no clock shows. */
export function minutesIn(text: string): number | undefined {
  const [, hours, minutes] = /^(\d{1,2}):(\d{2})$/.exec(text) ?? [];
  if (hours === undefined || Number(hours) > 23 || Number(minutes) > 59) return undefined;
  return Number(hours) * 60 + Number(minutes);
}
