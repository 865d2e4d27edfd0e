/** What became of a past job on the way into the next one. */
import { phrase } from '../../../shared/phrase';
import type { Comparison } from '../../engine/compare';
import type { Fixed } from '../../engine/life/agreed';
import type { NextJob } from '../../engine/life/next';
import { showTerm } from '../../engine/views/show';
import { type Io, paint } from '../io';
import { hanging } from './changes';
import { moved } from './moved';
import { table } from './table';

export function nextReport(
  { cleared, rates }: NextJob,
  found: Comparison,
  sent: Fixed | undefined,
  { file, out }: { readonly file: string; readonly out: string },
  io: Io,
): string {
  const { before } = found;
  const options = [...before.taken];
  const sections = [
    [paint(io, 'bold', `${file} → ${out}`), ...optionLines(options)],
    titled(
      phrase`Cleared`,
      cleared.flatMap(({ text }) => hanging('−', text, 2)),
      io,
    ),
    titled(
      phrase`Rates brought up to the firm’s`,
      rates.flatMap((r) => hanging('·', `${r.what} ${r.was} → ${r.now}`, 2)),
      io,
    ),
    titled(phrase`Price`, priceLines(found, sent), io),
    titled(phrase`What moved it, the biggest first`, moved(found), io),
  ];
  const text = sections.filter((lines) => lines.length).map((lines) => lines.join('\n'));
  return `${text.join('\n\n')}\n`;
}

function optionLines(options: readonly string[]): string[] {
  return options.length ? [phrase`Written into it, as accepted: ${options.join(', ')}.`] : [];
}

function titled(title: string, lines: readonly string[], io: Io): string[] {
  return lines.length ? [paint(io, 'bold', title), ...lines] : [];
}

function priceLines({ before, after, money }: Comparison, sent: Fixed | undefined): string[] {
  if (!before.isJob || !after.isJob) return [];
  const sentRow = sent
    ? [[`${sent.how} ${sent.entry.date}`, showTerm(sent.entry.amount, before.env)]]
    : [];
  const rows = [
    ...sentRow,
    [phrase`the past job by its text, at today’s rates`, showTerm(before.price.total, before.env)],
    [phrase`the next job`, showTerm(after.price.total, after.env)],
  ];
  const same = money?.total.difference.isZero() ? [phrase`  It comes to the same.`] : [];
  return [...table(rows, ['left', 'right']), ...same];
}
