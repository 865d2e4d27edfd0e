/** A movement joint that cannot stand where its line puts it. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { LineFacts } from '../../resolve/env';
import { type Remark, rewrite } from '../remark';

/** @param place mm from the left end, clear of everything and at a joint of the bricks; nothing where there is none */
export function movementPlace(line: LineFacts, why: string, place: number | undefined): Remark {
  const said = line.values.width ? line.number('width') : undefined;
  const wide = said === undefined ? '' : ` wide ${lengthText(line.env, said)}`;
  const text =
    place === undefined ? '' : `movement-joint left ${lengthText(line.env, place)}${wide}`;
  const how = text
    ? phrase`Say how much wall stands before it, in clear wall: ${text}.`
    : phrase`This wall has no clear place for one, four bricks or more from its ends.`;
  return {
    code: 'movement-place',
    severity: 'error',
    origin: line.origin,
    message: phrase`This movement joint is left out. ${why} ${how}`,
    ways: text ? [{ title: phrase`Write ${text}`, edits: [rewrite(line.origin, text)] }] : [],
  };
}
