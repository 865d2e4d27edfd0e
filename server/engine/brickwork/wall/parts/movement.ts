/** Movement joints: what is bought for them, and lengths of wall that want one. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import { movementMissing, type WallLength } from '../../../findings/junctions/movement-missing';
import type { Remark } from '../../../findings/remark';
import { defaultLine, type Env, factsNamed, type LineFacts } from '../../../resolve/env';
import { counted, fact, missing, quotient, type Term, up } from '../../../working/term';
import { inMm, lengthShown } from '../../lengths';
import type { Masonry } from '../../masonry';
import type { PieceNeed } from '../../needs';
import { saidFrom, sizeSaid } from '../../said';
import { coursesBefore, tieTerm } from '../meet/ties';
import type { WallPlan } from '../spec';
import { type Backing, layBacking } from './backing/lay';
import type { Part, PartOf } from './part';

export const movement: PartOf = (masonry, plan, { out }): Part | undefined => {
  const remarks = wanting(masonry, plan);
  if (!plan.movement.length) return remarks.length ? { remarks } : undefined;
  const behind = layBacking(masonry, plan);
  const ties = [...tiesAcross(masonry, plan), ...(behind ? tiesBehind(behind, plan) : [])];
  const skins = [out.thickness, ...(behind ? [behind.out.thickness] : [])];
  const filler = fillerIn(masonry, plan, skins);
  const count = counted(phrase`Movement joints`, plan.movement.length, '', {
    args: plan.movement.map((j) => fact(phrase`movement joint`, exact(1), '', j.line.origin)),
  });
  return {
    remarks,
    pieces: [...ties, ...filler],
    figures: [{ key: 'movement', term: count }],
    says: saidFrom(
      [said(masonry, plan, behind !== undefined)],
      ...plan.movement.map((j) => j.line),
    ),
  };
};

function said({ env }: Masonry, { movement }: WallPlan, twoSkins: boolean): string {
  const widths = [...new Set(movement.map((j) => sizeSaid(j.width, env)))].join(phrase` and `);
  const through = twoSkins ? phrase`both its skins` : phrase`it`;
  return movement.length === 1
    ? phrase`Leave a movement joint ${widths} wide through ${through}, filled and sealed, so that it can swell and shrink without cracking.`
    : phrase`Leave ${movement.length} movement joints ${widths} wide through ${through}, filled and sealed, so that it can swell and shrink without cracking.`;
}

function tiesAcross({ env }: Masonry, plan: WallPlan): PieceNeed[] {
  const line = defaultLine(env, 'movement-ties');
  if (!line) return [];
  const courses = plan.movement.map((j) => coursesBefore(plan, j.from));
  const count = tieTerm(phrase`Ties across movement joints`, line, plan, courses);
  return [{ material: line.word('material'), count, origin: line.at('material') }];
}

/** Across the same joints in the skin behind, on its own courses. */
function tiesBehind({ masonry, out }: Backing, plan: WallPlan): PieceNeed[] {
  const line = defaultLine(masonry.env, 'movement-ties');
  if (!line) return [];
  const gauge = plan.spec.unit.height + plan.spec.joints.bed;
  const courses = plan.movement.map((j) =>
    Math.round((coursesBefore(plan, j.from) * gauge) / out.gauge),
  );
  const skin = { ...plan, spec: out.spec };
  const count = tieTerm(phrase`Ties across movement joints, in the backing`, line, skin, courses);
  return [{ material: line.word('material'), count, origin: line.at('material') }];
}

/** In strips as long as the material is sold in, as many beside each other in each skin as go through it; the last is cut. */
function fillerIn({ env }: Masonry, plan: WallPlan, skins: readonly number[]): PieceNeed[] {
  const line = defaultLine(env, 'movement-filler');
  if (!line) return [];
  const gauge = plan.spec.unit.height + plan.spec.joints.bed;
  const wide = factsNamed(env, 'material', line.word('material'))?.line('size')?.sides('size')?.[1];
  const seal = defaultLine(env, 'movement-seal')?.number('times') ?? 0;
  const beside = plan.movement.map((j) =>
    skins.reduce((sum, deep) => sum + stripsThrough(deep - 2 * seal * j.width, wide), 0),
  );
  const high = plan.movement.map((j) => coursesBefore(plan, j.from) * gauge);
  const long = high.reduce((sum, mm, i) => sum + mm * beside[i]!, 0);
  const most = Math.max(...beside);
  const length = lengthShown(env, phrase`movement joints, all together`, long, {
    ...(most > 1 ? { note: phrase`up to ${most} strips through the wall` } : {}),
  });
  const strips = quotient(phrase`strips`, 'pieces', inMm(length), stripOf(line, env));
  const count = up(phrase`Strips of joint filler`, 'pieces', strips);
  return [{ material: line.word('material'), count, origin: line.at('material') }];
}

/** More strips beside one another than any wall has: a width of next to nothing is a slip. */
const MOST_STRIPS = 100;

/** Beside one another through so much of a wall as is filled, mm: the seal at each face is none of it. */
function stripsThrough(deep: number, wide: number | undefined): number {
  if (!wide || !(wide > 0)) return 1;
  return Math.min(MOST_STRIPS, Math.max(1, Math.ceil(deep / wide - 1e-6)));
}

function stripOf(line: LineFacts, env: Env): Term {
  const name = line.word('material');
  const facts = factsNamed(env, 'material', name)?.line('size');
  const sides = facts?.sides('size');
  if (!facts || !sides?.[0])
    return missing(
      phrase`a strip`,
      'mm',
      phrase`how long a strip of ${name} is is not known`,
      line.origin,
    );
  return fact(phrase`a strip`, exact(sides[0]), 'mm', facts.at('size'));
}

/** Lengths of wall longer than the library lets them be. */
function wanting(masonry: Masonry, plan: WallPlan): Remark[] {
  const limit = defaultLine(masonry.env, 'movement-spacing');
  if (!limit) return [];
  return lengthsOf(masonry, plan, limit)
    .filter((l) => l.to - l.from > l.most + 0.5)
    .map((l) => movementMissing(masonry.facts, l, limit, () => middleOf(l, plan)));
}

/** Between free ends, movement joints, and openings that reach the top. */
function lengthsOf({ facts }: Masonry, plan: WallPlan, limit: LineFacts): WallLength[] {
  const { spec } = plan;
  const gaps = [...plan.movement, ...spec.openings.filter((o) => o.top === null && o.sill === 0)];
  const cuts = gaps.sort((a, b) => a.from - b.from);
  const free = (facts.orDefault('stands')?.word('how') ?? 'free') !== 'held';
  const spacing = limit.number('spacing')!;
  const usual = free ? (limit.number('free') ?? spacing) : spacing;
  const corner = limit.number('corner') ?? usual;
  const isQuoin = (side: 'left' | 'right') => facts.line(side)?.word('end') === 'quoin';
  return [...cuts, undefined].map((cut, i) => {
    const before = cuts[i - 1];
    const from = before ? before.from + before.width : 0;
    const to = cut?.from ?? spec.length;
    const quoin = (!before && isQuoin('left')) || (!cut && isQuoin('right'));
    const most = quoin ? Math.min(usual, corner) : usual;
    const why =
      quoin && corner < usual
        ? phrase`from a corner`
        : free
          ? phrase`that stands free`
          : phrase`in a straight run`;
    return { from, to, most, why };
  });
}

/** Near the middle of a length, in whole bricks from its left end. */
function middleOf({ from, to }: WallLength, { spec }: WallPlan): number | undefined {
  const { perpend } = spec.joints;
  const module = spec.unit.length + perpend;
  const bricks = Math.round((to - from) / 2 / module);
  const at = from + bricks * module - perpend;
  const blocked = spec.openings.some((o) => at < o.from + o.width && o.from < at + module);
  return bricks < 2 || blocked ? undefined : at;
}
