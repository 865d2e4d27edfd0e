/** Each stretch of a wall between fixed points, as the reader knows it, and the lines that would move its ends. */
import { phrase } from '../../../../shared/phrase';
import { decisionFor } from '../../findings/fit/decision';
import { bondBroken, runUnfit, type WallRun } from '../../findings/fit/fit-run';
import type { Remark } from '../../findings/remark';
import {
  type Decided,
  fitRun,
  type JointLimits,
  type JointWay,
  type LengthWay,
  type Segment,
  type SettingOut,
} from '../../setting-out';
import { type Masonry, waysIn } from '../masonry';
import { endName, governing, moved } from './governing';
import { byEnds, cutIn, endsOf } from './laid-cut';
import type { WallPlan } from './spec';
import { closingLengths, ranked, rowIn } from './ways';

/** Stretches by their ends, each told once, from the left and named run-1, run-2. */
export function runsOf(masonry: Masonry, plan: WallPlan, out: SettingOut): WallRun[] {
  const byEnds = new Map<string, Segment>();
  for (const band of out.bands)
    for (const segment of band.segments) {
      const ends = `${segment.from} ${segment.to}`;
      if (!byEnds.has(ends)) byEnds.set(ends, segment);
    }
  const found = [...byEnds.values()].sort((a, b) => a.from - b.from || a.to - b.to);
  return found.map((segment, i) => runOf(segment, `run-${i + 1}`, masonry, plan));
}

/** The same runs with the cuts that they are laid with, once what is decided is taken into account. */
export function asLaid(runs: readonly WallRun[], out: SettingOut): readonly WallRun[] {
  if (runs.every((run) => run.fit.works !== 'no')) return runs;
  const segments = byEnds(out);
  return runs.map((run) => {
    if (run.fit.works !== 'no') return run;
    const laid = cutIn(segments.get(endsOf(run.segment)) ?? []);
    return { ...run, laid, text: { ...run.text, cutAs: () => laid } };
  });
}

/** Runs that a `fit` line has laid otherwise: at joints outside the usual limits, or with the cut at one end. */
export function decidedRuns(runs: readonly WallRun[], limits: JointLimits): Decided[] {
  return runs.flatMap(({ fit, segment, text }) => {
    const decision = decisionFor(text.home, text.name);
    if (fit.works !== 'no' || !decision) return [];
    const { from, to } = segment;
    if (decision.how === 'cut') return [{ from, to, limits, cutAt: decision.where }];
    const way = fit.ways.find((w): w is JointWay => w.kind === decision.how);
    return way ? [{ from, to, limits: reaching(limits, way.joint) }] : [];
  });
}

function reaching(limits: JointLimits, joint: number): JointLimits {
  return { ...limits, least: Math.min(limits.least, joint), most: Math.max(limits.most, joint) };
}

/** Tells of runs that do not work, each with its ways out. */
export function remarkOnRuns(runs: readonly WallRun[], masonry: Masonry, remarks: Remark[]): void {
  for (const run of runs) {
    const remark = runUnfit(run, masonry) ?? bondBroken(run, masonry);
    if (remark) remarks.push(remark);
  }
}

function runOf(segment: Segment, name: string, masonry: Masonry, plan: WallPlan): WallRun {
  const row = rowIn(segment, plan);
  const prefer = waysIn(masonry.env, 'ways');
  const asked = fitRun({ ...row, length: segment.to - segment.from, prefer });
  const fit = asked.works === 'no' ? ranked(asked, row.limits.best, segment, plan) : asked;
  const line = governing(segment, masonry, plan);
  const between = phrase`from ${endName(segment.from, 'left', plan, masonry)} to ${endName(segment.to, 'right', plan, masonry)}`;
  const move = (way: LengthWay) => (line ? moved(line, way, masonry) : undefined);
  return {
    text: { name, home: masonry.facts, pieces: phrase`bricks`, move },
    between,
    origin: line?.facts.at(line.key) ?? masonry.facts.line('length')!.origin,
    segment,
    laid: undefined,
    fit,
    closing: () => closingLengths(segment, fit.length, plan),
  };
}
