/** Numbers that no job has: each is refused with a finding or worked with, in time, and no figure is ever no number. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import { sound } from './sound';

const HEAD = 'perpend 1\nuse "firm.perp"\n';
const wall = (lines: string, brick = 'red') => `wall n\n  brick ${brick}\n  stands held\n${lines}`;
const many = (n: number, line: (i: number) => string) =>
  Array.from({ length: n }, (_, i) => line(i)).join('');
const repair = (lines: string) =>
  `repair r\n  brick red\n${lines
    .split('\n')
    .map((line) => `  ${line}\n`)
    .join('')}`;
const brick = (lines: string) => `brick odd\n${lines}`;

/** Ms of the processor's own time, forty times what was measured for the slowest of these: processors are slower elsewhere. */
const LIMIT = 40_000;

function worked(text: string) {
  const before = process.cpuUsage().user;
  const job = jobOf(HEAD + text, { 'firm.perp': FIRM });
  const figures = sound(job);
  const told = job.findings.map((f) => f.code).filter((code) => !code.startsWith('caution-'));
  expect((process.cpuUsage().user - before) / 1000).toBeLessThan(LIMIT);
  return { job, figures, told };
}

describe('an absurd number', () => {
  test.each([
    ['a length of 10^9 m', wall('  length 1000000000 m\n  height 4 courses\n'), 'number-absurd'],
    ['10^9 courses', wall('  length 2 m\n  height 1000000000 courses\n'), 'number-absurd'],
    ['a height of 10^9 m', wall('  length 2 m\n  height 1000000000 m\n'), 'number-absurd'],
    [
      'a number of four hundred digits',
      wall(`  length ${'9'.repeat(400)} m\n  height 4 courses\n`),
      'number-absurd',
    ],
    ['a length of 0', wall('  length 0 m\n  height 4 courses\n'), 'incomplete'],
    ['0 courses', wall('  length 2 m\n  height 0 courses\n'), 'incomplete'],
    [
      'a brick of no size',
      brick('  size 0 x 0 x 0 mm\n  price £1 each\n') +
        wall('  length 2 m\n  height 4 courses\n', 'odd'),
      'incomplete',
    ],
    [
      'a brick of no height',
      brick('  size 215 x 102.5 x 0 mm\n  price £1 each\n') +
        wall('  length 2 m\n  height 4 courses\n', 'odd'),
      'incomplete',
    ],
    [
      'a joint bigger than the brick',
      wall('  length 2 m\n  height 4 courses\n  joint 300 mm\n'),
      'incomplete',
    ],
    ['no joint', wall('  length 2 m\n  height 4 courses\n  joint 0 mm\n'), 'incomplete'],
    [
      'a gauge of no courses',
      wall('  length 2 m\n  height 4 courses\n  gauge 0 courses 300 mm\n'),
      'incomplete',
    ],
    [
      'a gauge of no height',
      wall('  length 2 m\n  height 4 courses\n  gauge 4 courses 0 mm\n'),
      'incomplete',
    ],
    [
      'a thickness of a hundred bricks',
      wall('  length 2 m\n  height 4 courses\n  thick 100 bricks\n'),
      'incomplete',
    ],
    [
      'a pier wider than the wall',
      wall('  length 2015 mm\n  height 4 courses\n  pier p\n    at left\n    size 30 x 1 bricks\n'),
      'pier-homeless',
    ],
    [
      'an opening wider than the wall',
      wall('  length 2015 mm\n  height 4 courses\n  opening o\n    from left 0 m\n    width 3 m\n'),
      'opening-outside',
    ],
    [
      'a bond of a million courses',
      wall(
        '  length 2015 mm\n  height 4 courses\n  thick 1 brick\n  bond english-garden-wall 1000000\n',
      ),
      'incomplete',
    ],
    [
      'a bond with a billion units to a course',
      `bond odd\n  course stretcher 999999999\n${wall('  length 2015 mm\n  height 4 courses\n  bond odd\n')}`,
      'incomplete',
    ],
    [
      'a pack of nothing',
      brick('  size 215 x 102.5 x 65 mm\n  price £1 per pack\n  pack 0\n') +
        wall('  length 2 m\n  height 4 courses\n', 'odd'),
      'incomplete',
    ],
    [
      'a price per 0',
      brick('  size 215 x 102.5 x 65 mm\n  price £1 per 0\n') +
        wall('  length 2 m\n  height 4 courses\n', 'odd'),
      'incomplete',
    ],
    [
      'an output of nothing',
      `output\n  facework 0 bricks per h\n${wall('  length 2 m\n  height 4 courses\n')}`,
      'incomplete',
    ],
    [
      'a gang of nobody',
      `labour\n  gang 0 bricklayers\n${wall('  length 2 m\n  height 4 courses\n')}`,
      'incomplete',
    ],
    [
      'a mix of no parts',
      `mix odd\n  parts cement 0, sand 0\n  joint 10 mm\n${wall('  length 2 m\n  height 4 courses\n  mix odd\n')}`,
      'incomplete',
    ],
    [
      'a bag of nothing',
      `material cement\n  pack 0 kg bag at £6\n${wall('  length 2 m\n  height 4 courses\n')}`,
      'incomplete',
    ],
    [
      'no piers',
      'pier p\n  brick red\n  number 0\n  size 1 x 1 bricks\n  height 4 courses\n',
      undefined,
    ],
    [
      'a pier of no bricks',
      'pier p\n  brick red\n  size 0 x 0 bricks\n  height 4 courses\n',
      'incomplete',
    ],
    [
      'a profit of 100%',
      `price\n  profit 100%\n${wall('  length 2 m\n  height 4 courses\n')}`,
      undefined,
    ],
    [
      'a profit of a million percent',
      `price\n  profit 1000000%\n${wall('  length 2 m\n  height 4 courses\n')}`,
      'number-absurd',
    ],
    [
      'stages of more than all',
      `price\n  stage "A" 90%\n  stage "B" 90%\n  stage "C" rest\n${wall('  length 2 m\n  height 4 courses\n')}`,
      undefined,
    ],
    ['a rebuild of nothing', repair('rebuild 0 m x 0 courses\nsalvage 60%'), 'incomplete'],
    ['10^9 courses rebuilt', repair('rebuild 2 m x 1000000000 courses'), 'number-absurd'],
    [
      'a skip of nothing',
      `cost skip "Skip" at £9 per 0 m3 of waste\n${repair('repoint 1 m2')}`,
      'incomplete',
    ],
    [
      'all lost at cleaning',
      `defaults\n  cleaning-loss 100%\n${repair('rebuild 60 bricks\nsalvage 60%')}`,
      'incomplete',
    ],
    [
      'bars no distance apart',
      `defaults\n  crack-stitch slab 1 m every 0 mm raked 35 mm\n${repair('stitch 2 m')}`,
      'incomplete',
    ],
  ])('%s', (_, text, code) => {
    const { told } = worked(text);
    if (code) expect(told).toContain(code);
    else expect(told.filter((each) => each === 'incomplete')).toEqual([]);
  });
});

describe('the most that is taken', () => {
  test.each([
    [
      '10 km of wall rebuilt, and all else that is mended there',
      repair(
        'thick 1 brick\nbond flemish\nrebuild 10 km x 10000 courses\nsalvage 0..100%\nhalves 100%\ncut-out 100000000 bricks\nrepoint 10 km raked 10 km\nrecope 10 km\ntooth-in 10000 courses\nstitch 10 km\nmake-good 1000000 m2 10 km thick "All"\nreplace 100000000 pieces slab\nrebed 10 km',
      ),
    ],
    [
      'a pier of a million bricks each way, rebuilt',
      repair('size 1000000 x 1000000 bricks\nrebuild 10000 courses\nhalves 1000'),
    ],
    [
      '10 km by 10,000 courses',
      wall('  length 10 km\n  height 10000 courses\n  coping brick-on-edge\n'),
    ],
    [
      '10 km of a one-brick wall in Flemish bond',
      wall(
        '  length 10 km\n  height 10000 courses\n  bond flemish\n  thick 1 brick\n  coping brick-on-edge\n',
      ),
    ],
    [
      'bricks of a tenth of a micron',
      brick('  size 0.0001 x 0.00005 x 0.0001 mm\n  price £1 each\n') +
        wall('  length 10 km\n  height 10 courses\n  joint 0.00001 mm\n', 'odd'),
    ],
    [
      'bricks of a millimetre, coped, with every joint accepted',
      `defaults\n  joints-accepted 0..10000 m\n${brick('  size 1 x 0.5 x 0.3 mm\n  price £1 each\n')}${wall('  length 10 km\n  height 10 courses\n  joint 0.2 mm\n  coping brick-on-edge\n', 'odd')}`,
    ],
    [
      'a bond of 64 courses, each its own',
      `bond odd\n${many(64, (i) => `  course stretcher ${1 + (i % 30)}, header ${1 + ((i * 7) % 30)} from 1/4 brick\n`)}${wall('  length 10 km\n  height 10000 courses\n  thick 1 brick\n  bond odd\n')}`,
    ],
    [
      'a pier of a million bricks each way',
      'pier p\n  brick red\n  number 1000000000\n  size 1000000 x 1000000 bricks\n  height 10000 courses\n  coping brick-on-edge\n',
    ],
    [
      'a thousand gateways',
      wall(
        `  length 10 km\n  height 100 courses\n  coping brick-on-edge\n${many(1000, (i) => `  opening o${i}\n    from left ${i * 9 + 1} m\n    width 910 mm\n`)}`,
      ),
    ],
    [
      'a thousand windows at ninety heights',
      wall(
        `  length 10 km\n  height 100 courses\n${many(1000, (i) => `  opening o${i}\n    from left ${i * 9 + 1} m\n    width 910 mm\n    sill ${i % 90} courses\n    height ${1 + (i % 9)} courses\n`)}`,
      ),
    ],
    [
      'a thousand gates and piers',
      wall(
        `  length 10 km\n  height 100 courses\n${many(1000, (i) => `  opening o${i}\n    from left ${i * 9 + 1} m\n    width 910 mm\n  pier p${i}\n    at o${i} left\n    size 2 x 1 bricks\n    coping brick-on-edge\n    height ${10 + (i % 50)} courses\n`)}`,
      ),
    ],
    [
      'windows in a wall of hundreds of bands, down hundreds of steps, coped in tiles',
      wall(
        `  length 10 km\n  height 10000 courses\n  dpc red 2 courses\n  coping tiles\n  footing 450 x 225 mm\n  plinth 300 courses project 1/4 brick both\n  corbel 9000 courses project 9 km\n${many(200, (i) => `  ground steps at ${i * 45 + 7} m ${i % 3 ? 'down' : 'up'} ${i % 90} courses\n  top steps at ${i * 43 + 9} m ${i % 2 ? 'down' : 'up'} ${1 + (i % 80)} courses\n`)}${many(200, (i) => `  band red courses ${i * 40} to ${i * 47}\n`)}${many(40, (i) => `  opening o${i}\n    from left ${i * 9 + 1} m\n    width 910 mm\n    sill ${i % 90} courses\n    height ${1 + (i % 9)} courses\n`)}`,
      ),
    ],
    [
      'a fall of ten kilometres, and precast lengths of a micron',
      wall(
        '  length 10 km\n  height 10000 courses\n  ground falls 10 km to right\n  top falls 9 km to left\n  footing 10 x 10 km\n  coping precast 0.001 x 10000000 x 10000000 mm\n',
      ),
    ],
    [
      'three thousand openings in one place',
      wall(
        `  length 10 km\n  height 100 courses\n${many(3000, (i) => `  opening o${i}\n    from left 1 m\n    width 910 mm\n`)}`,
      ),
    ],
    [
      'a thousand names that nobody knows',
      many(1000, (i) => `brick b${i}xyz\n`) +
        many(1000, (i) => `wall w${i}\n  brick c${i}xyy\n  length 2 m\n  height 4 courses\n`),
    ],
    [
      'two names as long as a book',
      `brick ${'a'.repeat(50_000)}\nwall w\n  brick ${'b'.repeat(50_000)}\n`,
    ],
    ['a line of a hundred thousand words', wall(`  ${'length 2 m '.repeat(30_000)}\n`)],
    [
      'a gang of twenty thousand',
      `labour\n  gang ${Array(20_000).fill('1 bricklayer').join(' + ')}\n${wall('  length 2 m\n  height 4 courses\n')}`,
    ],
    ['fifty thousand lines that nobody knows', `wall n\n${many(50_000, () => '  nite "x"\n')}`],
    ['a hundred thousand headings that nobody knows', 'a\n'.repeat(100_000)],
    ['half a million signs without a word', '\u{1F9F1}'.repeat(250_000)],
    ['thirty thousand brackets and quotes', `wall n\n  note ${'"('.repeat(30_000)}\n`],
  ])('%s', (_, text) => {
    worked(text);
  });
});
