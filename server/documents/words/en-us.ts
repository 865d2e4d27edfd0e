/** English, as it is written in America: where it differs. */
import type { Words } from '.';
import { dayOf } from './dates';
import { EN, MONTHS } from './en';

export const EN_US: Words = {
  ...EN,
  date(date) {
    const found = dayOf(date);
    return found ? `${MONTHS[found.month - 1]} ${found.day}, ${found.year}` : date;
  },
};
