/** How much there is of what a repair is in, reckoned high: what is told to be more of it is more in any bond. */

import { toBase } from '../../../../shared/units';
import { brickTerms } from '../../brickwork/count';
import { jointsIn, thicknessOf } from '../../brickwork/masonry';
import { measuredWithin } from '../../brickwork/repair/as-it-stands';
import { sizeOfPiece } from '../../brickwork/repair/capping';
import { extentOf } from '../../brickwork/repair/extent';
import type { Site } from '../../brickwork/repair/site';
import type { Env, LineFacts } from '../../resolve/env';

export interface Standing {
  /** Mm. */
  readonly length: number;
  readonly high: number;
  /** Every side that can be seen, its ends and its top with them, m². */
  readonly faces: number;
  readonly bricks: number;
  /** Bed joints and perpends of both faces, mm. */
  readonly joints: number;
}

/** A wall of one height: where it steps or falls, its height is that of its left end alone. */
export function standingOf({ size, stands, masonry, thickness, pier }: Site): Standing | undefined {
  const { length, courses } = size;
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  if (pier || !length || !courses || !unit || !joints || !thickness) return undefined;
  if (stands.line('top') || stands.line('ground')) return undefined;
  const high = courses * (unit.height + joints.bed);
  const deep = thicknessOf(thickness, unit, joints.perpend);
  const brick = unit.length + joints.perpend;
  const inCourse = Math.ceil(length / brick + 1) * thickness;
  return {
    length,
    high,
    faces: (2 * (length + deep) * high + length * deep) / 1e6,
    bricks: inCourse * courses,
    // In a face of headers a perpend stands every half brick.
    joints: Math.floor(2 * (length + deep) * courses * (1 + (2 * unit.height) / brick)),
  };
}

/**
 * What a line says, likely where it is a range, in base units. Nothing is laid by it: it is not looked up as what is, since
 * the work would then be laid again for values of the range.
 */
export function saidIn(line: LineFacts, key: string): number | undefined {
  const value = line.values[key];
  if (value?.kind !== 'quantity') return undefined;
  const said = line.term(key, '').value;
  return (value.unit ? toBase(said, value.unit) : said).toNumber();
}

/** Of these no more are cut out: they come down. */
export function bricksBuilt(site: Site): number {
  const line = site.facts.line('rebuild');
  if (!line) return 0;
  const bricks = saidIn(line, 'bricks');
  if (bricks !== undefined) return bricks;
  const { length, courses } = extentOf(line, site);
  const [long, , , joint] = brickTerms(site.masonry);
  const brick = (long?.value.toNumber() ?? 0) + (joint?.value.toNumber() ?? 0);
  const mm = length?.value.toNumber() ?? 0;
  return Math.floor(mm / brick) * (site.thickness ?? 0) * (courses?.value.toNumber() ?? 0);
}

/** As it can stand in a job file, never more than it is: “2.4 m2”. */
export function areaText(env: Env, m2: number): string {
  const [of, name] = env.imperial ? [m2 / 0.3048 ** 2, 'ft2'] : [m2, 'm2'];
  return `${Math.floor(of * 100) / 100} ${name}`;
}

/** Pieces of a coping, or caps, that such a line can mean; nothing where their size is not known. */
export function piecesOn(line: LineFacts, site: Site): number | undefined {
  const size = sizeOfPiece(line, site);
  if (!size) return undefined;
  return site.pier ? capsOn(size, site) : copingsOn(size, site);
}

function capsOn({ length, width }: { length: number; width: number }, { pier, stands }: Site) {
  const { width: wide, depth } = pier!.spec;
  const each = Math.ceil(wide / length) * Math.ceil(depth / width);
  return each * Math.max(1, stands.line('number')?.number('number') ?? 1);
}

/** A cap on each of its piers besides. */
function copingsOn({ length }: { length: number }, { size, stands, masonry, env }: Site) {
  const joint = masonry.jointTerms.perpend.value.toNumber();
  if (!size.length) return undefined;
  return (
    Math.ceil((size.length + measuredWithin(env)) / (length + joint)) + stands.lines('pier').length
  );
}
