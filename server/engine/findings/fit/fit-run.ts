/** A stretch of wall between two fixed points that does not work in whole or half bricks, or breaks its bond. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import { whyBroken } from '../../brickwork/wall/bond-choice';
import type { LaidCut } from '../../brickwork/wall/laid-cut';
import type { Env } from '../../resolve/env';
import type { Fit, LengthWay, Segment } from '../../setting-out';
import type { Origin } from '../../working/term';
import type { Remark, RemarkWay } from '../remark';
import { decisionFor, settled } from './decision';
import { type RunInText, waysOf } from './fit';
import { cutText, numbersText, reckonedText } from './fit-words';

export interface WallRun {
  readonly text: RunInText;
  /** "from the left end to the pier hanging". */
  readonly between: string;
  readonly origin: Origin;
  readonly segment: Segment;
  /** The cut it is laid with, what is decided taken into account. */
  readonly laid: LaidCut | undefined;
  readonly fit: Fit;
  /** Lengths near it on which the bond closes. */
  readonly closing: () => readonly LengthWay[];
}

export function runUnfit(run: WallRun, masonry: Masonry): Remark | undefined {
  if (run.fit.works !== 'no') return undefined;
  const decision = decisionFor(run.text.home, run.text.name);
  if (settled(run.fit, decision, run.laid)) return undefined;
  const { env } = masonry;
  const stale = decision ? phrase` What its fit line says no longer answers this length.` : '';
  const message = phrase`The wall ${run.between} (${run.text.name}, ${lengthText(env, run.fit.length)}) does not work in whole or half bricks: ${numbersText(run.fit, run.text, env)}.${stale} ${reckonedText(reckoned(run, env))}`;
  return {
    code: 'fit-run',
    about: run.text.name,
    severity: 'warning',
    origin: run.origin,
    message,
    ways: () => waysOf(run.fit, run.text, env),
  };
}

/** As the stretch was laid: with a cut wherever one can be made. */
function reckoned({ segment: { runs }, laid }: WallRun, env: Env): string {
  if (laid)
    return laid.lengths.length + laid.each > 2
      ? phrase`${cutText(laid, env)} are`
      : phrase`${cutText(laid, env)} is`;
  if (!runs.some((r) => r.groups.length)) return phrase`No brick is`;
  return phrase`Joints of ${lengthText(env, runs[0]!.joint)} are`;
}

/** It works in half bricks, but the bond’s own pattern does not close on the length. */
export function bondBroken(run: WallRun, masonry: Masonry): Remark | undefined {
  const broken = run.segment.broken.filter((b) => b.why === 'bond');
  if (!broken.length || run.fit.works === 'no') return undefined;
  if (decisionFor(run.text.home, run.text.name)?.how === 'half-bond') return undefined;
  const { env } = masonry;
  const at = lengthText(env, broken[0]!.at);
  const { opening } = broken[0]!;
  const where =
    opening === undefined ? phrase`in the middle` : phrase`under or over the opening ${opening}`;
  const message = phrase`The bond does not close on the wall ${run.between} (${run.text.name}, ${lengthText(env, run.fit.length)}): it is broken ${at} from the left end, ${where}. ${whyBroken(broken[0]!.where)} Nothing is wrong with that if it is meant.`;
  return {
    code: 'bond-broken',
    about: run.text.name,
    severity: 'information',
    origin: run.origin,
    message,
    ways: (onlySure) => [keepBroken(run, masonry), ...(onlySure ? [] : lengths(run))],
  };
}

function keepBroken(run: WallRun, masonry: Masonry): RemarkWay {
  const fit = {
    ...run.fit,
    ways: [
      {
        kind: 'half-bond' as const,
        ...run.fit.pieces,
        joint: run.fit.joint ?? 0,
        acceptable: true,
      },
    ],
  };
  const [way] = waysOf(fit, run.text, masonry.env);
  return { ...way!, title: phrase`Keep it: broken bond is meant`, sure: true };
}

function lengths(run: WallRun): RemarkWay[] {
  return run.closing().flatMap((way) => run.text.move?.(way) ?? []);
}
