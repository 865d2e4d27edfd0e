/** The footing of a wall: a strip, and the laps where the ground under it steps. */

import { phrase } from '../../../../../shared/phrase';
import type { Remark } from '../../../findings/remark';
import { footingNarrow } from '../../../findings/tops/footing-narrow';
import { footingPiers } from '../../../findings/tops/footing-pier';
import { footingStep } from '../../../findings/tops/footing-step';
import { defaultLine, type LineFacts } from '../../../resolve/env';
import { type FootingStep, footingSteps, lapVolume } from '../../../setting-out';
import { sum, type Term } from '../../../working/term';
import { lengthText, unitNames, volumeShown } from '../../lengths';
import { type Masonry, thicknessOf } from '../../masonry';
import type { MixNeed } from '../../needs';
import { footingOf } from '../../tops/footing';
import { deepBehind } from '../parts/backing/lay';
import type { WallPlan } from '../spec';
import { type Meets, stripLength } from './footing-meets';

/** Concrete under a wall, litres, with its laps where it steps; nothing where no line says a footing. */
export function wallFooting(
  masonry: Masonry,
  plan: WallPlan,
  length: Term,
  meets: Meets,
): MixNeed | undefined {
  const strip = footingOf(masonry.facts, masonry.env, stripLength(masonry, plan, length, meets));
  const laps = strip && lapsOf(masonry, plan);
  if (!strip || !laps) return strip;
  const litres = sum(phrase`Concrete`, unitNames(masonry.env).volume, [strip.litres, laps]);
  return { ...strip, litres };
}

/** Steps of the footing, for a strip whose width and depth are said. */
function stepsOf({ facts, env }: Masonry, plan: WallPlan): FootingStep[] {
  const depth = facts.line('footing')?.sides('size')?.[1];
  if (depth === undefined || plan.ground.length < 2) return [];
  const rule = defaultLine(env, 'footing-lap');
  const lap = { times: rule?.number('times') ?? 0, least: rule?.number('least') ?? 0 };
  const { unit, joints } = plan.spec;
  return footingSteps(plan.ground, unit.height + joints.bed, depth, lap);
}

function lapsOf(masonry: Masonry, plan: WallPlan): Term | undefined {
  const { env, facts } = masonry;
  const line = facts.line('footing')!;
  const steps = stepsOf(masonry, plan);
  if (!steps.length) return undefined;
  const width = line.sides('size')![0]!;
  const detail = () =>
    steps.map(
      ({ at, high, lap }) =>
        phrase`at ${lengthText(env, at)}: a lap of ${lengthText(env, lap)}, ${lengthText(env, high)} high`,
    );
  const rule = defaultLine(env, 'footing-lap');
  const args = rule
    ? [rule.term('times', phrase`steps to a lap`), rule.term('least', phrase`least lap`)]
    : [];
  const note = phrase`the greatest of so many steps, the thickness of the footing and the least lap`;
  const volume = lapVolume(steps, width);
  return volumeShown(env, phrase`Laps where it steps`, volume, { note, detail, args });
}

export function footingRemarks(masonry: Masonry, plan: WallPlan): Remark[] {
  const line = masonry.facts.line('footing');
  const sides = line?.sides('size');
  if (!line || !sides) return [];
  const { spec } = plan;
  const thick = thicknessOf(spec.thickness, spec.unit, spec.joints.perpend);
  const through = thick + deepBehind(masonry, spec.joints.perpend);
  const found = [
    footingStep(line, sides, stepsOf(masonry, plan), masonry.env),
    footingNarrow(masonry.facts, [through], masonry.env),
  ];
  return [
    ...found.filter((remark): remark is Remark => remark !== undefined),
    ...underPiers(line, sides, through, masonry, plan),
  ];
}

/** Where it is no narrower than its wall: that is told first. */
function underPiers(
  line: LineFacts,
  [width = 0, depth = 0]: readonly number[],
  wall: number,
  { facts, env }: Masonry,
  plan: WallPlan,
): Remark[] {
  if (width < wall) return [];
  const meets = (['left', 'right'] as const).filter((side) =>
    /^(quoin|tee)$/.test(facts.line(side)?.word('end') ?? ''),
  );
  return footingPiers({ line, env, width, depth, wall }, plan, meets);
}
