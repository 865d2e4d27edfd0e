/** What a copy for a partner firm holds, and what it does not. */
import { phrase } from '../../../shared/phrase';
import { type Level, type PartnerCopy, priceTold } from '../../engine/share/partner';
import { type Io, paint } from '../io';
import { hanging } from './changes';

export interface Shared extends PartnerCopy {
  readonly file: string;
  readonly out: string;
  readonly whom: string;
  readonly level: Level;
  readonly client: boolean;
}

export function shareReport(shared: Shared, io: Io): string {
  const { file, out, whom, left, replaced } = shared;
  const gone = [...left].map(([word, count]) => (count > 1 ? `${word} (${count})` : word));
  const price = priceTold(shared);
  const sections = [
    [paint(io, 'bold', phrase`${file} → ${out}, for ${whom}`)],
    gone.length ? [paint(io, 'bold', phrase`Not in it`), ...hanging('−', gone.join(', '), 2)] : [],
    replaced.length
      ? [
          paint(io, 'bold', phrase`Taken out of texts`),
          ...replaced.flatMap((r) => hanging('·', `“${r.before}” → “${r.after}”`, 2)),
        ]
      : [],
    price === undefined ? [] : [phrase`It says what the client pays: ${price}.`],
    left.size
      ? [phrase`Read it before you send it: names in titles and notes are yours to judge.`]
      : [],
  ];
  const parts = sections.filter((lines) => lines.length).map((lines) => lines.join('\n'));
  return `${parts.join('\n\n')}\n`;
}
