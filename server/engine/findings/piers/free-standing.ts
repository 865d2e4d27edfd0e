/** How high a wall may stand free, by thickness and exposure: the first caution of the trade. */

import { listed } from '../../../../grammar/read/numbers';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { halvesOf } from '../../brickwork/masonry';
import { higherAtMost } from '../../brickwork/wall/highest';
import type { Work } from '../../brickwork/work';
import { BlockFacts, type Env, type LineFacts } from '../../resolve/env';
import { groundOf, mostCourses, topOf } from '../../setting-out';
import { coursesText, coursesTold } from '../courses';
import { lineAfter, type Remark, type RemarkWay } from '../remark';

const ASK = later`Check local rules, and ask a structural engineer.`;

interface Allowed {
  readonly zone: string;
  /** Mm. */
  readonly height: number;
  readonly line: LineFacts;
  readonly limit: BlockFacts;
}

/** Nothing for a wall that is held, or low enough for every exposure that may be its own. */
export function freeStanding(work: Pick<Work, 'block' | 'facts'>, env: Env): Remark[] {
  const { height: laid, settingOut } = work.facts;
  const facts = new BlockFacts(work.block, work.block.read.heading!, env);
  if (laid === undefined || !settingOut || !work.facts.does.has('free-standing')) return [];
  const rows = rowsFor(settingOut.spec.thickness, settingOut.thickness, env);
  if (!rows.length) return [noTable(facts)];
  const zone = facts.orDefault('exposure')?.word('zone') || onlyZone(rows);
  const own = zone ? rows.filter((r) => r.zone === zone) : rows;
  const tightest = own.reduce<Allowed | undefined>(
    (a, b) => (a && a.height <= b.height ? a : b),
    undefined,
  );
  if (!tightest) return [noTable(facts)];
  const more = higherAtMost(facts.line('height'), settingOut.gauge);
  const height = laid + more;
  if (height <= tightest.height) return [];
  const { gauge, spec } = settingOut;
  const [ground, top] = [groundOf(spec), topOf(spec)];
  const most = mostCourses(ground, top);
  const over = {
    facts,
    height,
    ranged: more > 0,
    row: tightest,
    zone,
    rows,
    gauge,
    onTop: laid - gauge * most,
    lower: most - ((top[0]?.level ?? 0) - (ground[0]?.level ?? 0)),
  };
  return [overHeight(over, env)];
}

interface Over {
  readonly facts: BlockFacts;
  /** Over all, mm; of a range its high end. */
  readonly height: number;
  readonly ranged: boolean;
  readonly row: Allowed;
  /** Nothing when no line says it. */
  readonly zone: string | undefined;
  readonly rows: readonly Allowed[];
  readonly gauge: number;
  /** What stands on the courses, mm. */
  readonly onTop: number;
  /** Courses that its left end, whose height is said, is lower than where it is highest. */
  readonly lower: number;
}

/** A table of one exposure leaves nothing to say. */
function onlyZone(rows: readonly Allowed[]): string | undefined {
  const [zone, ...others] = new Set(rows.map((r) => r.zone));
  return others.length ? undefined : zone;
}

/** Rows of the limits for this thickness: said in half bricks, or as a length no thicker than the wall. */
function rowsFor(halves: number, thickness: number, env: Env): Allowed[] {
  const found: Allowed[] = [];
  for (const block of env.book.blocksOf('limit')) {
    const limit = new BlockFacts(block, block.read.heading!, env);
    const nominal = Math.max(SAME, limit.line('nominal')?.number('within') ?? 0);
    for (const line of limit.lines('allow')) {
      const bricks = line.number('bricks');
      const thick = line.number('thick');
      const same =
        bricks !== undefined
          ? halvesOf(bricks) === halves
          : thick !== undefined && Math.abs(thick - thickness) <= nominal;
      const height = line.number('height');
      if (same && height !== undefined)
        found.push({ zone: line.word('zone'), height, line, limit });
    }
  }
  return found;
}

/** Thicknesses nearer than this are the same, mm, where a table is not of nominal ones. */
const SAME = 0.5;

function overHeight(over: Over, env: Env): Remark {
  const { facts, height, row } = over;
  const source = row.limit.line('source')?.word('text') ?? phrase`the library`;
  const advice = row.limit.lines('advice').map((a) => a.word('text'));
  const coping = over.onTop > 1 ? phrase` with its coping` : '';
  const most = lengthText(env, row.height);
  const high = `${lengthText(env, height)}${coping}`;
  const message = phrase`${over.ranged ? phrase`It may be up to ${high}, which` : high} is more than the ${most} that a free-standing wall of this thickness may be ${whereItStands(over)} (${source}). Make it thicker or lower, or hold it with piers to an engineer’s design. ${advice.join(' ') || spoken(ASK)}`;
  return {
    code: 'height-over',
    severity: 'warning',
    origin: (facts.line('height') ?? facts.line('thick'))?.origin ?? facts.origin,
    message,
    related: [{ origin: row.line.origin, message: phrase`The limit: ${source}` }],
    ways: () => [...lower(over), ...elsewhere(over)],
  };
}

function whereItStands({ zone, row, rows }: Over): string {
  if (zone) return phrase`in ${row.zone}`;
  const known = [...new Set(rows.map((r) => r.zone))];
  return phrase`in ${row.zone}, the most exposed of ${listed(known, 'and')}, since no exposure line says where it stands`;
}

/** As many courses as the limit leaves room for. */
function lower({ facts, row, gauge, onTop, lower: less }: Over): RemarkWay[] {
  const line = facts.line('height');
  const courses = Math.floor((row.height - onTop) / gauge) - less;
  if (!line || courses < 1) return [];
  const text = coursesText(courses);
  const key = line.values.courses ? 'courses' : 'height';
  return [{ title: phrase`Build ${coursesTold(courses)}`, edits: [{ ...line.at(key), text }] }];
}

/** The zones where it might stand as it is, when none is said. */
function elsewhere({ facts, height, zone, rows }: Over): RemarkWay[] {
  if (zone) return [];
  const line = (facts.line('height')?.line.syntax ?? facts.heading.syntax).span.line;
  const high = rows.filter((r) => r.height >= height).map((r) => r.zone);
  return [...new Set(high)].map((name) => ({
    title: phrase`It stands in ${name}`,
    edits: [lineAfter(facts.block, line, `  exposure ${name}`)],
  }));
}

function noTable(facts: BlockFacts): Remark {
  const message = phrase`No table of the library says how high a free-standing wall of this thickness may be, so its height is not checked. ${spoken(ASK)}`;
  return {
    code: 'height-unchecked',
    severity: 'information',
    origin: facts.line('height')?.origin ?? facts.origin,
    message,
  };
}
