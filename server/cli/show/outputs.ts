/** What past jobs show of each task, in a table. */

import { exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { showNumber } from '../../../shared/show';
import { isEnough, type MeasuredOutput } from '../../engine/firm/outputs';
import { enoughIn, isOff, type Rate, rateNow } from '../../engine/firm/rates';
import type { Env } from '../../engine/resolve/env';
import { type Io, paint } from '../io';
import { type Side, table } from './table';

const SIDES: readonly Side[] = [
  'left',
  'right',
  'right',
  'right',
  'left',
  'right',
  'right',
  'left',
];

export function outputsReport(
  measured: readonly MeasuredOutput[],
  envs: readonly Env[],
  folder: string,
  io: Io,
): string[] {
  const [env] = envs;
  const enough = env && enoughIn(env);
  if (!enough || !measured.length)
    return [phrase`${folder}: no job’s record says what was done of a task, and in which hours.`];
  const head = [
    '',
    phrase`jobs`,
    phrase`days`,
    phrase`an hour`,
    phrase`${Math.round(enough.sure * 100)}% sure`,
  ];
  const rows = measured.map((m) => {
    const { low, high } = m;
    const range =
      low === undefined ? phrase`one day only` : phrase`${shown(low)} to ${shown(high!)}`;
    return [
      `${m.task}, ${m.unit}`,
      String(m.jobs),
      String(m.days),
      shown(m.mean),
      range,
      `${shown(m.least, 1)}..${shown(m.most, 1)}`,
      nowText(m, envs),
      offered(m, envs) && isEnough(m, enough) ? '*' : '',
    ];
  });
  return [
    paint(io, 'bold', phrase`What was done in an hour, by each who lays (${folder})`),
    ...table([[...head, phrase`by day`, phrase`reckoned`, ''], ...rows], SIDES),
    '',
    ...notes(
      measured,
      rows.some((row) => row[7] !== ''),
    ),
  ];
}

function notes(measured: readonly MeasuredOutput[], some: boolean): string[] {
  const byDays = measured.some(({ by }) => by === 'days');
  const without = measured.reduce((most, m) => Math.max(most, m.without), 0);
  return [
    phrase`Amounts by hours, a long day counting for more; the range by Student’s t from`,
    phrase`job to job${byDays ? phrase`, with too few jobs from day to day` : ''}. No day is left out for being unlike the others.`,
    ...(without ? [phrase`Jobs where some day of a task has no amount are not in it.`] : []),
    ...(some ? [phrase`* is not what is reckoned with: --write FIRM-FILE takes it over.`] : []),
  ];
}

/** What output lines say now: of the jobs’ settings, where they say the same. */
export function ratesNow(measured: MeasuredOutput, envs: readonly Env[]): Rate[] {
  const found = envs.flatMap((env) => rateNow(measured, env) ?? []);
  return found.filter(
    (rate, i) => found.findIndex((r) => r.low === rate.low && r.high === rate.high) === i,
  );
}

function offered(measured: MeasuredOutput, envs: readonly Env[]): boolean {
  const rates = ratesNow(measured, envs);
  return rates.length > 0 && rates.every((rate) => isOff(measured, rate));
}

function nowText(measured: MeasuredOutput, envs: readonly Env[]): string {
  const [rate, other] = ratesNow(measured, envs);
  if (!rate) return '';
  if (other) return phrase`several`;
  return rate.low === rate.high ? shown(rate.low) : `${shown(rate.low)}..${shown(rate.high)}`;
}

function shown(value: number, fewer = 0): string {
  if (!Number.isFinite(value)) return '?';
  const digits = Math.max(0, (value >= 100 ? 0 : value >= 10 ? 1 : 2) - fewer);
  return showNumber(exact(value), digits, undefined, digits);
}
