/** The line that says how long a run of a wall is: what has to be written for another length. */
import { phrase } from '../../../../shared/phrase';
import { halvesText } from '../../findings/fit/fit-words';
import type { RemarkWay } from '../../findings/remark';
import type { LineFacts } from '../../resolve/env';
import type { LengthWay, Segment } from '../../setting-out';
import { lengthText } from '../lengths';
import type { Masonry } from '../masonry';
import type { PierFacts } from './piers/placed';
import type { WallPlan } from './spec';

/** Points nearer than this are one point, mm. */
const SAME = 0.5;

/** A wall bonded with its pier stops up to half a brick from it, mm: no brick is longer than this. */
const BESIDE = 200;

/** What stands at a point of the wall, in words. */
export function endName(
  at: number,
  side: 'left' | 'right',
  plan: WallPlan,
  masonry: Masonry,
): string {
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
export function governing(
  segment: Segment,
  masonry: Masonry,
  plan: WallPlan,
): Governing | undefined {
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

export function moved(line: Governing, way: LengthWay, masonry: Masonry): RemarkWay | undefined {
  const now = line.facts.number(line.key);
  if (now === undefined) return undefined;
  const then = now + line.sign * way.change;
  if (then <= 0) return undefined;
  const text = lengthText(masonry.env, then);
  const more = `${lengthText(masonry.env, Math.abs(way.change))} ${way.change > 0 ? phrase`longer` : phrase`shorter`}`;
  const halves = halvesText(way, { pieces: phrase`bricks` });
  const origin = line.facts.at(line.key);
  return {
    title:
      line.key === 'length'
        ? phrase`Make the wall ${text}: the run is ${more}, ${halves}`
        : phrase`Move ${line.label} to ${text}: the run is ${more}, ${halves}`,
    edits: [{ ...origin, text }],
  };
}
