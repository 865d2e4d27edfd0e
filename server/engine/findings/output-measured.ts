/** What a firm’s own output lines say, and what its past jobs show instead. */
import { phrase } from '../../../shared/phrase';
import { isEnough, type MeasuredOutput } from '../firm/outputs';
import { enoughIn, isOff, type Rate, rateNow, rateText } from '../firm/rates';
import { originOf } from '../resolve/book';
import type { Origin } from '../working/term';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { headOrigin, lineAfter, type Remark, type RemarkEdit } from './remark';

/** Of a firm’s file with an output block, once somebody has looked through its jobs. */
export function outputMeasured(job: Job): Remark[] {
  const block = job.file.blocks.find((b) => b.kind === 'output');
  const enough = block && enoughIn(job.env);
  if (!enough) return [];
  return job.pastOutputs
    .filter((measured) => isEnough(measured, enough))
    .flatMap((measured) => remarkOf(measured, block, enough.sure, job));
}

function remarkOf(measured: MeasuredOutput, block: SourceBlock, sure: number, job: Job): Remark[] {
  const rate = rateNow(measured, job.env);
  if (!rate || !isOff(measured, rate)) return [];
  const own = rate.found.block.file === job.file;
  return [
    {
      code: 'output-measured',
      severity: 'information',
      origin: own ? amountOrigin(rate) : headOrigin(block),
      message: messageOf(measured, rate, sure, own),
      ways: waysOf(measured, (text) => editOf(text, measured, rate, own ? undefined : block)),
    },
  ];
}

/** From the amount to the hour or the day. */
function amountOrigin({ found: { line, block } }: Rate): Origin {
  const { amount, unit } = line.values;
  const at = originOf(block, amount!);
  return { block, span: { ...at.span, end: unit?.span.end ?? at.span.end } };
}

function messageOf(measured: MeasuredOutput, rate: Rate, sure: number, own: boolean): string {
  const { task, unit, days, jobs, mean } = measured;
  const now = [...new Set([rateText(rate.low), rateText(rate.high)])].join('..');
  const source = own
    ? phrase`this line reckons with`
    : phrase`no line here says it, and the library has`;
  return phrase`${days} days in ${jobs} jobs came to ${rateText(mean)} ${unit} an hour of ${task}, ${Math.round(sure * 100)}% sure between ${endsText(measured)}; ${source} ${now}. Every job’s hours hang on it.`;
}

function endsText(measured: MeasuredOutput): string {
  return phrase`${rateText(measured.low!)} and ${rateText(measured.high!)}`;
}

function waysOf(measured: MeasuredOutput, edit: (text: string) => RemarkEdit) {
  const { unit, mean, low, high } = measured;
  const one = `${rateText(mean, measured)} ${unit} per h`;
  const [from, to] = [rateText(Math.max(low!, 0.01)), rateText(high!)];
  const range = `${from}..${to} ${unit} per h`;
  const way = (text: string, preferred = false) => ({
    title: phrase`Reckon with ${text}`,
    preferred,
    edits: [edit(text)],
  });
  return [way(one, true), ...(Number(from) < Number(to) ? [way(range)] : [])];
}

/** Written over the line’s own, or as a line of its own under the heading. */
function editOf(
  text: string,
  { task }: MeasuredOutput,
  rate: Rate,
  block: SourceBlock | undefined,
): RemarkEdit {
  if (!block) return { ...amountOrigin(rate), text };
  const { heading } = block.read.syntax;
  return lineAfter(block, heading!.span.line, `  ${task} ${text}`);
}
