/** The line of a record that says what was sent last, to be found again in texts of another day. */
import type { SourceFile } from '../workspace/source';
import { type SaidLine, saidBlock } from './said';

/** The last `sent` line of a job’s record; nothing where nothing was sent. */
export function lastSent(file: SourceFile): SaidLine | undefined {
  return sentLines(file).at(-1);
}

/** Whether a text has that line. */
export function sentIn(sent: SaidLine, file: SourceFile): boolean {
  return sentLines(file).some((line) => line.means === sent.means);
}

/** By day, as the record is read; of one day as written. */
function sentLines(file: SourceFile): SaidLine[] {
  return file.blocks
    .filter((block) => block.kind === 'record')
    .flatMap((block) => saidBlock(block)?.body ?? [])
    .filter((line) => line.key === 'sent')
    .sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : 0));
}

function dayOf({ items }: SaidLine): string {
  const day = items.find((item) => item.kind === 'date');
  return day?.text ?? '';
}
