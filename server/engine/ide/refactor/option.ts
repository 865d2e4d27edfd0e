/** An option of a line: what if it were otherwise? */

import { phrase } from '../../../../shared/phrase';
import type { Action } from '../types';
import { type At, change, plainly } from './at';

/** Lines that say nothing of the work itself. */
const NOT_OFFERED: ReadonlySet<string> = new Set(['option', 'note', 'says', 'by', 'fit', 'photo']);

/** Written at the end of the file, its name and value to fill in. */
export function asOption({ job, spot, line, fills }: At): Action[] {
  const { block, parents } = spot;
  const worked = ['wall', 'pier', 'repair'].includes(block.kind ?? '') && parents.length === 1;
  if (!fills || !worked || !block.name || NOT_OFFERED.has(line.kind.key) || line.body.length)
    return [];
  const { key } = line.kind;
  const words = block.lines[spot.line]!.replace(/#.*$/, '').trim().slice(key.length).trim();
  if (!words || /[^\p{L}\p{N}-]/u.test(block.name)) return [];
  const option = `option \${1:other} "\${2:${plainly(key)}}"\n  change  ${block.name} ${key} \${3:${plainly(words)}}`;
  const last = job.file.lines.length - 1;
  const end = job.file.lines[last]!.length;
  const above = end ? '\n\n' : last > 0 && job.file.lines[last - 1] ? '\n' : '';
  const edit = {
    place: { file: job.file.name, line: last, start: end, end },
    text: `${above}${option}\n`,
  };
  const title = phrase`Offer another ${key} as an option`;
  return [{ ...change('refactor.extract', title, [edit]), fills }];
}
