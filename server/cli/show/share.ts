/** What a copy for a partner firm holds, and what it does not. */
import type { SharedCopy } from '../../engine/share';
import { type Io, paint } from '../io';
import { hanging } from './changes';

export interface Shared extends Pick<SharedCopy, 'text' | 'left' | 'replaced'> {
  readonly file: string;
  readonly out: string;
  readonly whom: string;
  readonly level: 'costs' | 'money' | 'nothing';
  readonly client: boolean;
}

export function shareReport({ file, out, whom, left, replaced, text }: Shared, io: Io): string {
  const gone = [...left].map(([word, count]) => (count > 1 ? `${word} (${count})` : word));
  const price = /^ {2}agreed +(.+)$/m.exec(left.size ? text : '')?.[1];
  const sections = [
    [paint(io, 'bold', `${file} → ${out}, for ${whom}`)],
    gone.length ? [paint(io, 'bold', 'Not in it'), ...hanging('−', gone.join(', '), 2)] : [],
    replaced.length
      ? [
          paint(io, 'bold', 'Taken out of texts'),
          ...replaced.flatMap((r) => hanging('·', `“${r.before}” → “${r.after}”`, 2)),
        ]
      : [],
    price === undefined ? [] : [`It says what the client pays: ${price}.`],
    left.size ? ['Read it before you send it: names in titles and notes are yours to judge.'] : [],
  ];
  const parts = sections.filter((lines) => lines.length).map((lines) => lines.join('\n'));
  return `${parts.join('\n\n')}\n`;
}
