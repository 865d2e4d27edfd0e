/** Papers and pages in a preview: the lines they come from, told beside the job and in no file that goes out. */
import { describe, expect, test } from 'vitest';
import { KINDS, pageOf } from '../../server/documents/pages';
import { markdownOf } from '../../server/documents/paper';
import { bodyOf, htmlOf } from '../../server/documents/paper/html';
import { Lines } from '../../server/documents/preview/lines';
import { paperOf } from '../../server/documents/preview/papers';
import type { Shown } from '../../shared/protocol/preview';
import { lineOf, Previewing, WALL } from './shown';

const FIRM = `perpend 1

firm "Alder & Daughter"
  address "1 Kiln Lane"
  terms   "Half on the first day."

price
  profit 10%

labour
  bricklayer £30.00 per h
  gang       1 bricklayer
`;
const JOB = `${WALL.replace('use uk\n', 'use uk\nuse "firm.perp"\n')}
cost skip "Skip for the spoil" 1 at £240
`;
const of = new Previewing(JOB, { 'firm.perp': FIRM });
const kinds = KINDS.map(({ kind }) => kind);

/** What a text on a paper leads to: the line as it is written, in whichever file. */
function lineBehind({ paper, from }: Shown, text: string): string | undefined {
  const before = paper!.html.slice(0, paper!.html.indexOf(text));
  const [, at] = /.*data-from="(\d+)"/s.exec(before) ?? [];
  const found = from[Number(at)];
  const file = found?.uri ? FIRM : JOB;
  return found && file.split('\n')[found.line]?.trim();
}

describe('what a paper says leads to its line', () => {
  const quote = of.shown({ show: 'quote' });
  test.each([
    ['T. Alder', 'client  "T. Alder"'],
    ['2 March 2026', 'date    2026-03-02'],
    ['North wall', 'wall north "North wall"'],
    ['Skip for the spoil', 'cost skip "Skip for the spoil" 1 at £240'],
    ['Leave an opening 685 mm', 'opening hatch "Log hatch"'],
    ['Half on the first day.', 'terms   "Half on the first day."'],
  ])('%s', (text, line) => {
    expect(lineBehind(quote, text)).toBe(line);
  });

  test('a line of another file says which', () => {
    const terms = quote.from.find(({ label }) => label.startsWith('terms'));
    expect(terms?.uri).toMatch(/firm\.perp$/);
    expect(quote.from.filter(({ uri }) => uri).length).toBeLessThan(quote.from.length);
  });

  test('what stands under the heading of a wall is of that wall', () => {
    const { html } = quote.paper!;
    const section = html.slice(
      html.indexOf('North wall'),
      html.indexOf('<h3', html.indexOf('North wall')),
    );
    const marks = [...section.matchAll(/data-from="(\d+)"/g)].map(([, at]) => Number(at));
    const lines = marks.map((at) => quote.from[at]!);
    const [first, last] = [lineOf(JOB, /^wall/), lineOf(JOB, /head {4}soldier/)];
    expect(marks.length).toBeGreaterThan(3);
    expect(lines.every(({ line, uri }) => !uri && line >= first && line <= last)).toBe(true);
  });
});

test.each(kinds)(
  '%s: in a file nothing is marked, and in a preview nothing else is said',
  (kind) => {
    const made = pageOf(of.job, kind, { version: '1.0' });
    const shown = paperOf(kind, of.job, new Lines(), { version: '1.0' });
    if (typeof made === 'string') {
      expect(shown).toBe(made);
      return;
    }
    for (const form of [htmlOf, bodyOf, markdownOf])
      expect(form(made.paper)).not.toContain('data-');
    if (typeof shown === 'string') throw new Error(shown);
    const words = (html: string) =>
      html
        .replace(/<(img|figure)[^>]*>|<\/figure>/g, '')
        .replace(/ data-(from|also)="[\d ]+"/g, '');
    expect(words(shown.html)).toBe(words(bodyOf(made.paper)));
  },
);

test('a file that holds no job has no papers, and says why', () => {
  const none = new Previewing('perpend 1\n');
  const shown = none.shown({ show: 'quote' });
  expect(shown.paper).toBeUndefined();
  expect(shown.nothing).toMatch(/no work/);
});
