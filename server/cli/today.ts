/** The day that a command is asked for: as it is said, else today by the clock and the zone of this machine. */
import { phrase } from '../../shared/phrase';
import { WrongUse } from './exits';

/** @throws WrongUse for what is no day */
export function dayGiven(said: string | undefined): string {
  if (said === undefined) return today(new Date());
  const at = /^\d{4}-\d{2}-\d{2}$/.test(said) ? new Date(`${said}T00:00Z`) : undefined;
  if (!at || Number.isNaN(at.getTime()) || at.toISOString().slice(0, 10) !== said)
    throw new WrongUse(phrase`${said} is no date. Write it like this: --date 2026-03-02.`);
  return said;
}

function today(now: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
