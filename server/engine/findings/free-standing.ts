/** How high a wall may stand free, by thickness and exposure: the first caution of the trade. */
import { BlockFacts, type Env, type LineFacts } from '../resolve/env';
import { lengthText } from '../work/lengths';
import { halvesOf } from '../work/masonry';
import type { Work } from '../work/needs';
import type { Remark } from './remark';

const ASK = 'Check local rules, and ask a structural engineer.';

interface Allowed {
  readonly zone: string;
  /** Mm. */
  readonly height: number;
  readonly line: LineFacts;
  readonly limit: BlockFacts;
}

/** Nothing for a wall that is held, or low enough for every exposure that may be its own. */
export function freeStanding(work: Work, env: Env): Remark[] {
  const { height, settingOut } = work.facts;
  const facts = new BlockFacts(work.block, work.block.read.heading!, env);
  if (height === undefined || !settingOut || !work.facts.does.has('free-standing')) return [];
  const rows = rowsFor(settingOut.spec.thickness, settingOut.thickness, env);
  if (!rows.length) return [noTable(facts)];
  const zone = facts.orDefault('exposure')?.word('zone') || onlyZone(rows);
  const own = zone ? rows.filter((r) => r.zone === zone) : rows;
  const tightest = own.reduce<Allowed | undefined>(
    (a, b) => (a && a.height <= b.height ? a : b),
    undefined,
  );
  if (!tightest) return [noTable(facts)];
  if (height <= tightest.height) return [];
  const coped = (work.facts.tops ?? []).length > 0;
  return [overHeight(facts, height, tightest, zone, rows, env, coped)];
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
    for (const line of limit.lines('allow')) {
      const bricks = line.number('bricks');
      const thick = line.number('thick');
      const same =
        bricks !== undefined
          ? halvesOf(bricks) === halves
          : thick !== undefined && Math.abs(thick - thickness) <= NOMINAL;
      const height = line.number('height');
      if (same && height !== undefined)
        found.push({ zone: line.word('zone'), height, line, limit });
    }
  }
  return found;
}

/** Tables give nominal thickness, joint included: 8 in for 7 5/8. */
const NOMINAL = 12;

function overHeight(
  facts: BlockFacts,
  height: number,
  row: Allowed,
  zone: string | undefined,
  rows: readonly Allowed[],
  env: Env,
  coped: boolean,
): Remark {
  const line = facts.line('height') ?? facts.lines('thick')[0];
  const source = row.limit.line('source')?.word('text') ?? 'the library';
  const where = zone
    ? `in ${row.zone}`
    : `in ${row.zone}, the most exposed, since no exposure line says where it stands`;
  const advice = row.limit
    .lines('advice')
    .map((a) => a.word('text'))
    .join(' ');
  const text = `${lengthText(env, height)}${coped ? ' with its coping' : ''} is more than the ${lengthText(env, row.height)} that a free-standing wall of this thickness may be ${where} (${source}). Make it thicker or lower, or hold it with piers to an engineer’s design. ${advice || ASK}`;
  const zones = [...new Set(rows.filter((r) => r.height >= height).map((r) => r.zone))];
  const end = facts.lines('height')[0]?.line.syntax ?? facts.heading.syntax;
  const ways = zone
    ? []
    : zones.map((z) => ({
        title: `It stands in ${z}`,
        edits: [
          {
            block: facts.block,
            span: {
              line: end.span.line,
              start: facts.block.lines[end.span.line]!.length,
              end: facts.block.lines[end.span.line]!.length,
            },
            text: `\n  exposure ${z}`,
          },
        ],
      }));
  return {
    code: 'height-over',
    severity: 'warning',
    origin: line?.origin ?? facts.origin,
    message: text,
    related: [{ origin: row.line.origin, message: `The limit: ${source}` }],
    ways,
  };
}

function noTable(facts: BlockFacts): Remark {
  const message = `No table of the library says how high a free-standing wall of this thickness may be, so its height is not checked. ${ASK}`;
  return {
    code: 'height-unchecked',
    severity: 'information',
    origin: facts.line('height')?.origin ?? facts.origin,
    message,
  };
}
