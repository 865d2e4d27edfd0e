import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { blanks } from '../../client/first/blanks';
import { jobOf } from '../engine/world';
import { root } from '../tree';

const startOf = (name: string) =>
  readFileSync(path.join(root, `server/library/starts/${name}.perp`), 'utf8');

/** What an editor writes when nothing is filled in. */
function untouched(snippet: string): string {
  return snippet.replace(/\$\{\d+:((?:\\.|[^\\}])*)\}/g, '$1').replace(/\\([\\$}])/g, '$1');
}

describe('a firm’s file with places to fill in', () => {
  test.each(['uk', 'us', 'de'])(
    '%s: every price is a place, and what is left as it is, the text',
    (name) => {
      const text = startOf(name);
      const snippet = blanks(text);
      expect(untouched(snippet)).toBe(text);
      const priced = text.match(/^[^#\n]*(£|\$|€)/gm) ?? [];
      expect(priced.length).toBeGreaterThan(5);
      expect(snippet.match(/\$\{\d+:\d/g)).toHaveLength(priced.length);
    },
  );

  test('places count from one; comments have none; signs of a snippet are written as they are', () => {
    const place = (number: number, text: string) => ['$', `{${number}:${text}}`].join('');
    expect(blanks('a  £1 "b" # £2 "c"\nd  3.50 €')).toBe(
      `a  £${place(1, '1')} "${place(2, 'b')}" # £2 "c"\nd  ${place(3, '3.50')} €`,
    );
    expect(blanks('a $4 } \\')).toBe(`a \\$${place(1, '4')} \\} \\\\`);
  });

  test.each([
    ['uk', 'length 3 m'],
    ['us', 'length 10 ft'],
    ['de', 'length 3 m'],
  ])('with %s the first wall has a whole price and no error', (name, length) => {
    const files = { 'firm.perp': startOf(name) };
    const job = jobOf(
      `perpend 1\n\njob "A"\n\nuse "firm.perp"\n\nwall a\n  ${length}\n  height 6 courses\n`,
      files,
    );
    expect(job.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(job.price.total.gaps).toEqual([]);
    expect(job.price.total.value.isPositive()).toBe(true);
  });
});
