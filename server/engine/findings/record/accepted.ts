/** Options that were accepted and cannot be taken together. */
import { exclude, namesIn, type Option } from '../../life/option';
import { recordOf } from '../../life/record';
import { originOf } from '../../resolve/book';
import type { LineFacts } from '../../resolve/env';
import type { Job } from '../../workspace/job';
import type { Remark } from '../remark';

/** Nobody accepts more; each is compared with all before it. */
const MOST = 200;

interface Taken {
  readonly option: Option;
  readonly line: LineFacts;
}

export function acceptedBoth(job: Job): Remark[] {
  const all = recordOf(job).accepted;
  const taken = all
    .flatMap(({ options, line }) =>
      options.map((name) => ({ option: job.options.named(name), line })),
    )
    .filter((each): each is Taken => each.option !== undefined)
    .slice(0, MOST);
  return taken.flatMap(({ option, line }, i): Remark[] => {
    const other = taken.slice(0, i).find((before) => exclude(before.option, option));
    if (!other) return [];
    const list = line.values.options;
    const at =
      list?.kind === 'list' ? list.of[namesIn(list).indexOf(option.name)]?.option : undefined;
    return [
      {
        code: 'options-both',
        severity: 'error',
        origin: at ? originOf(line.block, at) : line.origin,
        message: `${option.name} stands in place of ${other.option.name}: only one of them can be accepted. Take one out.`,
        related: [{ origin: other.line.origin, message: `Where ${other.option.name} is accepted` }],
      },
    ];
  });
}
