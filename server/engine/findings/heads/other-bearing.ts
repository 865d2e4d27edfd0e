/** A bearing with which the ends of a lintel stand under no perpend. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Head } from '../../brickwork/wall/heads/head';
import { carvedLap, lapAt, type SettingOut } from '../../setting-out';
import { lastOwnLine } from '../fit/decision';
import { lineAfter, type RemarkEdit, type RemarkWay } from '../remark';

/** Steps of bearing that are tried, mm: as fine as anyone sets one out. */
const STEP = 5;
/** Bearings tried, from the least there may be. */
const MOST_TRIED = 40;

/** The line of a lintel's bearing, or a new one. */
export function bearingEdit({ opening: { facts } }: Head, text: string): RemarkEdit {
  const own = facts.line('bearing');
  if (own) return { ...own.at('bearing'), text };
  const indent = ' '.repeat(facts.heading.syntax.indent + 2);
  return lineAfter(facts.block, lastOwnLine(facts), `${indent}bearing ${text}`);
}

/** The shortest that laps above and below at both ends. */
export function otherBearing(head: Head, out: SettingOut): RemarkWay[] {
  const { lintel, opening } = head;
  if (!lintel || lintel.coursing.courses === 0 || lintel.line.sides('size')?.[2]) return [];
  const { low, high } = lintel.zone;
  const { from, width } = opening.spec;
  const half = out.spec.joints.perpend / 2;
  const lap = carvedLap(out.spec);
  const least = lintel.bearing.least?.number('bearing') ?? lintel.bearing.mm;
  const start = Math.ceil(Math.max(least, STEP) / STEP) * STEP;
  const bearings = Array.from({ length: MOST_TRIED }, (_, i) => start + i * STEP);
  const good = bearings.find((mm) =>
    [from - mm - half, from + width + mm + half].every((at) =>
      [low - 1, high].every((course) => lapAt(out, course, at) >= lap),
    ),
  );
  if (good === undefined) return [];
  const text = lengthText(opening.facts.env, good);
  return [{ title: phrase`Bear ${text}`, edits: [bearingEdit(head, text)] }];
}
