/** Soldiers or bricks on edge that do not fill the head or the sill of an opening. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { UprightRow } from '../../brickwork/wall/heads/row';
import type { Site } from '../../brickwork/wall/heads/site';
import { decisionFor, settled } from '../fit/decision';
import { waysOf } from '../fit/fit';
import { numbersText, reckonedText } from '../fit/fit-words';
import type { Remark } from '../remark';

export function headUnfit(row: UprightRow, { masonry, spec }: Site): Remark | undefined {
  const { fit, text, way, line } = row;
  if (fit.works !== 'no') return undefined;
  const decision = decisionFor(text.home, text.name);
  if (settled(fit, decision)) return undefined;
  const { env } = masonry;
  const called = text.pieces[0]!.toUpperCase() + text.pieces.slice(1);
  const each = lengthText(env, spec.unit.height + spec.joints.perpend);
  const stale = decision ? phrase` What its fit line says no longer answers this length.` : '';
  const what = !way
    ? phrase`No brick is`
    : way.kind === 'cut'
      ? phrase`A cut is`
      : phrase`Joints of ${lengthText(env, way.joint)} are`;
  const message = phrase`${called} do not fill ${lengthText(env, fit.length)}: each takes ${each} with its joint; ${numbersText(fit, text, env)}.${stale} ${reckonedText(what)}`;
  return {
    code: 'fit-head',
    about: `${text.home.name} ${text.name}`,
    severity: 'warning',
    origin: line.origin,
    message,
    ways: () => waysOf(fit, text, env),
  };
}
