/** Days as they are written, 2026-03-02: the engine has no clock, and whoever asks says which day it is. */

/** From one day to another; nothing where one of them is no day. */
export function daysBetween(from: string, to: string): number | undefined {
  const days = (Date.parse(`${to}T00:00Z`) - Date.parse(`${from}T00:00Z`)) / 86_400_000;
  return Number.isFinite(days) ? Math.round(days) : undefined;
}

/** The first and the last month of the quarter that a day lies in, `2026-01`; `begins`: a month that one begins with. */
export function quarterOf(date: string, begins: number): Quarter {
  const [year, month] = date.split('-').map(Number) as [number, number];
  const past = (((month - begins) % 3) + 3) % 3;
  const first = year * 12 + month - 1 - past;
  return { from: monthText(first), to: monthText(first + 2) };
}

export interface Quarter {
  readonly from: string;
  readonly to: string;
}

function monthText(months: number): string {
  const two = (n: number, width: number) => String(n).padStart(width, '0');
  return `${two(Math.floor(months / 12), 4)}-${two((months % 12) + 1, 2)}`;
}
