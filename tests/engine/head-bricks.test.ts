/** Heads, arches and sills in another brick than the wall’s: bought apart, in the wall’s mortar. By hand, UK sizes. */
import { describe, expect, test } from 'vitest';
import { FIRM } from '../findings/tells';
import { jobOfWall } from '../harness/walls';
import { agree, allTerms, evaluated } from './evaluate';
import { jobOf } from './world';

const BLUE = `brick blue "Staffordshire blue"
  size   215 x 102.5 x 65 mm
  frog   5%
  price  £1.20 each
`;

const wall = (lines: string) =>
  jobOfWall(
    { length: '2240 mm', height: '14 courses' },
    `  opening window\n    from left 665 mm\n    width 910 mm\n    sill 2 courses\n    height 4 courses\n${lines}`,
  );

const work = (lines: string) => jobOf(wall(lines), { 'firm.perp': FIRM + BLUE }).works[0]!;

const bricks = (lines: string) =>
  Object.fromEntries(work(lines).needs.bricks.map((b) => [b.brick, b.bricks.value.toNumber()]));
const figure = (lines: string, key: string) =>
  work(lines)
    .figures.find((f) => f.key === key)!
    .term.value.toNumber();

const LINTEL = '    lintel 100 x 65 mm slab\n    bearing 102.5 mm\n';

describe('bricks of their own', () => {
  // 910 + 2 x 102.5 = 1115 mm: 15 soldiers of 65 and 14 joints are 1115; 910 are 12 of 65 and 13 joints of 10.
  test.each([
    ['soldiers', `${LINTEL}    head soldier`, 15],
    ['bricks on edge over a lintel, half of each', `${LINTEL}    head brick-on-edge`, 8],
    ['a sill through a brick', '    subsill brick-on-edge', 12],
  ])('%s', (_what, lines, count) => {
    const own = bricks(`${lines}\n`);
    const other = bricks(`${lines} brick blue\n`);
    expect(other.blue).toBe(count);
    expect(own.red! - other.red!).toBe(count);
    expect(figure(`${lines} brick blue\n`, 'bricks')).toBe(figure(`${lines}\n`, 'bricks'));
  });

  test.each([
    ['segmental', ' rise 115 mm rings 2'],
    ['semicircular', ''],
  ])('the rings of a %s arch', (kind, shape) => {
    const round = figure(`    head ${kind}${shape}\n`, 'window.voussoirs');
    // Half a brick through: two from a brick.
    const { blue } = bricks(`    head ${kind} brick blue${shape}\n`);
    expect(blue).toBe(Math.ceil(round / 2));
  });

  test('what is cut to lie over them is of the wall’s own', () => {
    // 102.5 + 10 on the lintel of 65: courses of 75 leave something over, which is cut.
    const lines = `${LINTEL}    head brick-on-edge`;
    const plain = bricks(`${lines}\n`);
    const cut = bricks(`${lines} brick blue\n`);
    expect(cut.blue! + cut.red!).toBe(plain.red);
  });

  test('the same brick by its name is the wall’s own', () => {
    const lines = `${LINTEL}    head soldier`;
    expect(bricks(`${lines} brick red\n`)).toEqual(bricks(`${lines}\n`));
  });
});

describe('mortar', () => {
  test.each([
    ['soldiers', `${LINTEL}    head soldier`, 15 * 215 * 102.5 * 65],
    ['a sill', '    subsill brick-on-edge', 12 * 215 * 102.5 * 65],
  ])('of %s is the same, but for the frogs of the other brick', (_what, lines, solid) => {
    const more = figure(`${lines} brick blue\n`, 'mortar') - figure(`${lines}\n`, 'mortar');
    expect(more).toBeCloseTo((0.05 * solid) / 1e6, 6);
  });

  test('every figure is its working', () => {
    for (const { key, term } of work(`${LINTEL}    head soldier brick blue\n`).figures)
      for (const part of allTerms(term))
        expect(agree(part.value, evaluated(part)), `${key}: ${part.label}`).toBe(true);
  });
});

test('the client is told which', () => {
  const says = (lines: string) => work(lines).facts.says.join(' ');
  expect(says(`${LINTEL}    head soldier brick blue\n`)).toContain(
    'Set bricks on end in a row over the opening for the window, in Staffordshire blue.',
  );
  expect(says('    head semicircular brick blue\n')).toContain('in Staffordshire blue.');
  expect(says(`${LINTEL}    head soldier\n`)).not.toContain('Staffordshire');
});

test('a brick that nobody knows is a gap in the price, and nothing breaks', () => {
  const { needs } = work(`${LINTEL}    head soldier brick nobody\n`);
  const need = needs.bricks.find((b) => b.brick === 'nobody')!;
  expect(need.bricks.gaps.map((g) => g.what)).toContain('the brick “nobody” is not known');
});
