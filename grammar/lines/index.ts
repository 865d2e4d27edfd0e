/** Every kind of line there is. */
import { CAUTION } from './caution';
import { DECIDED } from './decided';
import { DEFAULTS } from './defaults';
import { EDITION, USE } from './file';
import { BRICK, MATERIAL, MIX } from './goods';
import { JOB } from './job';
import { LABOUR } from './labour';
import { BOND, CURRENCIES, LIMIT, PIER_PLAN } from './library';
import { LEAST_MORTAR, MEASURES, MORTAR_CLASS, YIELD_MODEL } from './mortar/library';
import { OPTION } from './option';
import { OUTPUT, SERVING } from './outputs';
import { BILL_TO, FIRM } from './parties';
import { PARTNER } from './partner';
import { COST, PRICE, TRAVEL } from './price';
import { RECORD } from './record';
import { inRanges, type LineKind } from './slots';
import { TEMPLATE } from './template';
import { TOLERANCE } from './tolerance';
import { PIER, REPAIR, WALL } from './work';

/** In the order a file has them. */
const ALL: readonly LineKind[] = [
  EDITION,
  TEMPLATE,
  JOB,
  USE,
  BILL_TO,
  FIRM,
  PARTNER,
  WALL,
  PIER,
  REPAIR,
  TRAVEL,
  COST,
  PRICE,
  OPTION,
  RECORD,
  BRICK,
  MIX,
  MATERIAL,
  LABOUR,
  OUTPUT,
  SERVING,
  DEFAULTS,
  MEASURES,
  YIELD_MODEL,
  MORTAR_CLASS,
  LEAST_MORTAR,
  BOND,
  PIER_PLAN,
  LIMIT,
  TOLERANCE,
  CAUTION,
  CURRENCIES,
];

/** The headings that stand in the first column, in the order a file has them. */
export const HEADINGS: readonly LineKind[] = ALL.map((kind) => inRanges(kind, DECIDED[kind.key]));

const HEADING_BY_KEY = new Map(HEADINGS.map((kind) => [kind.key, kind]));

const BODY_BY_KIND = new Map<LineKind, Map<string, LineKind>>();

export function headingNamed(key: string): LineKind | undefined {
  return HEADING_BY_KEY.get(key);
}

/** The kind of a line of `parent` whose first word is `key`. */
export function lineOf(parent: LineKind, key: string): LineKind | undefined {
  const byKey = bodyOf(parent);
  return byKey.get(key) ?? byKey.get('');
}

function bodyOf(parent: LineKind): Map<string, LineKind> {
  let found = BODY_BY_KIND.get(parent);
  if (!found) {
    found = new Map((parent.body ?? []).map((kind) => [kind.open ? '' : kind.key, kind]));
    BODY_BY_KIND.set(parent, found);
  }
  return found;
}

/** Words that only ever stand in a block's body: in the first column they are lines that lost their indent. */
export const BODY_ONLY: ReadonlySet<string> = new Set(
  HEADINGS.flatMap((h) =>
    (h.body ?? []).flatMap((k) => [k.key, ...(k.body ?? []).map((b) => b.key)]),
  ).filter((key) => !HEADING_BY_KEY.has(key)),
);

export type { LineKind, Slot } from './slots';
