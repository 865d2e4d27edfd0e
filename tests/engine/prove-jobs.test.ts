/** Random jobs from their text to their pieces: every course of every wall proved on plan, with its piers, openings and the wall it meets. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import type { Work } from '../../server/engine/brickwork/work';
import { type PlacedPiece, placeCourse, type SettingOut } from '../../server/engine/setting-out';
import { rulesOf } from '../../server/engine/setting-out/place/built';
import { planOutline } from '../../server/engine/setting-out/place/outline';
import {
  type LayoutFault,
  type PlanOutline,
  provePlan,
} from '../../server/engine/setting-out/prove';
import { FIRM } from '../findings/tells';
import { onGround, type Standing } from '../setting-out/on-plan';
import { area, asPieces } from '../setting-out/proofs';
import { jobOf } from './world';

const COURSES = 14;

/** Laid, and as it would be if it met no other wall. */
interface Stood {
  readonly laid: SettingOut;
  readonly alone: SettingOut;
  readonly work: Work;
  readonly at: Standing;
}

function stood(work: Work, at: Standing): Stood | undefined {
  const { laid, carved, settingOut } = work.facts;
  const alone = carved ?? settingOut;
  return alone && { laid: laid ?? alone, alone, work, at };
}

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly along: number;
  readonly across: number;
}

/** What pier and wall fill together where a pier stands: its own plan, and the wall between where it is toothed on both sides. */
function pierGround({ alone, work }: Stood, course: number): Rect[] {
  const wall = planOutline(alone, course);
  return piersAt(work, course).flatMap(({ from, width, y, depth, attached }) => {
    const own = { x: from, y, along: width, across: depth };
    if (!attached) return [own];
    const to = from + width;
    const before = wall.map((o) => o.x + o.width).filter((end) => end > from - REACH && end < to);
    const after = wall.map((o) => o.x).filter((end) => end > from && end < to + REACH);
    const left = Math.min(from, ...before);
    return [own, { x: left, y: 0, along: Math.max(to, ...after) - left, across: alone.thickness }];
  });
}

/** A brick and a bit: so far beside a pier the wall’s teeth may stop, mm. */
const REACH = 230;

const piersAt = ({ facts: { piers = [] } }: Work, course: number) =>
  piers.filter(({ base, courses }) => course >= base && course < base + courses);

function pierPieces(work: Work, course: number): PlacedPiece[] {
  return piersAt(work, course).flatMap(({ placed, base, from, y, attached }) => {
    const { pieces } = placed[(course - base) % placed.length]!;
    return pieces.map((p) => ({ ...p, x: p.x + from, y: p.y + (attached ? 0 : y) }));
  });
}

/** Openings as if they were solid, clear of their reveals by more than a joint: whatever lies in one overlaps it. */
function solid({ spec, thickness }: SettingOut, course: number): Rect[] {
  return spec.openings
    .filter(({ sill, top }) => sill <= course && (top ?? Number.POSITIVE_INFINITY) > course)
    .map(({ from, width }) => ({ x: from + 20, y: 0, along: width - 40, across: thickness }));
}

/** Without half the joint at plain ends: what stands there has the other half. */
function clear({ x, y, width, height, left, right }: PlanOutline, half: number): Rect {
  const from = left === 'stopped' ? x : x + half;
  const to = right === 'stopped' ? x + width : x + width - half;
  return { x: from, y, along: to - from, across: height };
}

/** Everything of one course on the ground, against everything that has to be filled there. */
function faultsIn(walls: readonly Stood[], course: number): LayoutFault[] {
  const turned = (rects: readonly Rect[], at: Standing) =>
    rects.map((r) => onGround({ ...r, piece: 'cut' }, at));
  const { joint } = rulesOf(walls[0]!.alone.spec);
  const pieces = walls.flatMap(({ laid, alone, work, at }) => [
    ...turned(placeCourse(laid, course), at),
    ...turned(pierPieces(work, course), at),
    ...turned(solid(alone, course), at),
  ]);
  const outline = walls.flatMap((wall): PlanOutline[] => {
    const { alone, at } = wall;
    const own = planOutline(alone, course).map((o) => clear(o, joint.most / 2));
    const rects = [...own, ...pierGround(wall, course), ...solid(alone, course)];
    return turned(rects, at).map(({ x, y, right, top }) => area(x, y, right, top));
  });
  return provePlan(course, asPieces(pieces), outline, joint);
}

const BONDS = [
  ['stretcher', '1/2 brick'],
  ['english', '1 brick'],
  ['flemish', '1 brick'],
  ['english-garden-wall 3', '1 brick'],
  ['english-garden-wall 4', '1 brick'],
  ['english', '1.5 bricks'],
  ['flemish', '1.5 bricks'],
  ['english', '2 bricks'],
] as const;

const mm = (min: number, max: number) =>
  fc.oneof(
    fc
      .integer({ min: Math.ceil(min / 112.5), max: Math.floor(max / 112.5) })
      .map((n) => n * 112.5 - 10),
    fc.integer({ min, max }),
  );

const opening = fc.record({
  from: mm(900, 1600),
  width: mm(500, 1400),
  sill: fc.integer({ min: 0, max: 4 }),
  high: fc.integer({ min: 2, max: 5 }),
  head: fc.constantFrom(
    '',
    '    lintel 100 x 65 mm slab\n',
    '    lintel 100 x 140 mm slab\n    bearing 150 mm\n',
    '    lintel angle slab\n    head soldier\n',
    '    head segmental rise 120 mm\n',
    '    head semicircular\n',
  ),
});

const pier = fc.record({
  at: fc.oneof(
    fc.constant('left'),
    mm(3400, 4200).map((x) => `left ${x} mm`),
  ),
  size: fc.constantFrom('1 x 1', '1.5 x 1.5', '2 x 1.5', '2 x 2', '2.5 x 2'),
  projects: fc.constantFrom('', '    projects back\n', '    projects front\n'),
});

const job = fc.record({
  bond: fc.constantFrom(...BONDS),
  length: mm(5000, 7000),
  other: mm(1800, 3000),
  opening: fc.option(opening),
  pier: fc.option(pier),
  meets: fc.constantFrom('quoin', 'stopped', 'butted'),
  movement: fc.boolean(),
  steps: fc.boolean(),
});

type Job = typeof job extends fc.Arbitrary<infer T> ? T : never;

function textOf({ bond: [bond, thick], length, other, ...more }: Job): string {
  const wall = (name: string, long: number, lines: string) =>
    `wall ${name}\n  brick red\n  bond ${bond}\n  thick ${thick}\n  stands held\n  length ${long} mm\n  height ${COURSES} courses\n${lines}`;
  const o = more.opening;
  const lines = [
    more.meets === 'quoin' ? '  right quoin side\n' : `  right ${more.meets}\n`,
    more.movement ? '  movement-joint left 2990 mm\n' : '',
    more.steps ? `  top steps at ${Math.round(length * 0.8)} mm down 3 courses\n` : '',
    o
      ? `  opening o\n    from left ${o.from} mm\n    width ${o.width} mm\n    sill ${o.sill} courses\n    height ${o.high} courses\n${o.head}`
      : '',
    more.pier
      ? `  pier p\n    at ${more.pier.at}\n    size ${more.pier.size} bricks\n${more.pier.projects}`
      : '',
  ];
  const side = more.meets === 'quoin' ? wall('side', other, '  left quoin main\n') : '';
  return `perpend 1\nuse "firm.perp"\n${wall('main', length, lines.join(''))}${side}`;
}

function wallsOf(text: string): Stood[] {
  const { works } = jobOf(text, { 'firm.perp': FIRM });
  const main = stood(works[0]!, { x: 0, y: 0, way: 0 });
  if (!main) return [];
  const next = works[1] && stood(works[1], { x: main.alone.spec.length, y: 0, way: 1 });
  return next ? [main, next] : [main];
}

describe('whatever a job asks for', () => {
  test('no piece of wall or pier lies in another or in an opening, and every course is closed', () => {
    let laid = 0;
    let tried = 0;
    fc.assert(
      fc.property(job, (each) => {
        const text = textOf(each);
        const walls = wallsOf(text);
        tried++;
        if (walls.length) laid++;
        for (let course = 0; walls.length && course < COURSES; course++)
          expect([text, faultsIn(walls, course)]).toEqual([text, []]);
      }),
      { numRuns: 40 },
    );
    expect(laid).toBe(tried);
  });
});
