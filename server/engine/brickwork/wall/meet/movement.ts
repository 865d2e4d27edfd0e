/** Movement joints of a wall, from its lines. */
import { movementPlace } from '../../../findings/movement-place';
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
  if (lines.length > MOST_GAPS) remarks.push(tooMany(masonry.facts, 'movement joints', MOST_GAPS));
  for (const line of lines.slice(0, MOST_GAPS)) {
    const joints = jointsOf(line, masonry, length);
    const why = joints
      ? undefined
      : 'There is no wall there, or not four bricks of it between two of them.';
    const bad = why ?? joints!.map((j) => inTheWay(j, length, others, found)).find(Boolean);
    if (bad) remarks.push(movementPlace(line, bad));
    else found.push(...joints!);
  }
  return found.sort((a, b) => a.from - b.from);
}

function jointsOf(line: LineFacts, masonry: Masonry, length: number): MovementJoint[] | undefined {
  const width = (line.values.width ? line : defaultLine(masonry.env, 'movement-width'))?.number(
    'width',
  );
  const every = line.number('every');
  const distance = line.number('distance');
  if (width === undefined || width <= 0) return undefined;
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
  const endJoint = endKind(masonry.facts, 'left') === 'stopped' ? 0 : 1;
  const gaps = panelsOf({ length, most, width, module, joint, endJoint });
  return gaps?.map((gap) => ({ ...gap, line }));
}

/** What is wrong with a place, in a sentence. */
function inTheWay(
  { from, width }: MovementGap,
  length: number,
  { openings, piers }: InTheWay,
  found: readonly MovementGap[],
): string | undefined {
  const to = from + width;
  if (!(from > 0 && to < length)) return 'It lies beyond the wall.';
  const meets = (other: { from: number; width: number }) =>
    from < other.from + other.width && other.from < to;
  const opening = openings.find(meets);
  if (opening) return `It would run through the opening ${opening.name}.`;
  const pier = piers.find(meets);
  if (pier) return `It would run through the pier ${pier.name}.`;
  return found.some(meets) ? 'It runs into another.' : undefined;
}
