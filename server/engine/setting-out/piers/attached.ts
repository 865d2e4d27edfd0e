/** Piers bonded into a wall: each course fills what the wall’s own bond leaves open, and ties run from one into the other. */
import type { UnitSize } from '../types';
import {
  type AttachedShape,
  attachedRegion,
  type Edges,
  ROOM,
  wallJoints,
  wallRows,
} from './attached-region';
import { between, type Candidate, candidate, chooseCycle } from './choose';
import { ties } from './craft';
import { coursePlan, quarterOf } from './place';
import { type Bounds, type Filling, fillings } from './search';
import { type CoursePlan, MOST_HALVES } from './types';

export interface AttachedQuestion {
  readonly shape: AttachedShape;
  /** Of each course of the wall’s bond, from the bottom. */
  readonly edges: readonly Edges[];
  readonly unit: UnitSize;
  readonly joint: number;
  /** What has been asked of one wall: see {@link MOST_ASKED}. */
  readonly asked?: Set<string>;
}

export interface AttachedLaid {
  /** `x` from the pier’s left side, `y` from the wall’s front face. */
  readonly courses: readonly CoursePlan[];
  /** What each course takes up on plan beside the pier’s own rectangle, mm²; negative where the wall runs into it. */
  readonly beyond: readonly number[];
  /** Half bricks that it stands out before the wall. */
  readonly front: number;
  /** Lower is better: see `craft.ts`. */
  readonly cost: number;
}

/** The courses of an attached pier; nothing where no plan laps its faces and ties it to the wall. */
export function attachedPlans(question: AttachedQuestion): AttachedLaid | undefined {
  const { shape, edges, unit, joint } = question;
  const deep = shape.front + shape.wall + shape.back;
  if (![shape.width, deep].every((n) => Number.isInteger(n) && n >= 1 && n <= MOST_HALVES))
    return undefined;
  if (shape.width * deep > MOST_AREA) return undefined;
  if (!edges.length || edges.length > MOST_COURSES || !edges.every(isNear(shape))) return undefined;
  const chosen = remembered(question);
  if (!chosen) return undefined;
  const quarter = quarterOf(unit, joint);
  const through = 2 * shape.wall * quarter - joint;
  return {
    courses: chosen.map((c, i) => moved(shape, c, edges[i]!, quarter, joint)),
    beyond: edges.map(
      ({ left = 0, right = 2 * shape.width }) =>
        through * quarter * (right - left - 2 * shape.width),
    ),
    front: shape.front,
    cost: chosen.reduce((sum, c) => sum + c.cost, 0),
  };
}

/** Half bricks on plan, along times through: beyond it the search takes longer than a keystroke may. */
const MOST_AREA = 16;
/** Bonds come round sooner. */
const MOST_COURSES = 16;

function isNear(shape: AttachedShape) {
  const [low, high] = [-ROOM, 2 * shape.width + ROOM];
  const near = (edge: number | undefined) =>
    edge === undefined || (Number.isInteger(edge) && edge >= low && edge <= high);
  return ({ left, right }: Edges) =>
    near(left) && near(right) && (left ?? 0) <= (right ?? 2 * shape.width);
}

function moved(
  shape: AttachedShape,
  { pieces }: Filling,
  edges: Edges,
  quarter: number,
  joint: number,
): CoursePlan {
  const plan = coursePlan(pieces, attachedRegion(shape, edges), quarter, joint);
  const [dx, dy] = [ROOM * quarter, 2 * shape.front * quarter];
  const pieceOf = new Map(plan.pieces.map((p) => [p, { ...p, x: p.x - dx, y: p.y - dy }]));
  return {
    pieces: [...pieceOf.values()],
    hidden: plan.hidden.map((p) => pieceOf.get(p)!),
    core: [],
  };
}

const shelf = new Map<string, readonly Candidate[] | undefined>();
const MOST_KEPT = 500;

/** Piers of one wall that are alike in it are one; each other takes a search, and no wall has more. */
const MOST_ASKED = 24;

function remembered({ shape, edges, asked }: AttachedQuestion) {
  const key = JSON.stringify([shape, edges]);
  if (asked && !asked.has(key) && asked.size >= MOST_ASKED) return undefined;
  asked?.add(key);
  if (shelf.has(key)) return shelf.get(key);
  const chosen = chosenCourses(shape, edges);
  if (shelf.size >= MOST_KEPT) shelf.clear();
  shelf.set(key, chosen);
  return chosen;
}

/** What a course may cost, a little at a time: cheap plans are few and soon looked through. */
const COSTS = [2, 8, 14, 24];
const ENOUGH = 300;
const TRIES = 12_000;
const TO_FRONT = { enough: 12, tries: 800 };

function chosenCourses(
  shape: AttachedShape,
  edges: readonly Edges[],
): readonly Candidate[] | undefined {
  const turns = edges.length > 1 ? edges : [edges[0]!, edges[0]!];
  const even = turns.every(({ left, right }) => (left ?? 0) + (right ?? 0) === 2 * shape.width);
  for (const alike of even ? (['mirrored', undefined] as const) : [undefined])
    for (const cost of COSTS) {
      const bounds = { cost, enough: ENOUGH, tries: TRIES, toFront: TO_FRONT, alike };
      const known = new Map<string, Candidate[]>();
      const layers = turns.map((edge) => {
        const key = JSON.stringify(edge);
        const layer = known.get(key) ?? candidatesOf(shape, edge, bounds);
        known.set(key, layer);
        return layer;
      });
      const chosen = chooseCycle(layers, (a, b) => between(a, b) + untied(shape, a, b));
      if (chosen) return chosen;
    }
  return undefined;
}

function candidatesOf(shape: AttachedShape, edges: Edges, bounds: Bounds): Candidate[] {
  const region = attachedRegion(shape, edges);
  const plain = wallJoints(shape, edges);
  const found = fillings(region, bounds).map((filling) => candidate(filling, region, plain));
  return bestByFaces(found).slice(0, MOST_OF_ONE);
}

/** Ways to lay one course that are held against those of the next: the work grows with the square. */
const MOST_OF_ONE = 160;

/** So many of those that show the same: what is behind a face is the less of it. */
const ALIKE = 3;

/** The cheapest come first, and of each face only a few are kept. */
function bestByFaces(found: readonly Candidate[]): Candidate[] {
  const seen = new Map<bigint, number>();
  return found.filter(({ bits }) => {
    const count = (seen.get(bits) ?? 0) + 1;
    seen.set(bits, count);
    return count <= ALIKE;
  });
}

/** Two courses running without a brick from the wall into what stands out of it: that would be two works side by side. */
function untied(shape: AttachedShape, a: Filling, b: Filling): number {
  const [near, far] = wallRows(shape);
  const lines = [...(shape.front ? [near] : []), ...(shape.back ? [far] : [])];
  const tied = (line: number) => [...a.pieces, ...b.pieces].some((p) => ties(p, line));
  return lines.every(tied) ? 0 : Number.POSITIVE_INFINITY;
}
