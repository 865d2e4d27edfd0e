/** Each stretch of a wall between fixed points, as the reader knows it, and the lines that would move its ends. */

import { phrase } from '../../../../shared/phrase';
import { decisionFor, halvesText } from '../../findings/fit/fit';
import { bondBroken, runUnfit, type WallRun } from '../../findings/fit/fit-run';
import type { Remark, RemarkWay } from '../../findings/remark';
import type { LineFacts } from '../../resolve/env';
import {
  type Decided,
  type Fit,
  fitRun,
  type JointLimits,
  type JointWay,
  type LengthWay,
  type Row,
  rowOf,
  type Segment,
  type SettingOut,
  sizeOf,
  type Way,
} from '../../setting-out';
import { lengthText } from '../lengths';
import { type Masonry, waysIn } from '../masonry';
import { byEnds, cutIn, endsOf } from './laid-cut';
import { laidOnce } from './laid-once';
import type { PierFacts, WallPlan } from './spec';

/** Points nearer than this are one point, mm. */
const SAME = 0.5;

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
    text: { name, home: masonry.facts, pieces: 'bricks', move },
    between,
    origin: line?.facts.at(line.key) ?? masonry.facts.line('length')!.origin,
    segment,
    laid: undefined,
    fit,
    closing: () => closingLengths(segment, fit.length, plan),
  };
}

function rowIn(segment: Segment, { spec }: WallPlan): Row {
  return rowOf(spec.unit, spec.joints.perpend, segment, spec.limits);
}

/** Whether the bond's own pattern closes on so many half bricks between these ends. */
function closesOn(halves: number, segment: Segment, plan: WallPlan): boolean {
  const { spec } = plan;
  const { left, right } = segment;
  const length = sizeOf(rowIn(segment, plan), halves);
  const courses = spec.bond.courses.length;
  const alone = {
    openings: [],
    piers: [],
    steps: [],
    movement: [],
    decided: [],
    only: 'face' as const,
  };
  const bare = { ...spec, left, right, length, courses, ...alone };
  return laidOnce(bare).bands.every((band) => band.segments.every((s) => !s.broken.length));
}

/** The ways of a run as a wall sees them, found when somebody asks. */
function ranked(fit: Fit, best: number, segment: Segment, plan: WallPlan): Fit {
  const { length, works, pieces, joint, numbers } = fit;
  let ways: Way[] | undefined;
  return {
    length,
    works,
    pieces,
    joint,
    numbers,
    get ways() {
      ways ??= closingFirst(oneCut(sensible(fit.ways, best)), segment, plan);
      return ways;
    },
  };
}

/** However it is cut, a wall is laid in one way: see {@link cutIn}. */
function oneCut(ways: readonly Way[]): Way[] {
  const first = ways.find((w) => w.kind === 'cut');
  return ways.filter((w) => w.kind !== 'cut' || w === first);
}

/** Other lengths on which the bond closes come before those on which it would be broken. */
function closingFirst(ways: readonly Way[], segment: Segment, plan: WallPlan): Way[] {
  const lengths = ways.filter((w): w is LengthWay => w.kind === 'length');
  const closes = lengths.filter((w) => closesOn(2 * w.wholes + w.half, segment, plan));
  const inOrder = [...closes, ...lengths.filter((w) => !closes.includes(w))];
  return ways.map((w) => (w.kind === 'length' ? inOrder.shift()! : w));
}

/** As far as one looks for a length on which a bond closes, in half bricks. */
const FARTHEST = 8;

/** The nearest lengths, shorter and longer, on which the bond’s own pattern closes. */
function closingLengths(segment: Segment, length: number, plan: WallPlan): LengthWay[] {
  const row = rowIn(segment, plan);
  return [-1, 1].flatMap((side) => {
    for (let by = 1; by <= FARTHEST; by++) {
      const halves = segment.halves + side * by;
      if (halves < 1) return [];
      if (closesOn(halves, segment, plan)) return [lengthWay(halves, sizeOf(row, halves), length)];
    }
    return [];
  });
}

function lengthWay(halves: number, size: number, length: number): LengthWay {
  return {
    kind: 'length',
    wholes: Math.floor(halves / 2),
    half: (halves % 2) as 0 | 1,
    length: size,
    change: size - length,
  };
}

/** Of a joint: so far off it a way that is the only one of its kind may be, and still be worth a word. */
const NEAR = 1 / 2;

/**
 * Of whole bricks and half-bond, both at joints nobody would accept, only the nearer to the best joint is offered; where
 * there is but one of them, it has to be near.
 */
function sensible(ways: readonly Way[], best: number): readonly Way[] {
  const off = (kind: 'joints' | 'half-bond') => {
    const way = ways.find((w): w is JointWay => w.kind === kind);
    return way && !way.acceptable ? Math.abs(way.joint - best) : 0;
  };
  const worse = off('half-bond') > off('joints') ? 'half-bond' : 'joints';
  if (!off(worse)) return ways;
  const alone = !off(worse === 'joints' ? 'half-bond' : 'joints');
  if (alone && off(worse) <= NEAR * best) return ways;
  return ways.filter((w) => w.kind !== worse || ways.length === 1);
}

/** A wall bonded with its pier stops up to half a brick from it, mm: no brick is longer than this. */
const BESIDE = 200;

/** What stands at a point of the wall, in words. */
function endName(at: number, side: 'left' | 'right', plan: WallPlan, masonry: Masonry): string {
  if (at < SAME) return phrase`the left end`;
  if (Math.abs(at - plan.spec.length) < SAME) return phrase`the right end`;
  const edge = (spec: { from: number; width: number }) =>
    side === 'left' ? spec.from + spec.width : spec.from;
  const reach = (p: PierFacts) => (p.attached ? BESIDE : SAME);
  const pier = plan.piers.find((p) => Math.abs(edge(p.spec) - at) < reach(p));
  if (pier) return phrase`the pier ${pier.spec.name}`;
  const moves = plan.movement.some((m) => Math.abs(edge(m) - at) < SAME);
  if (moves) return phrase`a movement joint`;
  const opening = plan.openings.find((o) => Math.abs(edge(o.spec) - at) < SAME);
  return opening ? phrase`the opening ${opening.spec.name}` : lengthText(masonry.env, at);
}

interface Governing {
  readonly facts: LineFacts;
  readonly key: string;
  /** Which way the written value goes when the stretch gets longer. */
  readonly sign: 1 | -1;
  readonly label: string;
}

/** The line whose value gives this stretch its length, so that a way out can rewrite it. */
function governing(segment: Segment, masonry: Masonry, plan: WallPlan): Governing | undefined {
  const right = openingAtEdge(segment.to, 'from', plan);
  if (right) return openingLine(right, 1);
  const pier = pierBetween(segment, plan);
  if (pier) return pier;
  const joint = movementAt(segment, plan);
  if (joint) return joint;
  const left = openingAtEdge(segment.from, 'to', plan);
  const step = stepAt(segment.to, 1, masonry) ?? stepAt(segment.from, -1, masonry);
  if (step) return step;
  const toEnd = Math.abs(segment.to - plan.spec.length) < SAME || pierAtEnd(segment.to, plan);
  // An opening measured from the right goes along when the wall gets longer: its own line is the one.
  const heldRight = left?.facts.line('from')?.word('side') === 'right';
  if (toEnd && !heldRight)
    return {
      facts: masonry.facts.line('length')!,
      key: 'length',
      sign: 1,
      label: phrase`the wall`,
    };
  return left && openingLine(left, -1);
}

/** The line of a movement joint that says how long this stretch is: those that part a wall evenly say no length. */
function movementAt({ from, to }: Segment, { movement }: WallPlan): Governing | undefined {
  const line = movement.find(({ from: at, width, line: said }) =>
    said.word('side') === 'left' ? Math.abs(at - to) < SAME : Math.abs(at + width - from) < SAME,
  )?.line;
  if (!line?.values.distance) return undefined;
  return { facts: line, key: 'distance', sign: 1, label: phrase`the movement joint` };
}

/** The line of a step that a stretch ends at, where its foot or its top is cut off. */
function stepAt(at: number, sign: 1 | -1, { facts }: Masonry): Governing | undefined {
  const lines = [...facts.lines('ground'), ...facts.lines('top')];
  const line = lines.find((l) => Math.abs((l.number('at') ?? Number.NaN) - at) < SAME);
  return line && { facts: line, key: 'at', sign, label: phrase`the step` };
}

/** The line of a pier that stands so far from the end where a stretch begins, and where it stops. */
function pierBetween({ from, to }: Segment, plan: WallPlan): Governing | undefined {
  const last = Math.abs(to - plan.spec.length) < SAME;
  if (from > SAME && !last) return undefined;
  const end = last ? 'right' : 'left';
  const side = last ? from : to;
  const pier = plan.piers.find(({ facts, spec, attached }) => {
    const own = last ? spec.from + spec.width : spec.from;
    const at = facts.line('at');
    const told = at?.number('distance') !== undefined && at.word('end') === end;
    return told && Math.abs(own - side) < (attached ? BESIDE : SAME);
  });
  return (
    pier && { facts: pier.facts.line('at')!, key: 'distance', sign: 1, label: phrase`the pier` }
  );
}

function pierAtEnd(at: number, plan: WallPlan): boolean {
  const pier = plan.piers.find((p) => Math.abs(p.spec.from - at) < SAME);
  return pier !== undefined && Math.abs(pier.spec.from + pier.spec.width - plan.spec.length) < SAME;
}

/** The opening that begins (or ends) at a point, a pier beside it passed over. */
function openingAtEdge(at: number, edge: 'from' | 'to', plan: WallPlan) {
  const pier = plan.piers.find(
    (p) => Math.abs((edge === 'from' ? p.spec.from : p.spec.from + p.spec.width) - at) < SAME,
  );
  const beyond = pier ? (edge === 'from' ? pier.spec.from + pier.spec.width : pier.spec.from) : at;
  return plan.openings.find(
    (o) => Math.abs((edge === 'from' ? o.spec.from : o.spec.from + o.spec.width) - beyond) < SAME,
  );
}

function openingLine(
  opening: WallPlan['openings'][number],
  towards: 1 | -1,
): Governing | undefined {
  const line = opening.facts.line('from');
  if (!line) return undefined;
  const fromLeft = line.word('side') === 'left';
  return {
    facts: line,
    key: 'distance',
    sign: fromLeft ? towards : (-towards as 1 | -1),
    label: phrase`the opening ${opening.spec.name}`,
  };
}

function moved(line: Governing, way: LengthWay, masonry: Masonry): RemarkWay | undefined {
  const now = line.facts.number(line.key);
  if (now === undefined) return undefined;
  const then = now + line.sign * way.change;
  if (then <= 0) return undefined;
  const text = lengthText(masonry.env, then);
  const more = `${lengthText(masonry.env, Math.abs(way.change))} ${way.change > 0 ? phrase`longer` : phrase`shorter`}`;
  const halves = halvesText(way, { pieces: 'bricks' });
  const what = line.key === 'length' ? phrase`Make the wall` : phrase`Move ${line.label} to`;
  const origin = line.facts.at(line.key);
  return {
    title: phrase`${what} ${text}: the run is ${more}, ${halves}`,
    edits: [{ ...origin, text }],
  };
}
