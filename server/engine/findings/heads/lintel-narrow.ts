/** Lintels that do not reach through the wall, so that brickwork behind or before them hangs over. */
import { phrase } from '../../../../shared/phrase';
import { lengthText, sizeText } from '../../brickwork/lengths';
import type { Lintel } from '../../brickwork/wall/heads/lintel';
import { type Site, throughOf } from '../../brickwork/wall/heads/site';
import { defaultLine } from '../../resolve/env';
import type { Remark, RemarkWay } from '../remark';

export function lintelNarrow(name: string, lintel: Lintel, site: Site): Remark | undefined {
  const { env } = site.masonry;
  const { line, across } = lintel;
  const [wide] = line.sides('size') ?? [];
  const most = defaultLine(env, 'lintel-overhang');
  const accepted = most?.number('length');
  if (wide === undefined || !most || accepted === undefined) return undefined;
  const thick = throughOf(site);
  const over = thick - across * wide - (across - 1) * site.spec.joints.perpend;
  if (over <= accepted + 1e-6) return undefined;
  const many =
    across > 1 ? phrase`${across} lintels ${lengthText(env, wide)} wide` : phrase`The lintel`;
  const message = phrase`${many} under a wall ${lengthText(env, thick)} thick: ${lengthText(env, over)} of it hangs over, more than the ${lengthText(env, accepted)} accepted.`;
  return {
    code: 'lintel-narrow',
    about: name,
    severity: 'warning',
    origin: line.origin,
    message,
    related: [{ origin: most.origin, message: phrase`What is accepted` }],
    ways: asWideAsBricks(lintel, site),
  };
}

/** One for each half brick of the wall, each no wider than a brick. */
function asWideAsBricks({ line }: Lintel, { spec, masonry }: Site): RemarkWay[] {
  const [, high, ...long] = line.sides('size')!;
  const { imperial } = masonry.env;
  const wide = imperial ? spec.unit.width : Math.floor(spec.unit.width / 5) * 5;
  if (wide <= 0) return [];
  const text = sizeText(masonry.env, [wide, high!, ...long]);
  const side = lengthText(masonry.env, wide);
  const title =
    spec.thickness === 1
      ? phrase`A lintel ${side} wide`
      : phrase`${spec.thickness} lintels ${side} wide`;
  return [{ title, preferred: true, edits: [{ ...line.at('size'), text }] }];
}
