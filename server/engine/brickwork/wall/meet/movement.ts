/** Movement joints of a wall, from its lines. */
import { phrase } from '../../../../../shared/phrase';
import { counted } from '../../../../../shared/show';
import { movementPlace } from '../../../findings/junctions/movement-place';
import type { Remark } from '../../../findings/remark';
import { tooMany } from '../../../findings/wall';
import { defaultLine, type LineFacts } from '../../../resolve/env';
import {
  MOST_GAPS,
  type MovementGap,
  type OpeningSpec,
  type PierSpec,
  panelsOf,
} from '../../../setting-out';
import { jointsIn, type Masonry } from '../../masonry';
import { endKind } from './ends';

export interface MovementJoint extends MovementGap {
  readonly line: LineFacts;
}

/** What a movement joint may not run into. */
interface InTheWay {
  readonly openings: readonly OpeningSpec[];
  readonly piers: readonly PierSpec[];
}

/** From the left; those that cannot stand where they are said to are left out, with a remark. */
export function movementIn(
  masonry: Masonry,
  length: number,
  others: InTheWay,
  remarks: Remark[],
): MovementJoint[] {
  const found: MovementJoint[] = [];
  const lines = masonry.facts.lines('movement-joint');
  if (lines.length > MOST_GAPS)
    remarks.push(tooMany(masonry.facts, phrase`movement joints`, MOST_GAPS));
  for (const line of lines.slice(0, MOST_GAPS)) {
    const joints = jointsOf(line, masonry, length);
    const why = joints
      ? undefined
      : phrase`There is no wall there, or not ${counted(leastBricks(masonry), phrase`brick`, phrase`bricks`)} of it between two of them.`;
    const bad = why ?? joints!.map((j) => inTheWay(j, length, others, found)).find(Boolean);
    if (bad) remarks.push(movementPlace(line, bad, placeFor(line, masonry, length, others, found)));
    else found.push(...joints!);
  }
  return found.sort((a, b) => a.from - b.from);
}

/** Mm; nought where nothing says it. */
function widthOf(line: LineFacts, { env }: Masonry): number {
  return (line.values.width ? line : defaultLine(env, 'movement-width'))?.number('width') ?? 0;
}

function jointsOf(line: LineFacts, masonry: Masonry, length: number): MovementJoint[] | undefined {
  const width = widthOf(line, masonry);
  const every = line.number('every');
  const distance = line.number('distance');
  if (width <= 0) return undefined;
  if (every !== undefined) return evenly(line, masonry, length, every, width);
  if (distance === undefined || distance <= 0) return undefined;
  const from = line.word('side') === 'right' ? length - distance - width : distance;
  return [{ from, width, line }];
}

function evenly(
  line: LineFacts,
  masonry: Masonry,
  length: number,
  most: number,
  width: number,
): MovementJoint[] | undefined {
  const joint = jointsIn(masonry)!.perpend;
  const module = masonry.brick.size!.length + joint;
  const least = leastBricks(masonry);
  const endJoint = endKind(masonry.facts, 'left') === 'stopped' ? 0 : 1;
  const gaps = panelsOf({ length, most, width, module, joint, endJoint, least });
  return gaps?.map((gap) => ({ ...gap, line }));
}

/** No length of wall shorter than so many bricks is parted off; one at the least, where no defaults say. */
function leastBricks({ env }: Masonry): number {
  return Math.max(1, Math.ceil(defaultLine(env, 'movement-least')?.number('bricks') ?? 1));
}

/** Parts of a brick less than this are none. */
const SAME = 1e-6;
/** As many places as are tried on either side of the one asked for. */
const MOST_TRIED = 200;

/** The place nearest to what was asked for, at an upright joint of the bricks as they lie from the left end. */
function placeFor(
  line: LineFacts,
  masonry: Masonry,
  length: number,
  others: InTheWay,
  found: readonly MovementGap[],
): number | undefined {
  const joint = jointsIn(masonry)!.perpend;
  const module = masonry.brick.size!.length + joint;
  const width = widthOf(line, masonry);
  if (!(width > 0)) return undefined;
  const least = leastBricks(masonry);
  const begins = endKind(masonry.facts, 'left') === 'stopped' ? 0 : joint;
  const at = (bricks: number) => begins + bricks * module - joint;
  const most = Math.floor(
    (length - width - (least * module - joint) - begins + joint) / module + SAME,
  );
  const distance = line.number('distance') ?? length / 2;
  const asked = line.word('side') === 'right' ? length - distance - width : distance;
  const near = Math.min(most, Math.max(least, Math.round((asked + joint - begins) / module)));
  const clear = (bricks: number) =>
    bricks >= least &&
    bricks <= most &&
    !inTheWay({ from: at(bricks), width }, length, others, found);
  for (let step = 0; step <= MOST_TRIED; step++)
    for (const bricks of [near - step, near + step]) if (clear(bricks)) return at(bricks);
  return undefined;
}

/** What is wrong with a place, in a sentence. */
function inTheWay(
  { from, width }: MovementGap,
  length: number,
  { openings, piers }: InTheWay,
  found: readonly MovementGap[],
): string | undefined {
  const to = from + width;
  if (!(from > 0 && to < length)) return phrase`It lies beyond the wall.`;
  const meets = (other: { from: number; width: number }) =>
    from < other.from + other.width && other.from < to;
  const opening = openings.find(meets);
  if (opening) return phrase`It would run through the opening ${opening.name}.`;
  const pier = piers.find(meets);
  if (pier) return phrase`It would run through the pier ${pier.name}.`;
  return found.some(meets) ? phrase`It runs into another.` : undefined;
}
