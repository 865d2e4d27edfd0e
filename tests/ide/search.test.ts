/** Things of all files by a few letters of their names. */
import { describe, expect, test } from 'vitest';
import { glanceAt } from '../../server/engine/ide/glance';
import { fitOf, matchOf } from '../../server/engine/ide/search';
import { symbolsOf } from '../../server/engine/ide/symbols';
import type { OutlineItem } from '../../server/engine/ide/types';
import { SourceFile } from '../../server/engine/workspace/source';
import { files, read } from '../tree';

const TEXT = `perpend 1
use "firm.perp"
job "Orchard wall"
wall north "North boundary"
  brick red
  opening gate "Garden gate"
    width 1 m
  pier end
    at left
wall north-east
brick red "Harwick red"
limit heights
  zone inland "Away from the coast"
# wall no
option cheap "Cheaper"
`;

const { things } = glanceAt(TEXT);

/** Best first. */
function found(query: string): string[] {
  return things
    .flatMap((thing) => matchOf(query, thing) ?? [])
    .sort((a, b) => b.fit - a.fit)
    .map(({ thing }) => `${thing.kind} ${thing.name}`.trim());
}

describe('a file at a glance', () => {
  test('has its things, where they stand and in what', () => {
    expect(things.map(({ kind, name, line, within }) => [kind, name, line, within])).toEqual([
      ['job', '', 2, undefined],
      ['wall', 'north', 3, undefined],
      ['opening', 'gate', 5, 'wall north'],
      ['pier', 'end', 7, 'wall north'],
      ['wall', 'north-east', 9, undefined],
      ['brick', 'red', 10, undefined],
      ['limit', 'heights', 11, undefined],
      ['zone', 'inland', 12, 'limit heights'],
      ['option', 'cheap', 14, undefined],
    ]);
  });

  test('has their titles', () => {
    expect(things.map((thing) => thing.title).filter(Boolean)).toEqual([
      'Orchard wall',
      'North boundary',
      'Garden gate',
      'Harwick red',
      'Away from the coast',
      'Cheaper',
    ]);
  });

  test('has the files it names', () => {
    const text =
      'use "a.perp"\nuse uk\nuse "../b.perp"\npartner p\n  file "c.perp"\nfirm "F"\n  logo "l.png"\ndefaults\n  brick red';
    expect(glanceAt(text).files).toEqual(['a.perp', '../b.perp', 'c.perp', 'l.png']);
  });

  const shipped = files().filter((name) => name.endsWith('.perp'));
  test.each(shipped)('shows what the outline of %s shows', (name) => {
    const text = read(name);
    const flat = (item: OutlineItem): string[] => [
      `${item.name}:${item.lines.first}`,
      ...item.children.filter((c) => /^(opening|pier|zone)$/.test(c.kind)).flatMap(flat),
    ];
    const glanced = glanceAt(text).things.map(
      (t) => `${[t.kind, t.name].filter(Boolean).join(' ')}:${t.line}`,
    );
    expect(glanced).toEqual(symbolsOf(new SourceFile(name, text)).flatMap(flat));
  });
});

describe('search', () => {
  test.each<[query: string, first: string]>([
    ['north', 'wall north'],
    ['North', 'wall north'],
    ['NORTH-EAST', 'wall north-east'],
    ['ne', 'wall north-east'],
    ['wn', 'wall north'],
    ['wall n', 'wall north'],
    ['wne', 'wall north-east'],
    ['gate', 'opening gate'],
    ['og', 'opening gate'],
    ['harwick', 'brick red'],
    ['br', 'brick red'],
    ['orchard', 'job'],
    ['boundary', 'wall north'],
    ['coast', 'zone inland'],
    ['cheap', 'option cheap'],
    ['pe', 'pier end'],
  ])('%s finds %s first', (query, first) => {
    expect(found(query)[0]).toBe(first);
  });

  test('letters must stand in their order', () => {
    expect(found('htron')).toEqual([]);
    expect(fitOf('ba', 'ab')).toBeUndefined();
  });

  test('nothing asked is everything', () => {
    expect(found('')).toHaveLength(things.length);
    expect(found('  ')).toHaveLength(things.length);
  });

  test('what is not there is not found', () => {
    expect(found('zzz')).toEqual([]);
    expect(found('wall no x')).toEqual([]);
  });

  test('the beginning of a word is a better fit than its middle', () => {
    expect(fitOf('no', 'north')!).toBeGreaterThan(fitOf('no', 'piano')!);
    expect(fitOf('ne', 'north-east')!).toBeGreaterThan(fitOf('ne', 'annexe')!);
  });

  test('of two that fit alike the shorter is the better', () => {
    expect(fitOf('north', 'north')!).toBeGreaterThan(fitOf('north', 'north-east')!);
  });

  test('signs in a query are letters like others', () => {
    expect(found('.*')).toEqual([]);
    expect(found('north-')[0]).toBe('wall north-east');
  });
});
