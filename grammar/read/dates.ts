/** Whether a date as written is a day of the calendar. */
import { later, phrase, spoken } from '../../shared/phrase';
import type { ClockItem, DateItem } from '../syntax';
import { type Fault, fault, replace } from './fault';

const MONTHS = [
  [later`January`, 31],
  [later`February`, 28],
  [later`March`, 31],
  [later`April`, 30],
  [later`May`, 31],
  [later`June`, 30],
  [later`July`, 31],
  [later`August`, 31],
  [later`September`, 30],
  [later`October`, 31],
  [later`November`, 30],
  [later`December`, 31],
] as const;

/** The fault of a time that no clock shows (`24:60`). */
export function clockFault(item: ClockItem): Fault {
  const message = phrase`${item.text} is no time of day: hours go from 00 to 23, minutes from 00 to 59, such as 08:00. Which is meant?`;
  return fault('clock-wrong', 'error', item.span, message, []);
}

/** Gregorian: every fourth year, but of the centuries only every fourth. */
function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** The fault of a date that no calendar has (`2026-02-30`); nothing for a day that there is. */
export function dateFault(item: DateItem): Fault | undefined {
  const [year = 0, month = 0, day = 0] = item.text.split('-').map(Number);
  const found = MONTHS[month - 1];
  if (!found)
    return impossible(
      item,
      phrase`a year has months 01 to 12, and ${item.text} says month ${item.text.slice(5, 7)}`,
    );
  const name = spoken(found[0]);
  const usual = found[1];
  const last = month === 2 && isLeap(year) ? 29 : usual;
  if (day >= 1 && day <= last) return undefined;
  const month2 = month === 2 ? `${name} ${item.text.slice(0, 4)}` : name;
  const nearest = `${item.text.slice(0, 8)}${day ? last : '01'}`;
  return impossible(item, phrase`${month2} has days 01 to ${last}`, nearest);
}

function impossible(item: DateItem, why: string, instead?: string): Fault {
  const message = phrase`There is no day ${item.text}: ${why}. Dates are written year-month-day.`;
  const ways = instead ? [replace(phrase`Write ${instead}`, item.span, instead)] : [];
  return fault('date-impossible', 'error', item.span, message, ways);
}
