import { describe, expect, test } from 'vitest';
import { daysLater, wordsFor } from '../../server/documents/words';
import { escaped } from '../../shared/escaped';

describe('days of the calendar', () => {
  // Counted by hand on a wall calendar; 2028 and 2000 are leap years, 2100 is none.
  test.each([
    ['2026-03-02', 30, '2026-04-01'],
    ['2026-12-20', 45, '2027-02-03'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2100-02-28', 1, '2100-03-01'],
    ['2000-02-28', 1, '2000-02-29'],
    ['2026-05-05', 0, '2026-05-05'],
  ])('%s and %i days is %s', (date, days, later) => {
    expect(daysLater(date, days)).toBe(later);
  });

  test('what is no date, or past all dates, has no later day', () => {
    expect(daysLater('soon', 3)).toBeUndefined();
    expect(daysLater('2026-01-01', 1e15)).toBeUndefined();
  });

  test('are written out, and what is no date stays', () => {
    const { date } = wordsFor('en-GB');
    expect(date('2026-03-02')).toBe('2 March 2026');
    expect(date('2026-12-31')).toBe('31 December 2026');
    expect(date('spring')).toBe('spring');
    expect(date('2026-13-01')).toBe('2026-13-01');
    // The month first in America: The Chicago Manual of Style, 6.38, from memory.
    expect(wordsFor('en-US').date('2026-03-02')).toBe('March 2, 2026');
    expect(wordsFor('tlh').date('2026-03-02')).toBe('2 March 2026');
  });
});

test('escaped text holds no sign of HTML, no control, and no turn of direction', () => {
  expect(escaped(`<a href="x">'&'</a>`)).toBe(
    '&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/a&gt;',
  );
  expect(escaped('a\u0000b\u001bc\ud800d\u202ee\uffff')).toBe(
    'a\ufffdb\ufffdc\ufffdd\ufffde\ufffd',
  );
  expect(escaped('½ brick, £5, 煉瓦 🧱')).toBe('½ brick, £5, 煉瓦 🧱');
});
