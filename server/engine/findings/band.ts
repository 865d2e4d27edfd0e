/** A band of another brick that is not what its line says. */
import { phrase } from '../../../shared/phrase';
import type { Brick } from '../brickwork/goods';
import type { WallPlan } from '../brickwork/wall/spec';
import { type BandZones, bandCourses, MOST_BANDS } from '../brickwork/wall/zones';
import type { BlockFacts, LineFacts } from '../resolve/env';
import { coursesTold } from './courses';
import { differs } from './dpc';
import type { Remark } from './remark';
import { tooMany } from './wall';

/** `bands` with what was left for each when those before it, and the damp course, had theirs. */
export function bandsOff(
  facts: BlockFacts,
  bands: readonly BandZones[],
  brickIn: (line: LineFacts) => Brick,
  plan: WallPlan,
): Remark[] {
  const many =
    facts.lines('band').length > MOST_BANDS ? [tooMany(facts, phrase`bands`, MOST_BANDS)] : [];
  return [
    ...many,
    ...bands.flatMap((band) => [
      ...backwards(band),
      ...tooHigh(band, plan),
      ...takenAlready(band, plan),
      ...otherSize(band, brickIn(band.line), plan),
    ]),
  ];
}

function off(line: LineFacts, key: string, message: string): Remark {
  return { code: 'band-off', severity: 'warning', origin: line.at(key), message };
}

/** Read from the lower to the higher, which is what it can only mean. */
function backwards({ line }: BandZones): Remark[] {
  const [first, last] = [
    line.number('first') ?? 0,
    line.number('last') ?? Number.POSITIVE_INFINITY,
  ];
  if (last >= first) return [];
  const message = phrase`Courses are counted from the ground up: this is read as courses ${last} to ${first}.`;
  const edits = [
    { ...line.at('first'), text: `${last}` },
    { ...line.at('last'), text: `${first}` },
  ];
  const ways = [{ title: phrase`Write courses ${last} to ${first}`, edits, preferred: true }];
  return [{ ...off(line, 'first', message), severity: 'information', ways }];
}

function tooHigh({ line }: BandZones, plan: WallPlan): Remark[] {
  const courses = bandCourses(line, plan);
  if (!courses || courses.to <= plan.spec.courses) return [];
  const there = plan.spec.courses - (plan.ground[0]?.level ?? 0);
  const message = phrase`This band reaches above the ${coursesTold(there)} of the wall; those above are left out.`;
  return [off(line, line.values.last ? 'last' : 'first', message)];
}

/** Over the first stretch of ground: a band is level, and the damp course is as many courses all along. */
function takenAlready({ line, zones }: BandZones, plan: WallPlan): Remark[] {
  const courses = bandCourses(line, plan);
  if (!courses) return [];
  const wanted = Math.min(courses.to, plan.spec.courses) - courses.from;
  const left = plan.ground.map(({ from }) =>
    zones
      .filter((zone) => zone.from === from)
      .reduce((sum, zone) => sum + zone.courses.to! - zone.courses.from, 0),
  );
  const least = Math.min(...left);
  if (least >= wanted) return [];
  const message =
    wanted - least === 1
      ? phrase`1 course of this band is of the damp course or of a band before it already, and stays there.`
      : phrase`${wanted - least} courses of this band are of the damp course or of a band before it already, and stay there.`;
  return [off(line, 'first', message)];
}

function otherSize({ line }: BandZones, brick: Brick, { spec }: WallPlan): Remark[] {
  if (!brick.size || !differs(brick.size, spec.unit)) return [];
  const message = phrase`${brick.title} is of another size than the wall’s brick. Its courses are counted as so many of that brick, and the height does not change: say how it really goes before it is bought.`;
  return [off(line, 'brick', message)];
}
