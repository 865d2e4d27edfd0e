import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, silent, tells } from './tells';

describe('block-twice', () => {
  test.each([
    ['job', 'job "A"', 'job "B"', 7],
    ['price', 'price', 'price', 5],
    ['travel', 'travel', 'travel', 6],
  ])('is told of a second %s block', (_, first, second, length) => {
    const [found] = tells(
      `perpend 1\nuse "firm.perp"\n${first}\n${second}\n${'^'.repeat(length)} block-twice: the first holds\n`,
    );
    expect(found!.related.map((r) => r.place.line)).toEqual([2]);
  });

  test('means it: not a line of the second holds', () => {
    const text = (more: string) => `perpend 1\nuse "firm.perp"
cost skip "Skip" 1 at £100
price
  round £1
price
  overhead 50%
${more}`;
    expect(jobOf(text(''), { 'firm.perp': FIRM }).price.price.value.toFixed()).toBe('100');
    const stages = jobOf(text('  stage "All" rest\n'), { 'firm.perp': FIRM }).price.stages;
    expect(stages).toEqual([]);
  });

  test('is not told of blocks that may stand more than once, nor of one in another file', () => {
    silent('perpend 1\nuse "firm.perp"\nlabour\nlabour\ndefaults\ndefaults\n', 'block-twice');
    silent('perpend 1\nuse "other.perp"\nprice\n', 'block-twice', {
      'other.perp': 'perpend 1\nprice\n',
    });
  });
});
