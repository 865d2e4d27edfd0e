/** Options that were accepted and cannot be taken together. */
import { phrase } from '../../../../shared/phrase';
import { exclude, namesIn, type Option } from '../../life/option';
import { recordOf } from '../../life/record';
import { wordIn } from '../../life/step';
import { originOf, wordOf } from '../../resolve/book';
import type { LineFacts } from '../../resolve/env';
import type { Job } from '../../workspace/job';
import type { Remark } from '../remark';

/** Nobody accepts more; each is compared with all before it. */
const MOST = 60;

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
    const before = taken.slice(0, i).filter((each) => each.option !== option);
    const other = before.find((each) => exclude(each.option, option));
    const both = other ? undefined : before.find((each) => sameLine(each.option, option));
    const first = other ?? both;
    if (!first) return [];
    const list = line.values.options;
    const at =
      list?.kind === 'list' ? list.of[namesIn(list).indexOf(option.name)]?.option : undefined;
    return [
      {
        code: 'options-both',
        severity: 'error',
        origin: at ? originOf(line.block, at) : line.origin,
        message: phrase`${whyNot(first.option, option, other === undefined)}: only one of them can be accepted. Take one out.`,
        related: [
          { origin: first.line.origin, message: phrase`Where ${first.option.name} is accepted` },
        ],
      },
    ];
  });
}

function whyNot(a: Option, b: Option, alike: boolean): string {
  return alike
    ? phrase`${a.name} and ${b.name} both change “${sameLine(a, b)}”`
    : phrase`${b.name} stands in place of ${a.name}`;
}

/** What both of them change: then one would undo the other. */
function sameLine(a: Option, b: Option): string | undefined {
  const own = new Set(a.steps.slice(0, MOST).map(changedBy));
  return b.steps
    .slice(0, MOST)
    .map(changedBy)
    .find((what) => own.has(what));
}

function changedBy(step: Option['steps'][number]): string {
  return [wordOf(step.values.what), wordIn(step)].join(' ').trim();
}
