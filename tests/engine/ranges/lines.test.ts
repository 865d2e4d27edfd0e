/** Every line that may be a range: what it does to the price in a sample is what its value written in would do. */
import { describe, expect, test } from 'vitest';
import { HEADINGS, type LineKind, type Slot } from '../../../grammar/lines';
import { DECIDED } from '../../../grammar/lines/decided';
import { hover } from '../../../server/engine/ide/hover';
import { rangeText } from '../../../server/engine/views/measure';
import { spaced } from '../../ide/ask';
import { jobOf } from '../world';
import { agrees, HEAD, REPAIR, WALL } from './agrees';

const FEW = [0, 77, 200];

/** The firm’s own values as one figure each, and bought and rounded finely, so that each line is seen by itself. */
const PLAIN = HEAD.replaceAll(/(\d+(?:\.\d+)?)\.\.£?\d+(?:\.\d+)?/g, '$1')
  .replaceAll(/pack {4}25 kg bag at £(.*)/g, 'price £$1 per kg')
  .replace('round    £1', 'round    £0.01');
const FIXED_WALL = WALL.replaceAll(/(\d+)\.\.\d+/g, '$1');
const FIXED_REPAIR = REPAIR.replaceAll(/(\d+)\.\.\d+/g, '$1');

/** Whatever is ranged moves the price, and does so as its values would. */
function moves(text: string): void {
  expect(jobOf(text).spread, text).toBeDefined();
  agrees(text, FEW, 0.011);
}

describe('defaults', () => {
  const held = (line: string) => moves(`${PLAIN}defaults\n  ${line}\n${FIXED_WALL}`);
  const noWaste = PLAIN.replace('  waste   3%\n', '').replace(
    '  overhead 10%\n  profit   15%\n',
    '',
  );

  test.each(['dry-volume 1.2..1.6', 'mortar-waste 5..50%'])('%s', held);

  test.each(['brick-waste 2..20%', 'overhead 5..20%', 'profit 5..20%'])('%s', (line) => {
    moves(`${noWaste}defaults\n  ${line}\n${FIXED_WALL}`);
  });

  test.each(['set-up 10..90 min per day', 'clear-up 10..90 min per day', 'day 6..9 h'])(
    '%s',
    (line) => {
      moves(`${PLAIN}defaults\n  ${line}\n${FIXED_WALL.replace('length   4', 'length   40')}`);
    },
  );

  test.each([
    ['rake-depth 1.5..4', 'repoint 30 m2'],
    ['make-good 10..40 mm', 'make-good 9 m2 "Render"'],
    ['cleaning-loss 0..20%', 'salvage 60%\n  rebuild 2 m x 9 courses'],
    ['waste-bulking 20..90%', 'rebuild 2 m x 9 courses'],
    ['brick-density 1600..2200 kg/m3', 'rebuild 2 m x 9 courses'],
    ['mortar-density 1500..2300 kg/m3', 'repoint 90 m2 raked 25 mm'],
    ['crack-stitch bar 0.6..1 m every 300..600 mm raked 25..60 mm', 'stitch 9 m'],
  ])('%s', (line, work) => {
    const tip = line.includes('density')
      ? 'cost tip "Tip" at £45 per t of waste\n'
      : 'cost tip "Tip" at £45 per m3 of waste\n';
    const bar = 'material bar\n  size 1000 x 6 x 6 mm\n  price £4 each\n';
    const outputs = `output
  repoint   1 m2 per h
  make-good 1 m2 per h
  stitch    2 pieces per h
`;
    const repair = `repair r
  brick red
  bond  flemish
  thick 1 brick
  ${work}
`;
    moves(`${PLAIN}${tip}${bar}${outputs}defaults\n  ${line}\n${repair}`);
  });
});

/** They move what is laid or mixed at once, and seldom the price. */
test.each([
  'kerf 2..9 mm',
  'mixer 60..120 l',
  'working-life 1..3 h',
  'precast-density 2000..2500 kg/m3',
])('%s is followed', (line) => {
  agrees(
    `${PLAIN}defaults\n  ${line}\n${FIXED_WALL.replace('length   4', 'length   3.33')}`,
    FEW,
    0.011,
  );
});

describe('sizes', () => {
  test.each([
    ['a brick that was measured', PLAIN.replace('215 x 102.5 x 65', '213..217 x 102.5 x 63..66')],
  ])('%s', (_, head) => {
    moves(`${head}${FIXED_REPAIR}`);
    moves(`${head}${FIXED_WALL}`);
  });

  test('a footing whose width and depth the ground will tell', () => {
    const output = 'output\n  footing 0.3 m3 per h\nmaterial ballast\n  pack 25 kg bag at £3\n';
    moves(`${PLAIN}${output}${FIXED_WALL}  footing 400..600 x 225..400 mm\n`);
    const pier = 'pier p\n  brick red\n  size 1.5 x 1.5 bricks\n  height 9 courses\n';
    moves(
      `${PLAIN}${output}output\n  pier-work 40 bricks per h\n${pier}  footing 600 x 600 x 200..450 mm\n`,
    );
  });

  test('each side has its own share of the spread, and a hover that tells it', () => {
    const text = `${PLAIN}output\n  footing 0.3 m3 per h\n${FIXED_WALL}  footing 400..401 x 225..400 mm\n`;
    const job = jobOf(text);
    const { ranges } = job.spread!;
    expect(ranges[0]!.share).toBeGreaterThan(0.95);
    expect(rangeText(ranges[0]!)).toBe('footing 400..401 x 225..400 mm');
    const { block, span } = ranges[0]!.origin;
    expect(block.lines[span.line]!.slice(span.start, span.end)).toBe('225..400 mm');
    const line = block.firstLine + span.line;
    const hovered = hover(job, { line, column: span.start })!;
    expect(spaced(hovered.markdown)).toMatch(/(9\d|100)% of what the price may move by/);
  });

  test('a coping, a lintel and what is bedded again', () => {
    const goods = `material slab
  price £20 each
material beam
  price £60 each
output
  precast 4 pieces per h
  rebed   2 m per h
  lintel  2 pieces per h
`;
    moves(`${PLAIN}${goods}${FIXED_WALL}  coping precast 500..900 x 300 mm slab\n`);
    const gap = `  opening o
    from left 1350 mm
    width 910 mm
    sill 2 courses
    height 4 courses
    lintel 100..110 x 65 x 1200 mm beam
`;
    agrees(`${PLAIN}${goods}${FIXED_WALL}${gap}`, FEW, 0.011);
    const wide = 'material stone\n  size 600 x 250..330 x 75 mm\n  price £20 each\n';
    moves(`${PLAIN}${goods}${wide}${FIXED_REPAIR}  rebed 6 m stone\n`);
  });

  test('the measured brick of a match stays a comparison', () => {
    const text = `${PLAIN}${FIXED_REPAIR}  measured 213..215 x 102 x 64..66 mm of 10 bricks\n`;
    const job = jobOf(text);
    expect(job.findings.filter((f) => f.severity === 'error')).toEqual([]);
    expect(job.works[0]!.needs.bricks[0]!.bricks.gaps).toEqual([]);
  });
});

describe('measures and yields', () => {
  test('a bucket that holds so much, more or less', () => {
    const mix =
      'measures\n  pail 12..15 l\nmix own\n  batch 1 pail cement, 6 trowels sand\n  joint 10 mm\n';
    moves(`${PLAIN}${mix}${FIXED_REPAIR}  mix own\n`);
  });

  test('a yield model', () => {
    const mix = `yield-model ours
  sand 1..1.3
mix own
  parts cement 1, sand 4
  yield ours
  joint 10 mm
`;
    moves(`${PLAIN}${mix}${FIXED_REPAIR}  mix own\n`);
  });
});

function amounts(
  slots: readonly Slot[],
): Extract<Slot, { slot: 'quantity' | 'money' | 'counted' | 'size' }>[] {
  return slots.flatMap((slot) => {
    switch (slot.slot) {
      case 'quantity':
      case 'money':
      case 'counted':
      case 'size':
        return [slot];
      case 'list':
      case 'optional':
        return amounts(slot.slots);
      case 'either':
        return slot.of.flatMap(amounts);
      default:
        return [];
    }
  });
}

function linesIn(kind: LineKind): LineKind[] {
  return [kind, ...(kind.body ?? []).flatMap(linesIn)];
}

test('every amount, money and size takes a range or says why it takes none', () => {
  for (const heading of HEADINGS)
    for (const line of linesIn(heading))
      for (const slot of amounts(line.takes))
        expect(Boolean(slot.range) !== Boolean(slot.fixed), `${heading.key} ${line.key}`).toBe(
          true,
        );
});

test('every line that is decided is one', () => {
  for (const [key, why] of Object.entries(DECIDED)) {
    const heading = HEADINGS.find((h) => h.key === key);
    expect(heading, key).toBeDefined();
    if (typeof why === 'string') continue;
    const keys = heading!.body!.map((line) => line.key);
    expect(keys).toEqual(expect.arrayContaining(Object.keys(why)));
  }
});
