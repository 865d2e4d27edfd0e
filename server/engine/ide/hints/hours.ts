/** Behind lines of a piece of work that take time of their own: the hours of the gang. */
import { sum } from '../../working/term';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { behind, type MadeHint, shown } from './made';

/** A line’s word is that of its task. Where several lines have the word, nobody can say which of them takes how long. */
export function hourHints(block: SourceBlock, home: Job): MadeHint[] {
  const work = home.workAt(block);
  if (!work) return [];
  const { body } = block.read.heading!;
  const lines = [...body, ...body.flatMap((line) => line.body)];
  return lines.flatMap((line): MadeHint[] => {
    const { key } = line.kind;
    if (lines.filter((other) => other.kind.key === key).length > 1) return [];
    const tasks = work.needs.tasks.filter(({ task }) => task === key).map((t) => t.hours);
    const hours = tasks.length === 1 ? tasks[0]! : sum(key, 'h', tasks);
    if (hours.value.isZero() || hours.gaps.length) return [];
    return [{ ...behind(line), kind: 'hours', parts: [shown(hours, home.env)] }];
  });
}
