/**
 * A job day by day: from when to when each task is done. Plain numbers, hours from the start of the job’s first day;
 * it knows neither the notation nor money.
 */

import { phrase } from '../../../shared/phrase';

/** Time that is spent. */
interface Spent {
  readonly label: string;
  readonly hours: number;
  /** What the hours were worked out as: handed through to the entries, and never looked into. */
  readonly of?: object;
}

/** A task of one piece of work, or a lift of it. */
export interface Chunk extends Spent {
  readonly work: string;
  /** Which lift of the work it is of, from 1: none may stand on a lower one of the same day. */
  readonly lift?: number;
  /** It has to set: nothing more of the same work is done that day. */
  readonly sets?: boolean;
}

export interface Break {
  /** Minutes from midnight. */
  readonly at: number;
  readonly minutes: number;
  readonly of?: object;
}

export interface DayPlan {
  /** Minutes from midnight. */
  readonly start: number;
  /** Paid hours of a full day, and what of them goes on other things. */
  readonly hours: number;
  readonly before: readonly Spent[];
  readonly after: readonly Spent[];
  readonly breaks: readonly Break[];
}

/** Minutes from midnight, not rounded. */
export interface Entry {
  readonly from: number;
  readonly to: number;
  readonly label: string;
  readonly work?: string;
  readonly of?: object;
  /** Neither paid nor worked. */
  readonly rest?: boolean;
}

export interface Day {
  readonly entries: readonly Entry[];
  /** Why it ends before the day does, when it does and work is left. */
  readonly waits?: 'lift' | 'set';
}

/** Minutes too short to tell of. */
const NOTHING = 0.01;
/** More days than any timetable is read for; a longer job is told so. */
export const MOST_DAYS = 60;

/** The chunks of one piece of work stand together, in their order; other work may go between them where one must wait. */
export function timetable(chunks: readonly Chunk[], plan: DayPlan): Day[] {
  const left = chunks
    .map((c) => ({ ...c, minutes: c.hours * 60 }))
    .filter((c) => c.minutes > NOTHING);
  const spent = [...plan.before, ...plan.after].reduce((sum, p) => sum + p.hours, 0);
  const room = (plan.hours - spent) * 60;
  const days: Day[] = [];
  if (room <= NOTHING) return days;
  while (left.length && days.length < MOST_DAYS) days.push(oneDay(left, room, plan));
  return days;
}

interface Left extends Chunk {
  minutes: number;
}

function oneDay(left: Left[], room: number, plan: DayPlan): Day {
  const clock = new Clock(plan);
  for (const { hours, ...spent } of plan.before) clock.take(spent, hours * 60);
  const raised = new Map<string, number>();
  const setting = new Set<string>();
  let rest = room;
  for (;;) {
    const next = left.find((c) => isFirst(c, left) && !stands(c, raised, setting));
    if (!next || rest <= NOTHING) break;
    const minutes = Math.min(next.minutes, rest);
    clock.take(next, minutes, next.work);
    rest -= minutes;
    next.minutes -= minutes;
    if (next.minutes > NOTHING) continue;
    left.splice(left.indexOf(next), 1);
    if (next.lift) raised.set(next.work, next.lift);
    if (next.sets) setting.add(next.work);
  }
  for (const { hours, ...spent } of plan.after) clock.whole(spent, hours * 60);
  return {
    entries: clock.entries,
    waits: left.length && rest > NOTHING ? waiting(setting) : undefined,
  };
}

function waiting(setting: ReadonlySet<string>): Day['waits'] {
  return setting.size ? 'set' : 'lift';
}

/** Whether it has to wait for the next day. */
function stands(
  chunk: Left,
  raised: ReadonlyMap<string, number>,
  setting: ReadonlySet<string>,
): boolean {
  return (
    (chunk.lift ?? 0) > (raised.get(chunk.work) ?? Number.POSITIVE_INFINITY) ||
    (!chunk.sets && setting.has(chunk.work))
  );
}

function isFirst(chunk: Left, left: readonly Left[]): boolean {
  return left.find((other) => other.work === chunk.work) === chunk;
}

type Told = Pick<Spent, 'label' | 'of'>;

/** Goes through the day; breaks part what they fall into. */
class Clock {
  readonly entries: Entry[] = [];
  private now: number;
  private readonly breaks: Break[];

  constructor({ start, breaks }: DayPlan) {
    this.now = start;
    this.breaks = breaks.filter((b) => b.at >= start).sort((a, b) => a.at - b.at);
  }

  take(spent: Told, minutes: number, work?: string): void {
    let rest = minutes;
    while (rest > NOTHING) {
      const [pause] = this.breaks;
      const until = pause ? Math.max(0, pause.at - this.now) : Number.POSITIVE_INFINITY;
      const part = Math.min(rest, until);
      if (part > NOTHING) this.put(spent, part, work);
      rest -= part;
      if (rest > NOTHING) this.rest();
    }
  }

  /** Cleaning down goes on to its end: nobody takes a break to finish it after. */
  whole(spent: Told, minutes: number): void {
    if (minutes > NOTHING) this.put(spent, minutes, undefined);
  }

  private rest(): void {
    const pause = this.breaks.shift();
    if (!pause) return;
    this.entries.push({
      from: this.now,
      to: this.now + pause.minutes,
      label: phrase`Break`,
      of: pause.of,
      rest: true,
    });
    this.now += pause.minutes;
  }

  private put({ label, of }: Told, minutes: number, work: string | undefined): void {
    const last = this.entries.at(-1);
    const to = this.now + minutes;
    if (last && last.label === label && last.work === work && !last.rest)
      this.entries[this.entries.length - 1] = { ...last, to };
    else this.entries.push({ from: this.now, to, label, work, of });
    this.now = to;
  }
}
