/** Every code that anything can be told by has a test that expects it. */
import { describe, expect, test } from 'vitest';
import { files, read } from '../tree';
import { engine, faults, made } from './codes';

function expected(under: RegExp): Set<string> {
  const texts = files().filter((f) => under.test(f) && !f.endsWith('every.test.ts'));
  return new Set(
    texts.flatMap((f) => [...read(f).matchAll(/\^+\S*\s+([a-z][a-z-]+)\b/g)].map((m) => m[1]!)),
  );
}

describe('every finding', () => {
  test('of the engine is expected by a test of this folder, under the mark of its place', () => {
    expect(made.length).toBeGreaterThan(30);
    const tested = expected(/^tests\/findings\/.*\.test\.ts$/);
    const here = files().filter((f) => /^tests\/findings\/.*\.test\.ts$/.test(f));
    const named = new Set(
      here.flatMap((f) => [...read(f).matchAll(/'([a-z]+(?:-[a-z]+)*)'/g)].map((m) => m[1]!)),
    );
    expect([...new Set(made)].filter((code) => !tested.has(code) && !named.has(code))).toEqual([]);
  });

  test('of the reader is expected by a test of the grammar', () => {
    const tested = expected(/^tests\/grammar\/faults\/.*\.ts$/);
    expect(faults.length).toBeGreaterThan(10);
    expect([...new Set(faults)].filter((code) => !tested.has(code))).toEqual([]);
  });

  test('is made by what this test sees: no code is put together in another way', () => {
    const other = engine.flatMap((f) =>
      [...read(f).matchAll(/\bcode:(?! string)(?! way)\s*([^,}\n]+)/g)].map((m) => m[1]!.trim()),
    );
    const unseen = other.filter((c) => !/^'[a-z-]+'$/.test(c) && !/^\w+ \? '/.test(c));
    expect(unseen.filter((c) => !/caution|fault\.code|remark\.code/.test(c))).toEqual([]);
  });
});
