/** Bricks of one pier: its own, its damp course, its coping. */
import { phrase } from '../../../../shared/phrase';
import { idleFits } from '../../findings/fit/fit-idle';
import type { Remark } from '../../findings/remark';
import { type Bats, type PierPlan, type Tally, tallyPier } from '../../setting-out';
import type { Term } from '../../working/term';
import { type Counted, countBricks, heightTerms } from '../count';
import { batsOf } from '../cuts/bats';
import type { TopRun } from '../faces';
import { jointsIn, type Masonry } from '../masonry';
import { besideRemarks, besideRun, besideStanding } from '../standing/beside';
import { countCoping } from '../tops/coping';
import { type CopingBricks, copingBricks } from '../tops/coping-bricks';
import { type Height, heightRun } from '../wall/height';
import { pierCoping } from '../wall/piers/pier-coping';
import { planText } from './pier-text';
import type { Plan } from './plan';
import { sideTerms } from './plan-terms';

export interface PierCounts {
  /** The facts it was laid from. */
  readonly inputs: readonly Term[];
  readonly pier: Counted;
  readonly dpc: Counted | undefined;
  readonly coping: CopingBricks | undefined;
  readonly tops: readonly TopRun[];
  readonly tallies: readonly Tally[];
}

export function countPier(
  masonry: Masonry,
  spec: PierPlan,
  plan: Plan,
  height: Height,
  remarks: Remark[],
): PierCounts {
  const unit = masonry.brick.size!;
  const joints = { bed: height.bed, perpend: jointsIn(masonry)!.perpend };
  const inputs = [...heightTerms(height, masonry), ...sideTerms(masonry.facts)];
  const count = (
    label: string,
    tally: Tally,
    how?: () => string[],
    cutOnEdge = 0,
    bats?: readonly Bats[],
  ) => countBricks(label, [tally], masonry, inputs, how, cutOnEdge, bats && (() => bats));
  const damp = Math.min(
    spec.courses,
    Math.floor(masonry.facts.line('dpc')?.number('courses') ?? 0),
  );
  const pier = count(
    phrase`Bricks in one pier`,
    tallyPier(spec, unit, joints, { from: damp, to: null }),
    () => planText(spec, plan),
    0,
    batsOf(masonry, masonry.facts.line('number')?.number('number')),
  );
  const dpc = damp
    ? count(phrase`Bricks in the damp course`, tallyPier(spec, unit, joints, { from: 0, to: damp }))
    : undefined;
  const runs = pierCoping(
    masonry.facts,
    { spec: { ...spec, from: 0 }, halves: plan.halves },
    masonry,
  ).map((r) => ({ run: r, ...countCoping(r, masonry, remarks) }));
  const tops = runs.map((r) => ({ name: r.run.text.name, open: !r.works }));
  const beside = besideStanding(masonry, height.term);
  remarks.push(...besideRemarks(beside, masonry));
  remarks.push(...idleFits(masonry.facts, [...tops, heightRun(height), ...besideRun(beside)]));
  const [coping] = copingBricks(runs, masonry, inputs);
  const tallies = [pier, dpc, coping?.counted]
    .filter((c): c is Counted => c !== undefined)
    .map((c) => c.tally);
  return { inputs, pier, dpc, coping, tops: runs.map((r) => r.top), tallies };
}
