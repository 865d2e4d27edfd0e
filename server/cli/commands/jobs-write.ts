/** What past jobs show, written into a firm's file: the way out of each finding that offers it. */
import { phrase } from '../../../shared/phrase';
import type { MeasuredOutput } from '../../engine/firm/outputs';
import type { Workspace } from '../../engine/workspace/workspace';
import { WrongUse } from '../exits';
import { readText } from '../files/read';
import { applied } from '../files/text-edits';
import { writeWhole } from '../files/write';
import type { Io } from '../io';

export function writeOutputs(
  name: string,
  shown: string,
  measured: readonly MeasuredOutput[],
  workspace: Workspace,
  io: Io,
): void {
  workspace.pastOutputs = (file) => (file === name ? measured : []);
  const text = readText(name, shown);
  workspace.opened(name, text);
  const job = workspace.job(name);
  if (!job?.file.blocks.some((block) => block.kind === 'output'))
    throw new WrongUse(phrase`${shown} has no output block that could be written in.`);
  const found = job.findings.filter(({ code }) => code === 'output-measured');
  const edits = found.flatMap(({ ways }) => ways[0]?.edits ?? []);
  if (edits.length) writeWhole(name, applied(text, edits), shown);
  for (const { message } of found) io.out(`${shown}: ${message}\n`);
  const lines = edits.length === 1 ? phrase`1 line` : phrase`${edits.length} lines`;
  io.out(
    edits.length ? phrase`${lines} written into ${shown}\n` : phrase`${shown} needs no change.\n`,
  );
}
