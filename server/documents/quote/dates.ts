/** Days of the calendar on paper. Dates come in as `2026-03-02`; no clock is asked. */

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const DAY = 24 * 60 * 60 * 1000;
const FORM = /^(\d{4})-(\d{2})-(\d{2})$/;

/** `2 March 2026`, which no reader of any country takes for February. Other texts stay as they are. */
export function inWords(date: string): string {
  const found = FORM.exec(date);
  const month = MONTHS[Number(found?.[2]) - 1];
  return found && month ? `${Number(found[3])} ${month} ${found[1]}` : date;
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
