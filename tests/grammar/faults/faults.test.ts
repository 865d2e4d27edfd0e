import { describe, expect, test } from 'vitest';
import { applied } from '../../harness/edits';
import { expectFindings, parseMarks } from '../../harness/marks';
import { files, read } from '../../tree';
import { faultsOf } from '../reading';
import { lines } from './lines';
import { meant } from './meant';
import { numbers } from './numbers';
import { values } from './values';

const cases = [...lines, ...values, ...numbers, ...meant];

describe('a fault', () => {
  test.each(cases)('of $says', ({ marked, way, leaves, ways }) => {
    const { text, found } = expectFindings(marked, faultsOf);
    const offered = found.flatMap((fault) => fault.ways);
    expect(offered.map((each) => each.title)).toEqual(ways ?? (way ? [way] : []));
    const taken = offered.find((each) => each.title === way);
    if (!taken) return;
    const after = applied(text, taken.edits);
    expect(after).toBe(leaves);
    const fixed = found.find((fault) => fault.ways.includes(taken))!;
    expect(faultsOf(after).map((fault) => fault.code)).not.toContain(fixed.code);
  });

  test('has a case for every code that the reader can give', () => {
    const sources = files().filter((file) => /^grammar\/read\/.*\.ts$/.test(file));
    const calls = sources.flatMap((file) => [...read(file).matchAll(/\bfault\(\s*'([a-z-]+)'/g)]);
    const codes = new Set(calls.map((call) => call[1]));
    const tested = cases.flatMap((each) => parseMarks(each.marked).expected.map((e) => e.code));
    expect(codes.size).toBeGreaterThan(10);
    expect([...new Set(tested)].sort()).toEqual([...codes].sort());
  });

  test('clips what is too long to be read', () => {
    const [found] = faultsOf(`wall a\n  length ${'1,1'.repeat(1000)} m\n`);
    expect(found!.message.length).toBeLessThan(200);
  });
});

describe('the ways out of a fault', () => {
  test('say one thing each, and read better afterwards', () => {
    const text = 'wall a\n  length 4.165 m\n';
    const [found] = faultsOf(text);
    const after = found!.ways.map((way) => applied(text, way.edits));
    const lengths = ['4165 mm', '4.1650 m', '4165 m'];
    expect(after).toEqual(lengths.map((length) => `wall a\n  length ${length}\n`));
    for (const each of after) expect(faultsOf(each)).toEqual([]);
  });
});
