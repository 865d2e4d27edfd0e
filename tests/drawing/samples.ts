/** A wall with all that is drawn of it, for the tests of drawings and their files. */
import {
  elevation,
  type PlacedPier,
  pierElevation,
  pierPlanSet,
  rodSet,
  type Sheet,
  topPlans,
  toSheet,
  toSheets,
  wallPlans,
  withReused,
} from '../../server/engine/drawing';
import { pierPlans, setOut } from '../../server/engine/setting-out';
import { BONDS, overAll, UK, wall } from '../setting-out/fixtures';

const opening = { name: 'Window', from: overAll(12), width: 9 * 112.5 + 10, sill: 3, top: 8 };
export const laidPier = pierPlans({ width: 3, depth: 3, unit: UK, joint: 10 })!;
const { width, depth } = laidPier;
const counts = [[{ piece: 'whole' as const, count: 6 }]];
const pier = { name: 'Pier', from: 3500, width, depth, courses: 14, plans: counts };

/** English, one brick, 5 m: no number of half bricks, so there are cuts; a window, a pier, a toothed end. */
export const yard = setOut(
  wall({
    length: 5000,
    bond: BONDS.english,
    thickness: 2,
    openings: [opening],
    piers: [pier],
    right: 'toothed',
  }),
);

export const piers: readonly PlacedPier[] = [
  {
    name: 'Pier',
    x: 3500,
    y: (yard.thickness - depth) / 2,
    base: 0,
    high: 14,
    courses: laidPier.courses,
  },
];

const at = 10 * 75 + 10;
export const onEdge = {
  kind: 'brick-on-edge',
  from: 0,
  to: 3490,
  at,
  height: 102.5,
  piece: 65,
  wholes: 45,
  joint: 10,
  cut: { length: 52.5, count: 2 },
  deep: [215],
} as const;

export const cap = {
  kind: 'cap',
  name: 'cap',
  from: 3464,
  to: 3864,
  at: 14 * 75 + 10,
  height: 50,
  deep: [400],
  faces: { front: piers[0]!.y, back: piers[0]!.y + depth },
} as const;

const toppings = [onEdge, cap];

const levels = [
  { at: 150, name: 'damp-proof course' },
  { at: 600, name: 'Window head' },
  { at: at + 102.5, name: 'coping top' },
];

/** Every kind of sheet, by name. */
export const sheets: Readonly<Record<string, readonly Sheet[]>> = {
  front: [toSheet(elevation(yard, { title: 'Yard', piers, toppings, dpc: 2 }))],
  back: [toSheet(elevation(yard, { title: 'Yard: back', piers, toppings, dpc: 2, face: 'back' }))],
  plan: toSheets(wallPlans(yard, { title: 'Yard: plans', piers })),
  top: toSheets(topPlans(toppings, { title: 'Yard: coping', thickness: yard.thickness })),
  rod: toSheets(rodSet({ title: 'Yard: rod', gauge: 75, courses: 14, levels })),
  pier: [
    toSheet(
      pierElevation(pier, 75, 'Pier', [], { placed: { unit: UK, courses: laidPier.courses } }),
    ),
  ],
  pierPlan: toSheets(
    pierPlanSet({ title: 'Pier: plans', unit: UK, width, depth, courses: laidPier.courses }),
  ),
  rebuilt: [
    toSheet(
      withReused(
        elevation(setOut(wall({ courses: 6 })), { title: 'Frost' }),
        0.67,
        'a part of a wall',
      ),
    ),
  ],
  feet: toSheets(wallPlans(yard, { title: 'In feet', piers, units: 'feet' })),
};
