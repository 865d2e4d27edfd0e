/** What was taken from a partner’s file, and what was not. */
import { phrase } from '../../../shared/phrase';
import type { Taken } from '../../engine/share/take';
import { type Io, paint } from '../io';
import { hanging } from './changes';

export interface Told extends Taken {
  readonly file: string;
  readonly from: string;
  readonly written: boolean;
}

export function takeReport({ file, from, edits, refused, ours, written }: Told, io: Io): string {
  const lines = edits.flatMap(({ block, under, change, before, after }) => {
    const said = before === undefined ? after : `${before} → ${after}`;
    return hanging(change === 'new' ? '+' : '·', `${[block, ...under].join(', ')}: ${said}`, 2);
  });
  const head = `${from} → ${file}${written ? '' : phrase`, not written`}`;
  const sections = [
    [paint(io, 'bold', head), ...(lines.length ? lines : [phrase`Nothing to take.`])],
    ours.length
      ? [
          paint(io, 'bold', phrase`Only ours, and stays`),
          ...ours.flatMap((line) => hanging('·', line, 2)),
        ]
      : [],
    refused
      ? [phrase`${refused} of their lines are not taken: rates, or something is left out of them.`]
      : [],
  ];
  const parts = sections.filter((each) => each.length).map((each) => each.join('\n'));
  return `${parts.join('\n\n')}\n`;
}
