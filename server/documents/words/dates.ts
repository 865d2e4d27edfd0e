/** Days of the calendar. Dates come in as `2026-03-02`; no clock is asked. */

const DAY = 24 * 60 * 60 * 1000;
const FORM = /^(\d{4})-(\d{2})-(\d{2})$/;

export interface Day {
  readonly year: string;
  /** From 1. */
  readonly month: number;
  readonly day: number;
}

/** Nothing where it is no date. */
export function dayOf(date: string): Day | undefined {
  const found = FORM.exec(date);
  if (!found) return undefined;
  const [month, day] = [Number(found[2]), Number(found[3])];
  return month >= 1 && month <= 12 ? { year: found[1]!, month, day } : undefined;
}

/** The day so many days later (Gregorian calendar); nothing when `date` is no date. */
export function daysLater(date: string, days: number): string | undefined {
  const found = FORM.exec(date);
  if (!found) return undefined;
  const [, year, month, day] = found.map(Number);
  const then = Date.UTC(year!, month! - 1, day!) + days * DAY;
  // ISO form is fixed at four digits of the year only up to 9999.
  return then < Date.UTC(10_000, 0) ? new Date(then).toISOString().slice(0, 10) : undefined;
}

/** The last day of a month, `2026-02` (Gregorian calendar); what is no month stays as it is. */
export function lastDayOf(month: string): string {
  const [, year, number] = /^(\d{4})-(\d{2})$/.exec(month) ?? [];
  if (year === undefined) return month;
  const last = new Date(Date.UTC(Number(year), Number(number), 0));
  return last.toISOString().slice(0, 10);
}
