/** Where bricks on edge run: the top of the wall between whatever interrupts it, and the tops of piers. */

import { capFor } from '../../findings/cap-overhang';
import type { RunInText } from '../../findings/fit';
import type { RemarkWay } from '../../findings/remark';
import { type BlockFacts, defaultLine } from '../../resolve/env';
import { fitCoping } from '../../setting-out';
import type { CopingRun } from '../coping';
import { sizeText } from '../lengths';
import { limitsOf, type Masonry, thicknessOf } from '../masonry';
import type { PierFacts, WallPlan } from './spec';

export function copingRuns(masonry: Masonry, plan: WallPlan): CopingRun[] {
  const line = masonry.facts.line('coping');
  const onWall = line?.word('kind') === 'brick-on-edge' ? wallRuns(masonry, plan) : [];
  return [...onWall, ...plan.piers.flatMap((p) => pierCoping(p.facts, p, masonry))];
}

/** Piers interrupt the coping, unless they are as high as the wall and have no top of their own. */
function wallRuns(masonry: Masonry, plan: WallPlan): CopingRun[] {
  const { spec } = plan;
  const gaps = spec.openings
    .filter((o) => o.top === null)
    .map((o) => ({ from: o.from, to: o.from + o.width, joint: 0 }));
  const piers = plan.piers
    .filter((p) => interrupts(p, spec.courses))
    .map((p) => ({ from: p.spec.from, to: p.spec.from + p.spec.width, joint: 1 }));
  const stops = [...gaps, ...piers].sort((a, b) => a.from - b.from);
  const stretches: { from: number; to: number; joints: number }[] = [];
  let at = 0;
  let joint = spec.left === 'stopped' ? 0 : 1;
  for (const stop of [
    ...stops,
    { from: spec.length, to: spec.length, joint: spec.right === 'stopped' ? 0 : 1 },
  ]) {
    if (stop.from > at) stretches.push({ from: at, to: stop.from, joints: joint + stop.joint });
    if (stop.to > at) at = stop.to;
    joint = stop.joint;
  }
  const line = masonry.facts.line('coping')!;
  return stretches.map((s, i) => ({
    from: s.from,
    to: s.to,
    endJoints: Math.min(2, s.joints) as 0 | 1 | 2,
    on: spec.courses,
    halves: spec.thickness,
    origin: line.origin,
    text: {
      name: stretches.length > 1 ? `coping-${i + 1}` : 'coping',
      home: masonry.facts,
      pieces: 'bricks on edge',
    },
  }));
}

function interrupts(pier: PierFacts, courses: number): boolean {
  const ownTop = pier.facts.line('cap') ?? pier.facts.line('coping');
  return pier.spec.courses !== courses || ownTop !== undefined;
}

/** A pier’s own bricks on edge, along its face. */
export function pierCoping(
  facts: BlockFacts,
  pier: Pick<PierFacts, 'spec' | 'halves'>,
  masonry: Masonry,
): CopingRun[] {
  const line = facts.line('coping');
  if (line?.word('kind') !== 'brick-on-edge') return [];
  const { from, width, courses } = pier.spec;
  const text: RunInText = {
    name: 'coping',
    home: facts,
    pieces: 'bricks on edge',
    others: () => otherSizes(facts, pier, masonry),
    cap: () => capInstead(facts, [width, pier.spec.depth], masonry),
  };
  return [
    {
      from,
      to: from + width,
      endJoints: 0,
      on: courses,
      halves: pier.halves,
      origin: line.origin,
      text,
      cap: true,
    },
  ];
}

/** Sizes in half bricks that a pier is built in. */
const SIZES = [2, 3, 4, 5];

/** The nearest sizes of pier, smaller and larger, on which whole bricks on edge work. */
function otherSizes(
  facts: BlockFacts,
  pier: Pick<PierFacts, 'spec' | 'halves'>,
  masonry: Masonry,
): RemarkWay[] {
  const line = facts.line('size');
  const unit = masonry.brick.size!;
  const joint = masonry.jointTerms.perpend.value.toNumber();
  const limits = limitsOf(masonry.env, 'joints-accepted', masonry.jointTerms.perpend);
  if (!line) return [];
  const now = Math.round((2 * (pier.spec.width + joint)) / (unit.length + joint));
  const works = SIZES.flatMap((halves) => {
    const length = thicknessOf(halves, unit, joint);
    const { fit } = fitCoping({ unit, length, thickness: 2, endJoints: 0, limits });
    return fit.works === 'no' || halves === now ? [] : [{ halves, bricks: fit.pieces.wholes }];
  });
  const near = [works.filter((w) => w.halves < now).at(-1), works.find((w) => w.halves > now)];
  return near.flatMap((size) => {
    if (!size) return [];
    const text = `${size.halves / 2} x ${pier.halves / 2} bricks`;
    return [
      {
        title: `Another size of pier, ${text}: ${size.bricks} bricks on edge`,
        edits: [{ ...line.at('size'), text }],
      },
    ];
  });
}

/** A cap that reaches over the pier as far as the library says, in place of the coping line. */
function capInstead(
  facts: BlockFacts,
  faces: readonly number[],
  masonry: Masonry,
): RemarkWay | undefined {
  const line = facts.line('coping')!;
  const reach = defaultLine(masonry.env, 'coping-overhang')?.number('length');
  if (reach === undefined || facts.line('cap')) return undefined;
  const text = `cap ${sizeText(masonry.env, capFor(faces, reach))}`;
  const edits = [{ block: line.block, span: line.line.syntax.span, text }];
  return { title: `A ${text.replace('cap', 'cap of')} instead of bricks on edge`, edits };
}
