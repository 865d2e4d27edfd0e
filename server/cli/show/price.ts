/** A job's figures for the one who does it. */

import { phrase } from '../../../shared/phrase';
import type { BlockView, FigureView } from '../../../shared/views';
import { wordOf } from '../../engine/resolve/book';
import { toFindOut } from '../../engine/views/find-out';
import { jobView } from '../../engine/views/job-view';
import { unmeasuredIn } from '../../engine/views/measure';
import type { Job } from '../../engine/workspace/job';
import { type Io, paint } from '../io';
import type { Opened, Session } from '../session';
import { tally, usedLines } from './findings';
import { buying } from './money';
import { leftOver, mixing } from './mortar';
import { optionTable, takenText } from './options';
import { leaving, paying, staging } from './paying';
import { numberAndUnit, table } from './table';
import { wrapped } from './width';

/** Lines of the report, without a newline after the last. */
export function priceReport(opened: Opened, session: Session, io: Io): string {
  const { job, shown } = opened;
  if (!job.isJob)
    return [phrase`${shown} holds no work to price.`, ...foot(opened, session), ''].join('\n');
  const sections = [
    heading(opened, io),
    ...jobView(job).blocks.map((block) => blockSection(block, io)),
    titled(phrase`To buy`, buying(job), io),
    titled(phrase`Mortar`, mixing(job), io),
    titled(phrase`Left over`, leftOver(job), io),
    titled(phrase`Price`, paying(job, io), io),
    titled(phrase`What it leaves`, leaving(job), io),
    titled(phrase`Paid in stages`, staging(job), io),
    titled(phrase`Options`, optionTable(job), io),
    gaps(job, io),
    foot(opened, session),
  ];
  return `${sections
    .filter((lines) => lines.length)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

function titled(title: string, lines: readonly string[], io: Io): string[] {
  return lines.length ? [paint(io, 'bold', title), ...lines] : [];
}

function heading({ job, shown }: Opened, io: Io): string[] {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  const values = block?.read.heading?.body ?? [];
  const said = (key: string) =>
    values.flatMap((line) => (line.kind.key === key && wordOf(line.values[key])) || []);
  const title = wordOf(block?.read.heading?.values.title) || shown;
  const about = [...said('client'), ...said('site')].join(', ');
  const paper = [...said('ref').map((ref) => phrase`ref ${ref}`), ...said('date'), shown].join(
    ', ',
  );
  const taken = takenText(job);
  return [paint(io, 'bold', title), about, title === paper ? '' : paper, taken].filter(Boolean);
}

function blockSection(block: BlockView, io: Io): string[] {
  const name = block.title === block.name ? '' : ` (${block.kind} ${block.name})`;
  const title = block.title === block.name ? `${block.kind} ${block.name}`.trim() : block.title;
  const rows = block.figures.map(figureRow);
  return [`${paint(io, 'bold', title)}${name}`, ...table(rows, ['left', 'right', 'left', 'left'])];
}

function figureRow(figure: FigureView): string[] {
  if (figure.complete) return [figure.label, ...numberAndUnit(figure.text), ''];
  // Nothing known yet is a question mark, never a nought.
  const known = Number(figure.value) === 0 ? ['?', ''] : numberAndUnit(figure.text);
  return [figure.label, ...known, 'incomplete'];
}

function gaps(job: Job, io: Io): string[] {
  const missing = [...new Set(job.price.total.gaps.map((g) => g.what))];
  if (!missing.length) return [];
  const lines = missing.flatMap((what) => {
    const [first = '', ...rest] = wrapped(what, 74);
    return [`  - ${first}`, ...rest.map((line) => `    ${line}`)];
  });
  return [paint(io, 'yellow', phrase`The price is INCOMPLETE. It still lacks:`), ...lines];
}

function foot({ job, shown }: Opened, session: Session): string[] {
  const found = tally(job.findings);
  const file = shown === '<stdin>' ? '-' : shown;
  const lines = [
    ...(found ? [phrase`${found}: perpend check ${file}`] : []),
    ...usedLines(job, session),
  ];
  if (!job.isJob) return lines;
  return [
    ...lines,
    ...open(job, file),
    phrase`How a figure came about: perpend why ${file} job.price`,
  ];
}

/** Where something is a range or not measured and the price hangs on it, or a caution asks for what no line says. */
function open(job: Job, file: string): string[] {
  if (!job.spread && !unmeasuredIn(job).length && !toFindOut(job).length) return [];
  return [phrase`What to measure before you price: perpend measure ${file}`];
}
