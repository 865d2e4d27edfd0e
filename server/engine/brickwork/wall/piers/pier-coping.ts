/** Bricks on edge or on end over a pier, along its face, and what else might cover it. */

import { phrase } from '../../../../../shared/phrase';
import type { RunInText } from '../../../findings/fit/fit';
import type { RemarkWay } from '../../../findings/remark';
import { capFor } from '../../../findings/tops/cap-overhang';
import { type BlockFacts, defaultLine, type Env } from '../../../resolve/env';
import { fitRun, MOST_HALVES } from '../../../setting-out';
import { ownMix } from '../../apart';
import { sizeText } from '../../lengths';
import { limitsOf, type Masonry, thicknessOf } from '../../masonry';
import type { CopingRun } from '../../tops/coping';
import { bricksMade, type CopingMade } from '../../tops/coping-made';
import type { WallPlan } from '../spec';
import type { PierFacts } from './placed';

/** Those of the piers in a wall. */
export function pierRuns(masonry: Masonry, plan: WallPlan): CopingRun[] {
  return plan.piers.flatMap((p) => pierCoping(p.facts, p, masonry));
}

/** A pier’s own bricks on edge, along its face. */
export function pierCoping(
  facts: BlockFacts,
  pier: Pick<PierFacts, 'spec' | 'halves'>,
  masonry: Masonry,
): CopingRun[] {
  const line = facts.line('coping');
  const kind = line?.word('kind');
  if (!line || (kind !== 'brick-on-edge' && kind !== 'brick-on-end')) return [];
  const made = bricksMade(line, pier.halves, masonry, kind === 'brick-on-end' ? 'end' : 'edge');
  if (!made) return [];
  const { from, width, courses, base = 0 } = pier.spec;
  const text: RunInText = {
    name: 'coping',
    home: facts,
    pieces: made.pieces,
    others: () => otherSizes(facts, pier, made, masonry),
    cap: () => capInstead(facts, [width, pier.spec.depth], made, masonry),
  };
  return [
    {
      from,
      to: from + width,
      endJoints: 0,
      on: base + courses,
      made,
      mix: ownMix(line, masonry),
      origin: line.origin,
      text,
      cap: true,
    },
  ];
}

/** Widths in half bricks that piers are built in, as the library says. */
function widthsIn(env: Env): number[] {
  const value = defaultLine(env, 'pier-widths')?.values.widths;
  if (value?.kind !== 'quantity') return [];
  const [low, high] = [value.low, value.high ?? value.low].map((v) => 2 * v.toNumber());
  return Array.from({ length: MOST_HALVES }, (_, i) => i + 1).filter(
    (n) => n >= low! && n <= high!,
  );
}

/** The nearest sizes of pier, smaller and larger, on which whole bricks on edge work. */
function otherSizes(
  facts: BlockFacts,
  pier: Pick<PierFacts, 'spec' | 'halves'>,
  made: CopingMade,
  masonry: Masonry,
): RemarkWay[] {
  const line = facts.line('size');
  const unit = masonry.brick.size!;
  const joint = masonry.jointTerms.perpend.value.toNumber();
  const limits = limitsOf(masonry.env, 'joints-accepted', masonry.jointTerms.perpend);
  if (!line) return [];
  const now = Math.round((2 * (pier.spec.width + joint)) / (unit.length + joint));
  const works = widthsIn(masonry.env).flatMap((halves) => {
    const length = thicknessOf(halves, unit, joint);
    const fit = fitRun({ length, piece: made.along, half: null, endJoints: 0, limits });
    return fit.works === 'no' || halves === now ? [] : [{ halves, bricks: fit.pieces.wholes }];
  });
  const near = [works.filter((w) => w.halves < now).at(-1), works.find((w) => w.halves > now)];
  return near.flatMap((size) => {
    if (!size) return [];
    const text = `${size.halves / 2} x ${pier.halves / 2} bricks`;
    return [
      {
        title: phrase`Another size of pier, ${text}: ${size.bricks} ${made.pieces}`,
        edits: [{ ...line.at('size'), text }],
      },
    ];
  });
}

/** A cap that reaches over the pier as far as the library says, in place of the coping line. */
function capInstead(
  facts: BlockFacts,
  faces: readonly number[],
  made: CopingMade,
  masonry: Masonry,
): RemarkWay | undefined {
  const line = facts.line('coping')!;
  const reach = defaultLine(masonry.env, 'coping-overhang')?.number('length');
  if (reach === undefined || facts.line('cap')) return undefined;
  const size = sizeText(masonry.env, capFor(faces, reach, masonry.env));
  const text = `cap ${size}`;
  const edits = [{ block: line.block, span: line.line.syntax.span, text }];
  return { title: phrase`A cap of ${size} instead of ${made.pieces}`, edits };
}
