/** Piers of a wall: where each stands along it, and how high. */
import { phrase } from '../../../../../shared/phrase';
import type { Remark } from '../../../findings/remark';
import { pierHomeless, tooMany } from '../../../findings/wall';
import { BlockFacts } from '../../../resolve/env';
import type { AttachedLaid, CoursePlan, PierSpec } from '../../../setting-out';
import { fact } from '../../../working/term';
import type { Masonry } from '../../masonry';
import { asHigh } from '../../pier/core';
import { type Plan, planOf } from '../../pier/plan';
import { type Height, heightIn } from '../height';
import type { OpeningFacts } from '../openings';
import { MOST_OPENINGS, standingAt } from '../openings';
import type { Stepped } from '../tops/steps';

export interface PierFacts {
  readonly facts: BlockFacts;
  readonly spec: PierSpec;
  readonly height: Height;
  /** Depth in half bricks. */
  readonly halves: number;
  /** Its plan where it stands by itself; nothing where its counts cannot be laid. */
  readonly plan: Plan;
  /** Where it is bonded into the wall. */
  readonly attached?: AttachedLaid;
  /** Its courses above that wall, where it is higher: see `PierPlan.above`. */
  readonly above?: readonly CoursePlan[];
}

export function piersOf(
  masonry: Masonry,
  length: number,
  wall: Stepped & { readonly height: Height },
  openings: readonly OpeningFacts[],
  remarks: Remark[],
): PierFacts[] {
  const found: PierFacts[] = [];
  const lines = masonry.facts.lines('pier');
  if (lines.length > MOST_OPENINGS)
    remarks.push(tooMany(masonry.facts, phrase`piers`, MOST_OPENINGS));
  for (const line of lines.slice(0, MOST_OPENINGS)) {
    const facts = new BlockFacts(line.block, line.line, masonry.env);
    const plan = planOf(facts, masonry, remarks);
    if (!plan) continue;
    const from = pierFrom(facts, plan.width, length, openings);
    if (from === undefined || from < 0 || from + plan.width > length) {
      remarks.push(
        pierHomeless(
          facts,
          openings.map((o) => o.facts.name),
        ),
      );
      continue;
    }
    const { base, courses } = standingAt(from + plan.width / 2, wall);
    const height = facts.line('height')
      ? heightIn(masonry, facts, remarks)
      : asHighAs(wall.height, courses);
    if (!height) continue;
    const own = asHigh(plan, masonry.brick.size!, height.courses, height.bed);
    const spec = { ...own, from, ...(base ? { base } : {}) };
    found.push({ facts, height, halves: plan.halves, plan, spec });
  }
  return found;
}

/** The height of a wall where it has so many courses: not those of its left end, if it steps. */
function asHighAs(wall: Height, courses: number): Height | undefined {
  if (courses === wall.courses) return wall;
  const term = fact(
    phrase`courses`,
    courses,
    'courses',
    wall.term.origin,
    phrase`as the wall steps`,
  );
  return courses < 1 ? undefined : { ...wall, courses, term };
}

/** Beside an opening on one side, at one end of the wall, or so far from it. */
function pierFrom(
  facts: BlockFacts,
  width: number,
  length: number,
  openings: readonly OpeningFacts[],
): number | undefined {
  const at = facts.line('at');
  if (!at) return undefined;
  const end = at.word('end');
  const distance = at.number('distance') ?? 0;
  if (end) return end === 'left' ? distance : length - distance - width;
  const opening = openings.find((o) => o.facts.name === at.word('opening'))?.spec;
  if (!opening) return undefined;
  return at.word('side') === 'left' ? opening.from - width : opening.from + opening.width;
}
