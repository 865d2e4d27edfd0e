/** What the fit findings share: ways out as edits, and the sentences about a run. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { LaidCut } from '../../brickwork/wall/laid-cut';
import type { BlockFacts, Env } from '../../resolve/env';
import { type Fit, isPoor, type LengthWay, type Way } from '../../setting-out';
import type { RemarkWay } from '../remark';
import { decide, decisionFor } from './decision';
import { cutText, cutTitle, cutWords, halvesText, judged, many } from './fit-words';

/** How a run is named in a `fit` line, and how its ways out are written. */
export interface RunInText {
  readonly name: string;
  /** The heading whose lines hold its decisions. */
  readonly home: BlockFacts;
  /** The edit that gives the run another length, if one line can. */
  readonly move?: (way: LengthWay) => RemarkWay | undefined;
  /** Other sizes that work, where the run’s length is not said by itself. */
  readonly others?: () => RemarkWay[];
  /** The cut as its courses are laid with one, where they are laid otherwise than as wholes beside one cut. */
  readonly cutAs?: () => LaidCut | undefined;
  /** The edit that puts a cap in place of bricks on edge. */
  readonly cap?: () => RemarkWay | undefined;
  /** What its pieces are called: bricks, bricks on edge, courses. */
  readonly pieces: string;
}

export function waysOf(fit: Fit, run: RunInText, env: Env): RemarkWay[] {
  const found = (of: readonly Way[]) => of.flatMap((way) => wayOf(way, run, env) ?? []);
  const good = withOthers(
    fit.ways.filter((w) => !isPoor(w)),
    found,
    run,
  );
  const ways = [...good, ...found(fit.ways.filter(isPoor)).map((way) => ({ ...way, last: true }))];
  return ways.map((way, i) => ({ ...way, preferred: i === 0 }));
}

/** Other sizes stand where other lengths do. */
function withOthers(
  ways: readonly Way[],
  found: (of: readonly Way[]) => RemarkWay[],
  run: RunInText,
): RemarkWay[] {
  const at = ways.findIndex((w) => w.kind === 'length');
  const place = at < 0 ? ways.length : at;
  const others = run.others?.() ?? [];
  return [...found(ways.slice(0, place)), ...others, ...found(ways.slice(place))];
}

function wayOf(way: Way, run: RunInText, env: Env): RemarkWay | undefined {
  switch (way.kind) {
    case 'joints':
      return decide(
        run,
        'joints',
        phrase`${many(way.wholes, run)} with joints of ${lengthText(env, way.joint)}${judged(way.acceptable)}`,
      );
    case 'half-bond':
      return decide(
        run,
        'half-bond',
        phrase`${halvesText(way, run)} (half-bond) with joints of ${lengthText(env, way.joint)}${judged(way.acceptable)}`,
      );
    case 'cut':
      return run.cutAs
        ? laidCutWay(run.cutAs(), run, env)
        : decide(run, cutWords(way.cut, way.where, env), cutTitle(way, run, env));
    case 'length':
      return run.move?.(way);
    case 'cap':
      return run.cap?.();
  }
}

/** What the courses are laid with already: once this is decided, nothing of it changes. */
function laidCutWay(laid: LaidCut | undefined, run: RunInText, env: Env): RemarkWay | undefined {
  if (!laid) return undefined;
  const title = phrase`${cutText(laid, env)}, joints of ${lengthText(env, laid.joint)}`;
  const where = decisionFor(run.home, run.name)?.where;
  return decide(run, cutWords(laid.lengths[0]!, where, env), title);
}
