import { describe, expect, test, vi } from 'vitest';
import { given, today, wordsOf, wrongDay } from '../../client/deeds/said';
import { BACK, runSteps, type Step } from '../../client/deeds/steps';

vi.mock('vscode', () => import('./vscode'));

describe('what is typed', () => {
  test.each([
    ['2 people 7.5 h facework', ['2', 'people', '7.5', 'h', 'facework']],
    [
      '£212.40 "sand and cement" for materials',
      ['£212.40', '"sand and cement"', 'for', 'materials'],
    ],
    ['"he said \\"no\\"" x', ['"he said \\"no\\""', 'x']],
    ['', []],
    ['  ', []],
    ['"open', ['"open']],
  ])('%s is so many words', (said, words) => {
    expect(wordsOf(said)).toEqual(words);
  });

  // ISO 8601 calendar dates; 2024 and 2028 are leap years, 2026 is none.
  test.each([
    ['2026-03-02', true],
    ['2028-02-29', true],
    ['2026-02-29', false],
    ['2026-13-01', false],
    ['02/03/2026', false],
    ['', false],
    ['2026-3-2', false],
  ])('%s is a day: %s', (said, is) => {
    expect(wrongDay(said) === undefined).toBe(is);
  });

  test('today is told as jobs write it', () => {
    expect(today(new Date(2026, 2, 2, 23, 59))).toBe('2026-03-02');
  });

  test('what is left empty is not said', () => {
    expect([given(' '), given(' x '), given(undefined)]).toEqual([undefined, 'x', undefined]);
  });
});

describe('questions one after the other', () => {
  const step =
    (answers: (string | typeof BACK | undefined)[], seen: string[] = []): Step<string> =>
    async (state, at) => {
      seen.push(`${at.step}/${at.totalSteps} ${state}`);
      const answer = answers.shift();
      return typeof answer === 'string' ? state + answer : answer;
    };

  test('each is given what was answered before, and its number', async () => {
    const seen: string[] = [];
    const steps = [step(['a'], seen), step(['b'], seen)];
    expect(await runSteps('T', '', () => steps)).toBe('ab');
    expect(seen).toEqual(['1/2 ', '2/2 a']);
  });

  test('back asks the one before again, and forgets its answer', async () => {
    const seen: string[] = [];
    const steps = [step(['a', 'c'], seen), step([BACK, 'b'], seen)];
    expect(await runSteps('T', '', () => steps)).toBe('cb');
    expect(seen).toEqual(['1/2 ', '2/2 a', '1/2 ', '2/2 c']);
  });

  test('who turns away has answered nothing', async () => {
    expect(await runSteps('T', '', () => [step(['a']), step([undefined])])).toBeUndefined();
  });

  test('an answer may bring more questions', async () => {
    const [first, more] = [step(['x']), step(['y'])];
    expect(await runSteps('T', '', (state) => (state ? [first, more] : [first]))).toBe('xy');
  });
});
