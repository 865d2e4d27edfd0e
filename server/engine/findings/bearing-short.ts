/** A lintel that reaches less far over the reveals than the library asks for. */
import { lengthText } from '../brickwork/lengths';
import type { Lintel } from '../brickwork/wall/heads/lintel';
import type { OpeningFacts } from '../brickwork/wall/spec';
import type { Remark, RemarkWay } from './remark';

export function bearingShort({ facts, spec }: OpeningFacts, lintel: Lintel): Remark | undefined {
  const { mm, line, least } = lintel.bearing;
  const asked = least?.number('bearing');
  if (!line || !least || asked === undefined || mm >= asked - 1e-6) return undefined;
  const { env } = facts;
  const now = lengthText(env, Math.max(0, mm));
  const message = `The lintel bears ${now} on each side of an opening ${lengthText(env, spec.width)} wide, less than the ${lengthText(env, asked)} asked for.`;
  const related = [{ origin: least.origin, message: 'The least bearing' }];
  const ways = [longer(lintel, asked, spec.width, facts.env)];
  const origin = line.origin;
  return {
    code: 'bearing-short',
    about: facts.name,
    severity: 'warning',
    origin,
    message,
    related,
    ways,
  };
}

/** Its own bearing, or the length of the lintel. */
function longer(
  { line, bearing }: Lintel,
  asked: number,
  width: number,
  env: OpeningFacts['facts']['env'],
): RemarkWay {
  const own = bearing.line!;
  if (own.values.bearing) {
    const text = lengthText(env, asked);
    return { title: `Bear ${text}`, preferred: true, edits: [{ ...own.at('bearing'), text }] };
  }
  const [wide, high] = line.sides('size')!;
  const long = width + 2 * asked;
  const sides = [wide!, high!, long].map((side) => lengthText(env, side));
  const edits = [{ ...line.at('size'), text: sides.join(' x ') }];
  return { title: `A lintel ${sides[2]} long`, preferred: true, edits };
}
