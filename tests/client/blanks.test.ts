import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { blanks } from '../../client/first/blanks';
import { pageOf } from '../../server/documents/pages';
import { markdownOf } from '../../server/documents/paper';
import { bodyOf } from '../../server/documents/paper/html';
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

  test.each([
    ['uk', ['tax-number']],
    ['us', []],
    ['de', ['tax-number']],
  ])(
    '%s: who the firm is is marked as still to be filled in, in its quotation marks',
    (name, more) => {
      const text = startOf(name);
      const { findings } = jobOf(text);
      const told = findings.filter((each) => each.code === 'blank');
      const lines = text.split('\n');
      expect(told.map(({ place }) => lines[place.line]!.trim().split(/\s/)[0])).toEqual([
        'firm',
        'address',
        'address',
        'phone',
        'email',
        ...more,
      ]);
      // Where one types, the marks stay, and what was to be filled in is gone.
      expect(blanks(text).match(/"\$\{\d+:\? [^}"]+\}"/g)).toHaveLength(told.length);
      expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    },
  );

  test.each([
    [
      'uk',
      'length 3 m',
      'Still to be filled in, and so left out: firm, address, phone, email, tax-number (firm.perp).',
    ],
    [
      'us',
      'length 10 ft',
      'Still to be filled in, and so left out: firm, address, phone, email (firm.perp).',
    ],
    [
      'de',
      'length 3 m',
      'Still to be filled in, and so left out: firm, address, phone, email, tax-number (firm.perp).',
    ],
  ])(
    'with %s as it comes a quote has none of its words, and says what it lacks',
    (name, length, said) => {
      const firm = startOf(name);
      const job = jobOf(
        `perpend 1\n\njob "A"\n\nuse "firm.perp"\n\nwall a\n  ${length}\n  height 6 courses\n`,
        { 'firm.perp': firm },
      );
      const made = pageOf(job, 'quote', { version: '0' });
      if (typeof made === 'string') throw new Error(made);
      const text = [markdownOf(made.paper), bodyOf(made.paper), made.paper.running].join('\n');
      const words = [...firm.matchAll(/"\? ([^"]+)"/g)].map(([, each]) => each!);
      expect(words).toHaveLength(firm.match(/^ *[^#\n]*"\?/gm)!.length);
      for (const each of words) expect(text).not.toContain(each);
      expect(text).not.toContain('?');
      expect(text).toContain(/terms +"([^"]+)"/.exec(firm)![1]);
      expect(made.asides).toContain(said);
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
