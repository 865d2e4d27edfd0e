/** What there is to tell of the options of a job. */
import { phrase } from '../../../../shared/phrase';
import type { Work } from '../../brickwork/work';
import { optionsOf } from '../../life/in-option';
import type { PricedOption } from '../../life/priced';
import { targetsIn } from '../../life/targets';
import { MOST_PRICED } from '../../life/variant';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { cautions } from '../cautions';
import type { WorkNames } from '../checks';
import { mixSandy } from '../mortar/mix-sandy';
import { mixWeak } from '../mortar/mix-weak';
import { headOrigin, type Remark } from '../remark';
import { broughtBy } from './brings';
import { optionIdle, stepIdle } from './steps';

/** Lines of one option that change nothing: more of them are not told one by one. */
const MOST_TOLD = 100;

/** Nothing is worked out for a job without options. */
export function optionRemarks(job: Job, names: WorkNames): Remark[] {
  if (!job.optionsWritten.length) return [];
  const known = [...targetsIn(job.file.blocks).keys()].filter(Boolean);
  const named = new Set(job.file.blocks.flatMap(optionsOf));
  const { all, priced } = job.options;
  const idle = all.filter(
    (o) => !o.steps.length && !named.has(o.name) && !o.block.read.faults.length,
  );
  return [
    ...idle.map(optionIdle),
    ...priced.flatMap((option) => [
      ...job.options
        .derived(option.name)
        .troubles.slice(0, MOST_TOLD)
        .map((t) => stepIdle(t, known)),
      ...broughtBy(option, job, names),
    ]),
    ...onlyWith(job, priced),
    ...(all.length > MOST_PRICED ? [tooMany(all[MOST_PRICED]!.block)] : []),
  ];
}

/** Work that is only done with an option is told of like any other, at its own lines. */
function onlyWith(job: Job, priced: readonly PricedOption[]): Remark[] {
  const seen = new Set<SourceBlock>();
  return priced.flatMap(({ name, job: other }) => {
    const works = other.works.filter(
      ({ block }) => optionsOf(block).includes(name) && !seen.has(block),
    );
    for (const { block } of works) seen.add(block);
    return [
      ...works.flatMap((w) => w.remarks),
      ...cautionsOf(works, other, job),
      ...mixWeak(works, job.env),
      ...mixSandy(works, job.env),
    ];
  });
}

/** Those that hold for all work alike are not told once more. */
function cautionsOf(works: readonly Work[], other: Job, { works: all, env }: Job): Remark[] {
  if (!works.length) return [];
  const wallOf = (block: SourceBlock) => other.wallOf(block);
  const told = cautions({ works: [...all, ...works], env, wallOf });
  const own = new Set(works.map((w) => w.block));
  return told.filter((r) => own.has(r.origin.block));
}

function tooMany(block: SourceBlock): Remark {
  return {
    code: 'options-many',
    severity: 'warning',
    origin: headOrigin(block),
    message: phrase`Only the first ${MOST_PRICED} options of a file are priced side by side, and this one and those after it are not: each is the whole job once more.`,
  };
}
