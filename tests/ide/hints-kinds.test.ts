import { describe, expect, test } from 'vitest';
import { ALL_HINTS, hintsOf } from '../../server/engine/ide/hints';
import { closerAt } from '../../server/engine/ide/hints/closer';
import type { Hint, HintKind } from '../../server/engine/ide/types';
import type { Job } from '../../server/engine/workspace/job';
import { FIRM, job, spaced } from './ask';

const RANGE = { first: 0, last: 1000 };
const HEAD = 'perpend 1\njob "Orchard"\nuse "firm.perp"\n';
const WALL = 'wall n\n  brick red\n  length 1790 mm\n  height 8 courses\n';

function ofKind(text: string, kind: HintKind): { of: Job; hints: Hint[] } {
  const of = job(text);
  return { of, hints: hintsOf(of, RANGE, new Set([kind])) };
}

/** `the line | its hint` */
function shown(text: string, kind: HintKind): string[] {
  const { of, hints } = ofKind(text, kind);
  return hints.map((h) => `${of.file.lines[h.line]!.trim()} | ${spaced(h.text)}`);
}

describe('lines of money', () => {
  const money = (text: string) => shown(HEAD + WALL + text, 'money');

  test('a cost of several comes to so much', () => {
    expect(money('cost skip "Skip" 2 at £240\n')).toEqual(['cost skip "Skip" 2 at £240 | £480.00']);
  });

  test('one of it says so itself', () => {
    expect(money('cost skip "Skip" 1 at £240\n')).toEqual([]);
  });

  test('by the day it hangs on the days of the work', () => {
    const line = 'cost hire "Mixer" 1 at £30 per day\n';
    const days = job(HEAD + WALL + line).price.days.value.toNumber();
    expect(money(line)).toEqual([`${line.trim()} | £${(30 * days).toFixed(2)}`]);
  });

  test('of two costs each has its own', () => {
    const two = 'cost a "A" 2 at £10\ncost b "B" 3 at £10\n';
    expect(money(two).map((each) => each.split(' | ')[1])).toEqual(['£20.00', '£30.00']);
  });

  test('driving and charges on the way', () => {
    const text =
      'travel\n  run 2 x 10 miles per day at £0.45 per mile\n  charge "Zone" £12.50 per day\n';
    expect(money(text).map((each) => each.split(' | ')[1])).toEqual(['£9.00', '£12.50']);
  });

  // A mark-up of 10% on cost; what is told is the figure of the price itself.
  test('overhead and profit', () => {
    const text = 'price\n  overhead 10%\n  profit 20%\n';
    const of = job(HEAD + WALL + text);
    const figure = (key: string) =>
      of.price.figures.find((f) => f.key === key)!.term.value.toFixed(2);
    expect(money(text)).toEqual([
      `overhead 10% | £${figure('overhead')}`,
      `profit 20% | £${figure('profit')}`,
    ]);
  });

  test('stages of payment, which add up to the price', () => {
    const text = 'price\n  stage "Deposit" 25%\n  stage "When done" rest\n';
    const amounts = money(text).map((each) => Number(each.split('£')[1]!.replace(',', '')));
    expect(amounts).toHaveLength(2);
    expect(amounts[0]! + amounts[1]!).toBeCloseTo(
      job(HEAD + WALL + text).price.total.value.toNumber(),
      6,
    );
  });

  // £30 and £16 an hour.
  test('an hour of the gang', () => {
    const text =
      'labour\n  bricklayer £30 per h\n  labourer £16 per h\n  gang 1 bricklayer + 1 labourer\n';
    expect(money(text)).toEqual(['gang 1 bricklayer + 1 labourer | £46.00 an hour']);
  });

  test('of two lines that say the same only the one that holds', () => {
    expect(money('price\n  profit 20%\n  profit 30%\n')).toHaveLength(1);
  });

  test('nothing in a firm’s file, which is no job', () => {
    expect(shown('perpend 1\nuse uk\nprice\n  profit 20%\n', 'money')).toEqual([]);
  });
});

describe('hours of a line', () => {
  test('a coping takes its own', () => {
    const found = shown(`${HEAD}${WALL}  coping brick-on-edge\n`, 'hours');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^coping brick-on-edge \| [\d.]+ h$/);
  });

  test('they are part of the hours of the work', () => {
    const text = `${HEAD}${WALL}  coping brick-on-edge\n`;
    const own = Number(/\| ([\d.]+)/.exec(shown(text, 'hours')[0]!)![1]);
    const all = job(text)
      .works[0]!.figures.find((f) => f.key === 'hours')!
      .term.value.toNumber();
    expect(own).toBeGreaterThan(0);
    expect(own).toBeLessThan(all);
  });

  test('a line that takes none says nothing', () => {
    expect(shown(HEAD + WALL, 'hours')).toEqual([]);
  });

  test('pointing in a repair', () => {
    const text = `${HEAD}${WALL}repair r\n  in n\n  repoint 2 m2\n`;
    expect(shown(text, 'hours').join()).toMatch(/repoint 2 m2 \| [\d.]+ h/);
  });
});

describe('ranges', () => {
  const RANGED = HEAD + WALL.replace('1790 mm', '1.79..2.69 m');

  test('the job says between what and what its price lies', () => {
    expect(shown(RANGED, 'range')[0]).toMatch(
      /^job "Orchard" \| £[\d,.]+ to £[\d,.]+ in eight of ten jobs alike$/,
    );
  });

  test('each range how much hangs on it', () => {
    expect(shown(RANGED, 'range')[1]).toBe(
      'length 1.79..2.69 m | 100% of what the price may move by',
    );
  });

  test('shares of several add up', () => {
    const text = `${RANGED}cost a "A" 1 at £100..£160\n`;
    const shares = shown(text, 'range').flatMap((each) => /(\d+)% of/.exec(each)?.[1] ?? []);
    expect(shares).toHaveLength(2);
    // Each is rounded by itself.
    expect(Math.abs(Number(shares[0]) + Number(shares[1]) - 100)).toBeLessThanOrEqual(3);
  });

  test('a job without ranges says nothing', () => {
    expect(shown(HEAD + WALL, 'range')).toEqual([]);
  });

  test('nor does a range that moves no price', () => {
    expect(shown(`${HEAD}${WALL}cost a "A" 0 at £100..£160\n`, 'range')).toEqual([]);
  });
});

describe('names', () => {
  test('a brick is its size and price, each from where it is said', () => {
    expect(shown(HEAD + WALL, 'name')).toEqual(['brick red | 215 x 102.5 x 65 mm · £1 each']);
  });

  test('a mix is its parts', () => {
    expect(shown(`${HEAD}${WALL}  mix general\n`, 'name').at(-1)).toMatch(
      /^mix general \| cement 1, /,
    );
  });

  test('a name that nobody knows is nothing', () => {
    expect(shown(HEAD + WALL.replace('red', 'rad'), 'name')).toEqual([]);
  });

  test('what is taken without being said stands at the heading', () => {
    expect(shown(HEAD + WALL, 'taken')).toEqual([
      'wall n | taken: bond stretcher · thick 1/2 brick · mix general',
    ]);
  });

  test('a heading that has no name yet says nothing', () => {
    expect(shown(`${HEAD}wall\n`, 'taken')).toEqual([]);
    expect(shown(`${HEAD}wall\n`, 'total').join()).not.toContain('wall');
  });

  test('what is said is not taken', () => {
    const all = `${HEAD}${WALL}  bond flemish\n  thick 1 brick\n  mix general\n`;
    expect(shown(all, 'taken')).toEqual([]);
  });

  test('a default of the job itself is the one that is taken', () => {
    expect(shown(`${HEAD}defaults\n  bond flemish\n${WALL}`, 'taken')[0]).toContain('bond flemish');
  });
});

describe('looked at closer', () => {
  const closer = (text: string, kind: HintKind, line: string) => {
    const { of, hints } = ofKind(text, kind);
    const hint = hints.find((h) => of.file.lines[h.line]!.trim().startsWith(line))!;
    return { of, hint, found: closerAt(of, hint)! };
  };
  const leads = (text: string, kind: HintKind, line: string) =>
    closer(text, kind, line).found.parts.map(
      ({ place }) => place && `${place.file.split('/').at(-1)}:${place.line}`,
    );

  test('a total tells how its figures came about', () => {
    const { found } = closer(HEAD + WALL, 'total', 'wall');
    expect(spaced(found.text)).toContain('Bricks: **64 bricks**');
  });

  test('each part has a place of its own: hours come from the output in the firm’s file', () => {
    const { found, hint } = closer(HEAD + WALL, 'total', 'wall');
    expect(found.parts).toHaveLength(hint.parts.length);
    const hours = hint.parts.findIndex((part) => / h$/.test(spaced(part)));
    expect(found.parts[hours]!.place).toMatchObject({ file: '/jobs/firm.perp' });
    expect(
      leads(HEAD + WALL, 'total', 'wall').filter((place) => place?.startsWith('firm.perp')),
    ).not.toEqual([]);
  });

  test('an amount leads into a library where that decides it', () => {
    const own = `${HEAD}brick own\n  size 215 x 102.5 x 65 mm\n${WALL.replace('red', 'own')}`;
    expect(leads(own, 'total', 'wall').join()).toContain('library:uk');
  });

  test('courses as a height tell how, and lead to the brick', () => {
    const { found } = closer(HEAD + WALL, 'line', 'height');
    expect(spaced(found.text)).toMatch(/0\.6 m.*\n.*8 courses/);
    expect(leads(HEAD + WALL, 'line', 'height')).toEqual(['firm.perp:3']);
  });

  test('a length in bricks leads to the size of the brick, said or taken', () => {
    expect(leads(HEAD + WALL, 'line', 'length')).toEqual(['firm.perp:3']);
    const [taken] = leads(HEAD + WALL.replace('  brick red\n', ''), 'line', 'length');
    expect(taken).toMatch(/uk\.perp:\d+$/);
  });

  test('what a name stands for leads to the line that says it', () => {
    // The size and the price of `red` in the firm’s file.
    expect(leads(HEAD + WALL, 'name', 'brick')).toEqual(['firm.perp:3', 'firm.perp:6']);
  });

  test('what is taken leads to the default', () => {
    const [bond] = leads(`${HEAD}defaults\n  bond flemish\n${WALL}`, 'taken', 'wall');
    expect(bond).toBe('job.perp:4');
  });

  test('a line of money leads to its own figure where nothing else decides it', () => {
    expect(leads(`${HEAD}${WALL}cost s "Skip" 2 at £240\n`, 'money', 'cost')).toEqual([
      'job.perp:7',
    ]);
  });

  const RANGED = `${HEAD}${WALL.replace('1790 mm', '1.79..2.69 m')}cost a "A" 1 at £100..£110\n`;

  test('between what and what the price lies tells the ranges, the one that counts most first, and leads to it', () => {
    const { found } = closer(RANGED, 'range', 'job');
    const [head, , ...lines] = found.text.split('\n');
    expect(head).toBe('What the price may move by hangs on:');
    expect(lines).toHaveLength(2);
    // By hand: 0.9 m x 0.6 m is some 32 bricks at £1 and their laying, more than £10.
    expect(lines[0]).toMatch(/^- \*\*\d+%\*\* — `length 1\.79\.\.2\.69 m` .*job\.perp:6/);
    expect(lines[1]).toMatch(/^- \*\*\d+%\*\* — `cost a "A" 1 at £100\.\.£110` .*job\.perp:8/);
    expect(leads(RANGED, 'range', 'job')).toEqual(['job.perp:5']);
  });

  test('of many ranges only those that count most are told', () => {
    const costs = 'abcdefgh'.split('').map((n) => `cost ${n} "${n}" 1 at £100..£160\n`);
    const { found } = closer(HEAD + WALL + costs.join(''), 'range', 'job');
    expect(found.text.split('\n').slice(2)).toHaveLength(6);
    expect(found.text.endsWith('\n- …')).toBe(true);
  });

  test('a range tells what hangs on it alone, and leads to its place in the line', () => {
    const { of, found } = closer(RANGED, 'range', 'length');
    expect(spaced(found.text)).toMatch(
      /^\d+% of what the price may move by hangs on this range alone\. Nothing else counts as much: measure it first\. In eight of ten jobs alike the price is £[\d,.]+ to £[\d,.]+\.$/,
    );
    const { line, start, end } = found.parts[0]!.place!;
    expect(of.file.lines[line]!.slice(start, end)).toBe('1.79..2.69 m');
    expect(spaced(closer(RANGED, 'range', 'cost').found.text)).not.toContain('measure it first');
  });

  test('of two ranges in a line both are told, and it leads to the one that counts more', () => {
    const text = `${HEAD}${WALL}  footing 450..460 x 150..300 mm\n`;
    const { of, found } = closer(text, 'range', 'footing');
    expect(found.text.match(/hangs on this range alone/g)).toHaveLength(2);
    const { line, start, end } = found.parts[0]!.place!;
    expect(of.file.lines[line]!.slice(start, end)).toBe('150..300 mm');
  });

  test('a range in the firm’s file is told in the job', () => {
    const files = { 'firm.perp': FIRM.replace('£1 each', '£1..£2 each') };
    const of = job(HEAD + WALL, files);
    const hint = hintsOf(of, RANGE, new Set<HintKind>(['range']))[0]!;
    const found = closerAt(of, hint)!;
    expect(found.text).toContain('`price £1..£2 each`');
    expect(found.parts[0]!.place).toMatchObject({ file: '/jobs/firm.perp', line: 6 });
  });

  test('every hint of a figure tells something, of each kind', () => {
    const more =
      '  mix general\n  coping brick-on-edge\ntravel\n  run 2 x 10 miles per day at £0.45 per mile\n';
    const own = 'mix general "Own"\n  parts cement 1, lime 1, sand 6\n';
    const text = RANGED.replace('cost', `${more}cost`) + own;
    const of = job(text);
    const hints = hintsOf(of, RANGE, ALL_HINTS);
    expect(new Set(hints.map(({ kind }) => kind))).toEqual(ALL_HINTS);
    for (const hint of hints)
      expect(closerAt(of, hint)!.text, `${of.file.lines[hint.line]} | ${hint.text}`).not.toBe('');
  });

  test('nothing is told of a hint that says something else by now', () => {
    const { of, hint } = closer(HEAD + WALL, 'total', 'wall');
    expect(closerAt(of, { ...hint, text: 'other' })).toBeUndefined();
    expect(closerAt(of, { ...hint, line: 999 })).toBeUndefined();
  });

  test('one that is held says that it is as it was', () => {
    const { of, hint } = closer(HEAD + WALL, 'total', 'wall');
    expect(closerAt(of, { ...hint, held: true })!.text).toContain('As it was');
  });
});

test('hints come in the order of the text, and each kind can be left out', () => {
  const of = job(`${HEAD}${WALL}cost s "Skip" 2 at £240\n`);
  const all = hintsOf(of, RANGE, ALL_HINTS);
  expect(all.map((h) => h.line)).toEqual([...all.map((h) => h.line)].sort((a, b) => a - b));
  for (const kind of ALL_HINTS) {
    const without = hintsOf(of, RANGE, new Set([...ALL_HINTS].filter((k) => k !== kind)));
    expect(without).toEqual(all.filter((h) => h.kind !== kind));
  }
  expect(hintsOf(of, RANGE, new Set())).toEqual([]);
});
