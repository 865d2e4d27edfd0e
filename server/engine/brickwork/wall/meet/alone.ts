/** A wall as it would be laid if it met no other. Kept for as long as its block and what it is worked out in are the same. */
import { decisionFor } from '../../../findings/fit/decision';
import type { WallRun } from '../../../findings/fit/fit-run';
import type { Remark } from '../../../findings/remark';
import { type Env, factsOf } from '../../../resolve/env';
import type { SettingOut, WallSpec } from '../../../setting-out';
import type { Gap } from '../../../working/term';
import type { SourceBlock } from '../../../workspace/source';
import { type Masonry, masonryOf } from '../../masonry';
import { asLaid, decidedRuns, runsOf } from '../fits';
import { laidOnce } from '../laid-once';
import { type Attached, attachedIn } from '../piers/attached';
import { planWall, type WallPlan } from '../spec';

/** What could be laid of it. */
export interface LaidAlone {
  readonly plan: WallPlan;
  /** What it is laid by: beside piers that it is bonded to it is longer or shorter than its plan says. */
  readonly spec: WallSpec;
  readonly out: SettingOut;
  readonly runs: readonly WallRun[];
}

export interface WallAlone {
  readonly masonry: Masonry;
  readonly gaps: readonly Gap[];
  readonly remarks: readonly Remark[];
  /** Nothing when a measure is missing without which no brick can be laid. */
  readonly laid?: LaidAlone;
}

const kept = new WeakMap<SourceBlock, { readonly env: Env; readonly wall: WallAlone }>();

/** `only` for a block that nobody else asks about. */
export function wallAlone(block: SourceBlock, env: Env, only?: WallSpec['only']): WallAlone {
  const known = kept.get(block);
  if (known?.env === env) return known.wall;
  const wall = newWall(block, env, only);
  kept.set(block, { env, wall });
  return wall;
}

function newWall(block: SourceBlock, env: Env, only: WallSpec['only']): WallAlone {
  const masonry = masonryOf(factsOf(block, env)!, env);
  const gaps: Gap[] = [...masonry.gaps];
  const remarks: Remark[] = [];
  const plan = planWall(masonry, remarks, gaps);
  const attached = plan && attachedIn(plan, env, remarks);
  // Piers look at what stands behind the face they grow out of.
  const laid = attached && layOut(masonry, attached, plan.piers.length ? undefined : only);
  return { masonry, gaps, remarks, laid };
}

const isDecided = ({ text }: WallRun) => decisionFor(text.home, text.name) !== undefined;

/** Laid once to know its runs, and again where a `fit` line decides for one. */
function layOut(masonry: Masonry, { plan, spec }: Attached, only: WallSpec['only']): LaidAlone {
  const lay = (wall: WallSpec) => laidOnce(only ? { ...wall, only } : wall);
  const first = lay(spec);
  const runs = runsOf(masonry, plan, first);
  // Whether a decision answers anything, and is laid as it says, is seen only as stretches lie on one another.
  if (only === 'apart' && runs.some(isDecided)) return layOut(masonry, { plan, spec }, 'face');
  const decided = decidedRuns(runs, spec.limits);
  const own = decided.length ? { ...spec, decided } : spec;
  const out = decided.length ? lay(own) : first;
  const { piers } = plan.spec;
  const laid = asLaid(runs, out);
  return {
    plan,
    spec: own,
    out: spec === plan.spec ? out : { ...out, spec: { ...out.spec, piers } },
    runs: laid,
  };
}
