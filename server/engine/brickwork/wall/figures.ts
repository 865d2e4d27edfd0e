/** The figures of a wall, each a term with its working. */

import { phrase } from '../../../../shared/phrase';
import { type Band, mostCourses } from '../../setting-out';
import { named, sum, type Term } from '../../working/term';
import { apartFigures } from '../apart-figures';
import { courseTerms, laidFrom } from '../count';
import { areaShown, lengthShown } from '../lengths';
import type { Masonry } from '../masonry';
import type { Figure, Needs } from '../needs';
import { ruleOfThumb } from '../rule';
import { inputsOf, type WallCounts } from './counts';
import { wedgesOf } from './heads/let-in';
import type { WallPlan } from './spec';

export function wallFigures(
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  needs: Needs,
): Figure[] {
  const { spec, height } = plan;
  const area = faceShown(masonry, plan, counts);
  const high = lengthShown(
    masonry.env,
    phrase`Height of the courses`,
    counts.out.gauge * mostCourses(plan.ground, plan.top),
    {
      args: courseTerms(height, masonry),
    },
  );
  const bricks =
    needs.bricks.length > 1
      ? sum(
          phrase`Bricks, all kinds`,
          'bricks',
          needs.bricks.map((b) => b.bricks),
        )
      : named(phrase`Bricks`, needs.bricks[0]!.bricks);
  const figures: Figure[] = [
    { key: 'bricks', term: bricks },
    { key: 'area', term: area },
    { key: 'courses', term: { ...height.term, label: phrase`Courses` } },
    { key: 'height', term: high },
    { key: 'mortar', term: named(phrase`Mortar, laid`, needs.mixes[0]!.litres) },
    ...apartFigures(needs),
    {
      key: 'hours',
      term: sum(
        phrase`Hours of the gang`,
        'h',
        needs.tasks.map((t) => t.hours),
      ),
    },
  ];
  const rule = ruleOfThumb(area, spec.thickness, masonry);
  if (rule) figures.splice(1, 0, { key: 'rule', term: rule });
  const [, concrete] = needs.mixes.filter((mix) => !mix.apart);
  if (concrete && masonry.facts.line('footing'))
    figures.push({
      key: 'concrete',
      term: named(phrase`Concrete in the footing`, concrete.litres),
    });
  return figures;
}

/** The face that is laid, in the unit of area of the job. */
export function faceShown(masonry: Masonry, plan: WallPlan, counts: WallCounts): Term {
  return areaShown(masonry.env, phrase`Face of the wall`, faceArea(counts, plan), {
    note: phrase`openings and piers left out`,
    args: laidFrom(masonry, inputsOf(masonry, plan)),
  });
}

/** Of the stretches laid, mm²: the piers have their own. */
function faceArea(counts: WallCounts, plan: WallPlan): number {
  let area = -wedgesOf(plan.heads, counts.out.gauge);
  for (const band of counts.out.bands) {
    const { left, right } = sidesIn(band, plan);
    for (const { from, to } of band.segments) {
      const length = met(to, left) - met(from, right);
      area += length * (band.to - band.from) * counts.out.gauge;
    }
  }
  return area;
}

/** What is set out beside an attached pier stops half a brick short of it in some courses: the face goes on to the pier. */
function sidesIn(band: Band, { spec, piers }: WallPlan) {
  const reach = (spec.unit.length + spec.joints.perpend) / 2 + 1;
  const here = piers.filter(({ attached, spec: { base = 0, courses } }) => {
    return attached && base < band.to && base + courses > band.from;
  });
  return {
    left: here.map(({ spec: p }) => ({ at: p.from, low: p.from - reach, high: p.from })),
    right: here.map(({ spec: { from, width } }) => {
      const at = from + width;
      return { at, low: at, high: at + reach };
    }),
  };
}

/** The side of a pier that a stretch ends at; where it ends itself, when there is none. */
function met(end: number, sides: readonly { at: number; low: number; high: number }[]): number {
  return sides.find(({ low, high }) => end > low && end < high)?.at ?? end;
}
