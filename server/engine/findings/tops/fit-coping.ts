/** A run of coping whose pieces do not fill the top it stands on. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import type { CopingRun } from '../../brickwork/tops/coping';
import type { CutWay, Fit, JointWay } from '../../setting-out';
import { decisionFor, settled } from '../fit/decision';
import { waysOf } from '../fit/fit';
import { numbersText, reckonedText } from '../fit/fit-words';
import type { Remark } from '../remark';

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
  const each = lengthText(env, run.made.along + masonry.jointTerms.perpend.value.toNumber());
  const length = lengthText(env, fit.length);
  const stale = decision ? phrase` What its fit line says no longer answers this length.` : '';
  const message = phrase`${called(run)} do not fill ${length}: each takes ${each} with its joint; ${numbersText(fit, run.text, env)}.${stale} ${reckonedText(reckoned(way, masonry))}`;
  return {
    code: 'fit-coping',
    about: `${run.text.home.name} ${run.text.name}`,
    // A precast length is cut on nearly every wall; a cut brick on edge shows.
    severity: run.made.kind === 'precast' ? 'information' : 'warning',
    origin: run.origin,
    message,
    ways: () => waysOf(fit, run.text, env),
  };
}

function called({ made }: CopingRun): string {
  return `${made.pieces[0]!.toUpperCase()}${made.pieces.slice(1)}`;
}

function reckoned(way: JointWay | CutWay | undefined, { env }: Masonry): string {
  if (!way) return phrase`No piece of it is`;
  return way.kind === 'cut'
    ? phrase`A cut is`
    : phrase`Joints of ${lengthText(env, way.joint)} are`;
}
