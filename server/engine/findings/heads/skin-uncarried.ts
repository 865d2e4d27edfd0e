/** An opening through a wall of two skins, where what spans it reaches under the front one alone. */
import { phrase } from '../../../../shared/phrase';
import { lengthText, sizeText } from '../../brickwork/lengths';
import type { Lintel } from '../../brickwork/wall/heads/lintel';
import { type Site, throughOf } from '../../brickwork/wall/heads/site';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { deepBehind } from '../../brickwork/wall/parts/backing/lay';
import { defaultLine, type LineFacts } from '../../resolve/env';
import type { Remark, RemarkWay } from '../remark';

/** @param spans the lintel, the head or the arch over the opening */
export function skinUncarried(
  { facts }: OpeningFacts,
  spans: LineFacts,
  lintel: Lintel | undefined,
  site: Site,
): Remark | undefined {
  const { masonry, spec } = site;
  const { env } = masonry;
  const deep = deepBehind(masonry, spec.joints.perpend);
  if (!(deep > 0)) return undefined;
  const both = throughOf(site) + deep;
  const [wide = 0] = lintel?.line.sides('size') ?? [];
  const accepted = defaultLine(env, 'lintel-overhang')?.number('length') ?? 0;
  if (wide >= both - accepted - 1e-6) return undefined;
  const reaches = wide > 0 ? phrase`the lintel is ${lengthText(env, wide)} wide, and ` : '';
  return {
    code: 'skin-uncarried',
    about: facts.name,
    severity: 'information',
    origin: spans.origin,
    message: phrase`Nothing says what carries the skin behind the face over the opening ${facts.name}: ${reaches}the two skins and what is between them are ${lengthText(env, both)} thick. A lintel of its own for it is neither counted nor priced here.`,
    ways: wide > 0 ? underBoth(lintel!, both, site) : [],
  };
}

/** One lintel as wide as both, down to the next 5 mm: the most that hangs over is more than that. */
function underBoth({ line }: Lintel, both: number, { masonry }: Site): RemarkWay[] {
  const { env } = masonry;
  const [, high, ...long] = line.sides('size')!;
  const wide = env.imperial ? both : Math.floor(both / 5) * 5;
  const text = sizeText(env, [wide, high!, ...long]);
  const title = phrase`A lintel ${lengthText(env, wide)} wide, under both skins`;
  return [{ title, edits: [{ ...line.at('size'), text }] }];
}
