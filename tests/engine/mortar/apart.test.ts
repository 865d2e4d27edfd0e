/** A damp course and a coping in mixes of their own: what they take is what the one mix took less of. */
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../server/engine/workspace/job';
import { jobOf } from '../world';

const HEAD = `perpend 1
use uk
brick red
  size  215 x 102.5 x 65 mm
  gauge 4 courses 300 mm
  frog  7%
  price £1 each
brick engineering
  price £2 each
material cement
  price £0.30 per kg
material lime
  price £0.50 per kg
material sand
  price £0.10 per kg
price
  round £0.01
material tile
  size  265 x 165 x 11 mm
  price £1 each
material coping
  price £9 each
material ballast
  pack  25 kg bag at £3
labour
  bricklayer £20 per h
  gang       1 bricklayer
output
  facework  50 bricks per h
  pier-work 40 bricks per h
  coping    20 bricks per h
  tiles     60 pieces per h
  precast   4 pieces per h
  cap       3 pieces per h
  footing   1 m3 per h
  core      1 m3 per h
mix strong
  parts cement 1, sand 3
  joint 10 mm
mix soft
  parts lime 1, sand 3
  joint 10 mm
`;
const wall = (lines: string) => `wall w
  brick  red
  stands held
  length 2240 mm
  height 12 courses
${lines}`;
const PIERS = (lines: string) => `pier g
  brick  red
  number 3
  size   1.5 x 1.5 bricks
  height 12 courses
  footing 600 x 600 x 300 mm
${lines}`;
const THICK = '  thick  1 brick\n  bond   english\n';

function mixes(job: Job): Record<string, number> {
  const { needs } = job.works[0]!;
  return Object.fromEntries(needs.mixes.map((n) => [n.mix, n.litres.value.toNumber()]));
}

const CASES: readonly (readonly [string, (mixed: (name: string) => string) => string])[] = [
  ['a damp course', (in_) => wall(`  dpc    engineering 2 courses${in_('strong')}\n`)],
  ['bricks on edge', (in_) => wall(`${THICK}  coping brick-on-edge${in_('strong')}\n`)],
  [
    'bricks on edge of another kind',
    (in_) => wall(`${THICK}  coping brick-on-edge engineering${in_('strong')}\n`),
  ],
  [
    'both in one',
    (in_) =>
      wall(
        `${THICK}  dpc engineering 2 courses${in_('strong')}\n  coping brick-on-edge${in_('strong')}\n`,
      ),
  ],
  [
    'each in another',
    (in_) =>
      wall(
        `${THICK}  dpc engineering 2 courses${in_('strong')}\n  coping brick-on-edge${in_('soft')}\n`,
      ),
  ],
  ['precast lengths', (in_) => wall(`  coping precast 600 x 150 x 75 mm${in_('strong')}\n`)],
  [
    'tiles under bricks on edge',
    (in_) => wall(`${THICK}  coping tiles 2 courses tile${in_('strong')}\n`),
  ],
  [
    'a pier in a wall with a coping of its own',
    (in_) =>
      wall(`${THICK}  dpc engineering 1 course${in_('soft')}
  coping brick-on-edge
  pier p
    at left
    size 1.5 x 1.5 bricks
    height 14 courses
    coping brick-on-edge${in_('strong')}
`),
  ],
  [
    'piers alike',
    (in_) =>
      PIERS(`  dpc engineering 2 courses${in_('strong')}\n  coping brick-on-edge${in_('soft')}\n`),
  ],
  [
    'piers with a core',
    (in_) => PIERS(`  core concrete\n  dpc engineering 2 courses${in_('strong')}\n`),
  ],
];

describe.each(CASES)('%s', (_, text) => {
  const one = jobOf(`${HEAD}${text(() => '')}`);
  const apart = jobOf(`${HEAD}${text((name) => ` mix ${name}`)}`);

  test('takes of its mix what the wall’s takes less of', () => {
    expect(apart.findings.filter((f) => f.severity === 'error')).toEqual([]);
    const { general: before, ...rest } = mixes(one);
    const { general: left, strong = 0, soft = 0, ...others } = mixes(apart);
    expect(left! + strong + soft).toBeCloseTo(before!, 6);
    expect(strong + soft).toBeGreaterThan(0.1);
    expect(left).toBeGreaterThan(1);
    expect(others).toEqual(rest);
  });

  test('is bought, and no other bricks, hours or pieces with it', () => {
    const [a, b] = [one, apart].map((job) => job.works[0]!.needs);
    const amounts = (of: typeof a) => [
      of!.bricks.reduce((sum, n) => sum + n.bricks.value.toNumber(), 0),
      of!.tasks.map((t) => [t.task, t.hours.value.toNumber()]),
      of!.pieces.map((p) => p.count.value.toNumber()),
    ];
    expect(amounts(b)).toEqual(amounts(a));
    expect([...one.price.total.gaps, ...apart.price.total.gaps].map((g) => g.what)).toEqual([]);
    expect(apart.price.total.value.eq(one.price.total.value)).toBe(false);
  });

  test('bricks and hours of laying are parted with it', () => {
    const laysOf = (job: Job) => job.works[0]!.needs.mixes.flatMap((m) => m.lays ?? []);
    const total = (job: Job, key: 'bricks' | 'hours') =>
      laysOf(job).reduce((sum, lays) => sum + (lays[key]?.value.toNumber() ?? 0), 0);
    expect(total(apart, 'bricks')).toBeCloseTo(total(one, 'bricks'), 6);
    expect(total(apart, 'hours')).toBeCloseTo(total(one, 'hours'), 6);
    for (const lays of laysOf(apart)) expect(lays.hours!.value.toNumber()).toBeGreaterThan(0);
  });
});

/** By hand: 10 whole bricks, then 9 whole and 2 halves, in a length of 2240 mm; 150 mm high; the rest is mortar. */
test('two courses of half-brick wall take the volume that their bricks leave', () => {
  const job = jobOf(`${HEAD}${wall('  dpc engineering 2 courses mix strong\n')}`);
  const gross = 2240 * 150 * 102.5;
  const bricks = (10 * 215 + 9 * 215 + 2 * 102.5) * 65 * 102.5;
  expect(mixes(job).strong).toBeCloseTo((gross - bricks) / 1e6, 9);
});

test('the mix of the wall, named again, is no other', () => {
  const job = jobOf(`${HEAD}${wall('  mix general\n  dpc engineering 2 courses mix general\n')}`);
  expect(Object.keys(mixes(job))).toEqual(['general']);
});

test('a mix that no file has is a gap of the price and an error at its name', () => {
  const job = jobOf(`${HEAD}${wall('  dpc engineering 2 courses mix nowhere\n')}`);
  expect(job.findings.map((f) => f.code)).toContain('name-unknown');
  expect(job.price.total.gaps.map((g) => g.what)).toContain('the mix “nowhere” is not known');
});

test('it has a figure of its own, and its bags are among what is bought', () => {
  const text = wall('  dpc engineering 2 courses mix strong\n');
  const job = jobOf(`${HEAD}${text}`);
  const figure = job.works[0]!.figures.find(({ key }) => key === 'mortar.strong')!;
  expect(figure.term.label).toBe('Mortar of the damp course');
  expect(job.price.batches.map(({ name }) => name)).toEqual(['general', 'strong']);
  expect(job.price.batches[1]!.laid.value.eq(figure.term.value)).toBe(true);
});
