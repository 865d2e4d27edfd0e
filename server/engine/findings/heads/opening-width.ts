/** An opening with work above or below it whose width is not brickwork and a joint. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import type { WallPlan } from '../../brickwork/wall/spec';
import { fitRun, rowOf } from '../../setting-out';
import type { Remark } from '../remark';

export function openingWidth(
  opening: OpeningFacts,
  plan: WallPlan,
  masonry: Masonry,
): Remark | undefined {
  const line = opening.facts.line('width')!;
  const { spec } = plan;
  const row = rowOf(
    spec.unit,
    spec.joints.perpend,
    { left: 'butted', right: 'butted' },
    spec.limits,
  );
  const fit = fitRun({ ...row, length: opening.spec.width });
  if (fit.works !== 'no') return undefined;
  const { env } = masonry;
  const sizes = fit.ways.flatMap((w) => (w.kind === 'length' ? [w] : []));
  const near = sizes.map((w) => lengthText(env, w.length)).join(phrase` or `);
  const whole = opening.spec.top === null && opening.spec.sill === 0;
  const why = whole
    ? phrase`It runs the whole height, so nothing above has to work to it; the gate decides.`
    : phrase`The courses across it will not line up with those beside it without a cut.`;
  const message = phrase`${lengthText(env, opening.spec.width)} is no number of half bricks and a joint; ${near} would be. ${why}`;
  const ways = sizes.map((w, i) => ({
    title: phrase`Make it ${lengthText(env, w.length)}`,
    preferred: i === 0 && !whole,
    edits: [{ ...line.at('width'), text: lengthText(env, w.length) }],
  }));
  return {
    code: 'opening-width',
    severity: whole ? 'hint' : 'warning',
    origin: line.at('width'),
    message,
    ways,
  };
}
