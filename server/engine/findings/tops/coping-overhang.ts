/** A coping that does not cover its wall, or a precast one that does not reach far enough over its faces to throw water clear of them. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import { type CopingMade, depthOf } from '../../brickwork/tops/coping-made';
import { defaultLine, type LineFacts } from '../../resolve/env';
import type { Remark, RemarkWay } from '../remark';
import { capFor } from './cap-overhang';
import { piecesLarger } from './piece-ways';

/** What lies below a coping, mm. */
export interface CopingSeat {
  /** Through all skins of the wall, and courses laid out at its top. */
  readonly wall: number;
  /** Whether that is more than the thickness its line says. */
  readonly more: boolean;
  /** Between bricks side by side through it. */
  readonly joint: number;
}

/** Nothing where no library says how far a coping should reach. */
export function copingOverhang(
  line: LineFacts,
  made: CopingMade,
  { wall, more, joint }: CopingSeat,
  { env }: Masonry,
): Remark | undefined {
  const wanted = defaultLine(env, 'coping-overhang');
  const reach = wanted?.number('length');
  if (!wanted || reach === undefined) return undefined;
  const precast = made.kind === 'precast';
  const over = (depthOf(made, joint) - wall) / 2;
  // Bricks reach over no face: they are asked to cover the wall, to within a joint.
  if (precast ? over >= reach : line.word('kind') === 'tiles' || over >= -joint / 2)
    return undefined;
  const text = (mm: number) => lengthText(env, mm);
  const how = over < 0 ? phrase`does not cover` : phrase`reaches ${text(over)} over each face of`;
  const source = wanted.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const [wide] = capFor([wall], reach, env);
  const sides = precast ? '' : phrase`, ${text(depthOf(made, joint))} through it,`;
  const message = phrase`This coping${sides} ${how} a wall ${text(wall)} thick${more ? phrase` over all` : ''}; ${text(reach)} with a drip keeps water off it${source ? ` (${source})` : ''}.${precast ? '' : phrase` Lay one that does, such as precast lengths ${text(wide!)} wide.`}`;
  return {
    code: 'coping-overhang',
    severity: over < 0 ? 'warning' : 'information',
    origin: precast ? line.at('size') : line.at('kind'),
    message,
    related: [{ origin: wanted.origin, message: phrase`How far it should reach` }],
    ways: precast ? wider(line, wide!, env) : [],
  };
}

function wider(line: LineFacts, wide: number, env: Masonry['env']): RemarkWay[] {
  const [long, , ...high] = line.sides('size')!;
  return piecesLarger(line, [long!, wide, ...high], phrase`Lengths of`, env);
}
