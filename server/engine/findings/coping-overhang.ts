/** A precast coping that does not reach far enough over the faces of its wall to throw water clear of them. */
import { lengthText, sizeText } from '../brickwork/lengths';
import { type Masonry, thicknessOf } from '../brickwork/masonry';
import { defaultLine, type LineFacts } from '../resolve/env';
import type { WallSpec } from '../setting-out';
import { capFor } from './cap-overhang';
import type { Remark } from './remark';

/** Nothing where no library says how far a coping should reach. */
export function copingOverhang(
  line: LineFacts,
  { thickness, unit, joints }: WallSpec,
  { env }: Masonry,
): Remark | undefined {
  const sides = line.word('kind') === 'precast' ? line.sides('size') : undefined;
  const wanted = defaultLine(env, 'coping-overhang');
  const reach = wanted?.number('length');
  if (!sides || !wanted || reach === undefined) return undefined;
  const wall = thicknessOf(thickness, unit, joints.perpend);
  const over = (sides[1]! - wall) / 2;
  if (over >= reach) return undefined;
  const [wide] = capFor([wall], reach, env);
  const enough = sizeText(env, [sides[0]!, wide!, ...sides.slice(2)]);
  const how = over < 0 ? 'does not cover' : `reaches ${lengthText(env, over)} over each face of`;
  const source = wanted.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const message = `This coping ${how} a wall ${lengthText(env, wall)} thick; ${lengthText(env, reach)} with a drip keeps water off it${source ? ` (${source})` : ''}.`;
  return {
    code: 'coping-overhang',
    severity: 'information',
    origin: line.at('size'),
    message,
    related: [{ origin: wanted.origin, message: 'How far it should reach' }],
    ways: [
      {
        title: `Lengths of ${enough}`,
        edits: [{ ...line.at('size'), text: enough }],
        preferred: true,
      },
    ],
  };
}
