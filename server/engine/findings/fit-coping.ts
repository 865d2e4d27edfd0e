/** A run of bricks on edge that does not fill the top it stands on. */

import type { Fit } from '../setting-out';
import type { CopingRun } from '../work/coping';
import { lengthText } from '../work/lengths';
import type { Masonry } from '../work/masonry';
import { decisionFor, numbersText, settled, waysOf } from './fit';
import type { Remark } from './remark';

export function copingUnfit(run: CopingRun, fit: Fit, masonry: Masonry): Remark | undefined {
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
  const message = `Bricks on edge do not fill ${length}: each takes ${each} with its joint; ${numbersText(fit, run.text, env)}.${stale} A cut is reckoned with until one of the ways is chosen.`;
  return {
    code: 'fit-coping',
    severity: 'warning',
    origin: run.origin,
    message,
    ways: () => waysOf(fit, run.text, env),
  };
}
