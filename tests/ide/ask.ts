/** A question at the cursor of a marked text, asked of the engine. */
import type { Position } from '../../server/engine/ide/types';
import type { Job } from '../../server/engine/workspace/job';
import { type Files, jobOf } from '../engine/world';
import { parseMarks } from '../harness/marks';

/** An invented firm: enough for a wall to be priced. */
export const FIRM = `perpend 1
use uk
brick red "Harwick red"
  size   215 x 102.5 x 65 mm
  joint  10 mm
  gauge  4 courses 300 mm
  price  £1 each
  waste  0%
material cement
  pack  25 kg bag at £6
material lime
  pack  25 kg bag at £9
material sand
  pack  850 kg bag at £50
material ballast
  pack  850 kg bag at £50
labour
  bricklayer  £30 per h
  labourer    £16 per h
  gang        1 bricklayer + 1 labourer
output
  facework  60 bricks per h
`;

export const FILES: Files = { 'firm.perp': FIRM };

export interface Asked {
  readonly job: Job;
  readonly at: Position;
  readonly text: string;
}

/** The job of a marked text, and where its cursor is. @throws when it has no cursor */
export function asked(marked: string, files: Files = FILES): Asked {
  const { text, cursor } = parseMarks(marked);
  if (!cursor) throw new Error('There is no cursor in the text.');
  return { job: jobOf(text, files), at: cursor, text };
}

export function job(marked: string, files: Files = FILES): Job {
  return jobOf(parseMarks(marked).text, files);
}

/** No-break spaces as plain ones. */
export function spaced(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}
