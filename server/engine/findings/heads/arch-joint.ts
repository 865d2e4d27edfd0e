/** A rough arch struck so tight that its joints gape at the back. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { archJoints, type HeadArch, struck } from '../../brickwork/wall/heads/arch';
import type { Site } from '../../brickwork/wall/heads/site';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { defaultLine } from '../../resolve/env';
import { decide, decisionFor } from '../fit/decision';
import type { Remark, RemarkWay } from '../remark';
import { riseStep } from './arch-rise';

export function archJoint(opening: OpeningFacts, head: HeadArch, site: Site): Remark | undefined {
  const { facts } = opening;
  if (!head.wide || decisionFor(facts, 'arch')) return undefined;
  const { env } = site.masonry;
  const [ring] = [...head.rings].sort((a, b) => b.back - a.back);
  const { most } = archJoints(site);
  const back = lengthText(env, ring!.back);
  const message = phrase`Uncut bricks round a radius of ${lengthText(env, head.arch.radius)} have joints of ${lengthText(env, ring!.soffit)} at the soffit and ${back} at the back, more than the ${lengthText(env, most)} anyone would accept.`;
  return {
    code: 'arch-joint',
    about: facts.name,
    severity: 'warning',
    origin: head.line.origin,
    message,
    ways: () => ways(opening, head, site),
  };
}

function ways(opening: OpeningFacts, head: HeadArch, site: Site): RemarkWay[] {
  const run = { name: 'arch', home: opening.facts };
  const bricks = head.rings.reduce((sum, { count }) => sum + count, 0);
  const even = lengthText(site.masonry.env, site.spec.joints.perpend);
  return [
    decide(
      run,
      'cut',
      phrase`An axed arch: its bricks cut to wedges, about ${bricks} of them, joints of ${even}`,
    ),
    ...flatter(opening, head, site),
    { ...decide(run, 'joints', phrase`Keep it, with its wide joints`), last: true },
  ].map((way, i) => ({ ...way, preferred: i === 0 }));
}

/** More rises than this are not tried. */
const MOST_TRIED = 400;

/** The highest rise, in steps, at which its joints are accepted and the arch is not too flat. */
function flatter({ facts, spec }: OpeningFacts, head: HeadArch, site: Site): RemarkWay[] {
  const least = (defaultLine(facts.env, 'arch-rise')?.number('share') ?? 0) * spec.width;
  const one = riseStep(facts.env.imperial);
  const step = Math.max(one, Math.ceil(head.arch.rise / MOST_TRIED / one) * one);
  let rise = (Math.ceil(head.arch.rise / step) - 1) * step;
  for (; rise >= least && rise > 0; rise -= step) {
    const tried = struck(rise, head.arch.rings, spec.width, 'rough', site);
    if (tried && !tried.wide) return [flatterWay(head, rise, site)];
  }
  return [];
}

function flatterWay({ line, arch }: HeadArch, rise: number, { masonry }: Site): RemarkWay {
  const said = lengthText(masonry.env, rise);
  const text = `head segmental rise ${said}${line.values.rings ? ` rings ${arch.rings}` : ''}`;
  const edits = [{ block: line.block, span: line.line.syntax.span, text }];
  return { title: phrase`A flatter arch, rising ${said}`, edits };
}
