import { describe, expect, test } from 'vitest';
import { LENS_KINDS, type LensKind, lensesOf, lensText } from '../../server/engine/ide/lenses';
import { FILES, job, spaced } from './ask';

const HEAD = 'perpend 1\njob "Orchard"\nuse "firm.perp"\n';
const WALL = 'wall north "North"\n  brick red\n  length 1790 mm\n  height 8 courses\n';
const PIER = 'pier gate\n  brick red\n  size 1.5 x 1.5 bricks\n  height 12 courses\n';

function lenses(text: string, kinds: readonly LensKind[] = LENS_KINDS): string[] {
  const of = job(text);
  return lensesOf(of.file, new Set(kinds)).map((lens) => {
    const { title, figure } = lensText(of, lens);
    return `${lens.line}: ${spaced(title)}${figure ? ` -> ${figure}` : ''}`;
  });
}

const over = (text: string, line: number, kinds?: readonly LensKind[]) =>
  lenses(text, kinds).filter((each) => each.startsWith(`${line}: `));

describe('over a piece of work', () => {
  test.each([
    ['a wall', WALL],
    ['a pier', PIER],
    ['a repair', `${WALL}repair frost\n  in north\n  repoint 2 m2\n`],
  ])('%s: its part of the price and its hours, its drawing and its working', (_, text) => {
    const all = `${HEAD}${text}`;
    const line = all.split('\n').findLastIndex((l) => /^(wall|pier|repair) /.test(l));
    const [figures, drawing, working] = over(all, line);
    expect(figures).toMatch(/£[\d,.]+ of the price · [\d.]+ h -> \w+\.price$/);
    expect(drawing).toBe(`${line}: Drawing`);
    expect(working).toMatch(/^\d+: Working -> \w+\.price$/);
  });

  test('the price is its share of the price before tax', () => {
    const of = job(HEAD + WALL);
    const net = of.price.price.value.toFixed(2);
    expect(over(HEAD + WALL, 3)[0]).toContain(`£${net} of the price`);
  });

  test.each([
    [
      'what is still to be measured',
      'length 1790 mm',
      'length ?',
      /not complete: the length of north is not known/,
    ],
    ['a brick that nobody knows', 'brick red', 'brick rad', /not complete/],
  ])('tells what is missing: %s', (_, old, text, wanted) => {
    expect(over(HEAD + WALL.replace(old, text), 3)[0]).toMatch(wanted);
  });

  test('of many things that are missing only some are named', () => {
    const bare = 'wall n\n  brick red\n  mix other\n  bond odd\n';
    const [figures] = over(`perpend 1\njob "A"\n${bare}`, 2);
    expect(figures).toMatch(/and \d+ more/);
  });

  test('a heading that cannot be read keeps its room', () => {
    const broken = `${HEAD}${WALL.replace('north ', '')}${PIER}`;
    const lines = (text: string) => lenses(text).map((each) => each.split(':')[0]);
    expect(lines(broken)).toEqual(lines(`${HEAD}${WALL}${PIER}`));
    expect(over(broken, 3)[0]).toBe('3: …');
  });

  test('comments and empty lines before it are no part of it', () => {
    expect(over(`${HEAD}${WALL}\n# the gate\n${PIER}`, 9)).toHaveLength(3);
  });

  test('work of an option is told in the job with that option', () => {
    const text = `${HEAD}${WALL}option more\n${PIER.replace('\n', '\n  option more\n')}`;
    expect(over(text, 8)[0]).toMatch(/£[\d,.]+ of the price/);
  });
});

describe('over the job', () => {
  test('stand its price and what it earns an hour', () => {
    const [figures, working] = over(HEAD + WALL, 1);
    expect(figures).toMatch(/^1: £[\d,.]+ incl\. VAT · earns £[\d.]+ an hour -> job\.price$/);
    expect(working).toBe('1: Working -> job.price');
  });

  test('without tax none is told', () => {
    const text = `perpend 1\njob "A"\n  tax none "not registered"\nuse "firm.perp"\n${WALL}`;
    expect(over(text, 1)[0]).toMatch(/^1: £[\d,.]+ · earns/);
  });

  test('what no hours are worked for earns nothing an hour', () => {
    const text = `${HEAD}cost skip "Skip" 1 at £240\nwall n\n`;
    expect(over(text, 1)[0]).not.toContain('earns');
  });

  test('what is missing is told', () => {
    expect(over(`${HEAD}${WALL.replace('1790 mm', '?')}`, 1)[0]).toContain('not complete: ');
  });
});

describe('none', () => {
  test.each([
    ['in a firm’s file', FILES['firm.perp']!],
    ['in a job without work', HEAD],
    ['in an empty file', ''],
    ['over settings', 'perpend 1\ndefaults\n  lift 1 m\n'],
  ])('%s', (_, text) => {
    expect(lenses(text)).toEqual([]);
  });

  test('of kinds that are switched off', () => {
    expect(over(HEAD + WALL, 3, ['figures'])).toHaveLength(1);
    expect(over(HEAD + WALL, 3, ['drawing', 'working']).join()).not.toContain('£');
    expect(lenses(HEAD + WALL, [])).toEqual([]);
  });
});

test('where they stand hangs on no figure, so that it is told at once', () => {
  const of = job(HEAD + WALL);
  const lens = lensesOf(of.file, new Set(LENS_KINDS));
  expect(lens.map((l) => l.line)).toEqual([1, 1, 3, 3, 3]);
});

test('one of a line that is gone says little and breaks nothing', () => {
  const of = job(HEAD + WALL);
  for (const kind of LENS_KINDS) expect(lensText(of, { line: 999, kind }).title).not.toBe('');
});
