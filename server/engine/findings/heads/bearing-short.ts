/** A lintel that reaches less far over the reveals than the library asks for, or not over them at all. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Lintel } from '../../brickwork/wall/heads/lintel';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { type Remark, type RemarkWay, rewrite } from '../remark';

export function bearingShort({ facts, spec }: OpeningFacts, lintel: Lintel): Remark | undefined {
  const { mm, line, least } = lintel.bearing;
  const asked = least?.number('bearing');
  if (!line || !least || asked === undefined || mm >= asked - 1e-6) return undefined;
  const { env } = facts;
  const message = phrase`The lintel bears ${lengthText(env, mm)} on each side of an opening ${lengthText(env, spec.width)} wide, less than the ${lengthText(env, asked)} asked for.`;
  const related = [{ origin: least.origin, message: phrase`The least bearing` }];
  const ways = [longer(lintel, asked, spec.width, env)];
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

/** It cannot lie there at all: nothing holds it up. Told whatever a library asks for. */
export function bearsOnNothing(
  { facts, spec }: OpeningFacts,
  lintel: Lintel | undefined,
): Remark | undefined {
  const { line, least, mm } = lintel?.bearing ?? {};
  const long = lintel?.line.sides('size')?.[2];
  const short = long !== undefined && long <= spec.width;
  if (!lintel || !line || (!short && mm! > 0)) return undefined;
  const { env } = facts;
  const wide = lengthText(env, spec.width);
  const what = short
    ? phrase`A lintel ${lengthText(env, long)} long`
    : phrase`A lintel without a bearing`;
  const asked = Math.max(least?.number('bearing') ?? 0, mm!);
  return {
    code: 'bearing-short',
    about: facts.name,
    severity: 'error',
    origin: (short ? lintel.line : line).origin,
    message: phrase`${what} bears on nothing over an opening ${wide} wide: it is left out.`,
    related: least && [{ origin: least.origin, message: phrase`The least bearing` }],
    ways: asked > 0 ? [longer(lintel, asked, spec.width, env, short)] : [],
  };
}

/** Its own bearing, or the length of the lintel. */
function longer(
  { line, bearing }: Lintel,
  asked: number,
  width: number,
  env: OpeningFacts['facts']['env'],
  bySize = false,
): RemarkWay {
  const own = bearing.line!;
  if (own.values.bearing && !bySize) {
    const text = lengthText(env, asked);
    return {
      title: phrase`Bear ${text}`,
      preferred: true,
      edits: [rewrite(own.at('bearing'), text)],
    };
  }
  const [wide, high] = line.sides('size')!;
  const long = width + 2 * asked;
  const sides = [wide!, high!, long].map((side) => lengthText(env, side));
  const edits = [rewrite(line.at('size'), sides.join(' x '))];
  return { title: phrase`A lintel ${sides[2]} long`, preferred: true, edits };
}
