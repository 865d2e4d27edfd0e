/** A run of bricks on edge that does not fill the top it stands on. */

import type { CopingRun } from '../brickwork/coping';
import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import type { CutWay, Fit, JointWay } from '../setting-out';
import { decisionFor, numbersText, reckonedText, settled, waysOf } from './fit';
import type { Remark } from './remark';

/** `way` is what is counted until one of the ways is chosen. */
export function copingUnfit(
  run: CopingRun,
  fit: Fit,
  way: JointWay | CutWay | undefined,
  masonry: Masonry,
): Remark | undefined {
  if (fit.works !== 'no') return undefined;
  const decision = decisionFor(run.text.home, run.text.name);
  if (settled(fit, decision)) return undefined;
  const { env } = masonry;
  const each = lengthText(
    env,
    masonry.brick.size!.height + masonry.jointTerms.perpend.value.toNumber(),
  );
  const length = lengthText(env, fit.length);
  const stale = decision ? ' What its fit line says no longer answers this length.' : '';
  const message = `Bricks on edge do not fill ${length}: each takes ${each} with its joint; ${numbersText(fit, run.text, env)}.${stale} ${reckonedText(reckoned(way, masonry))}`;
  return {
    code: 'fit-coping',
    about: `${run.text.home.name} ${run.text.name}`,
    severity: 'warning',
    origin: run.origin,
    message,
    ways: () => waysOf(fit, run.text, env),
  };
}

function reckoned(way: JointWay | CutWay | undefined, { env }: Masonry): string {
  if (!way) return 'No brick on edge is';
  return way.kind === 'cut' ? 'A cut is' : `Joints of ${lengthText(env, way.joint)} are`;
}
