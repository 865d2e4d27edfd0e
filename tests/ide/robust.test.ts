/** Whatever the text and wherever the cursor: every question is answered, and no edit lies outside the text. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { completion, explained } from '../../server/engine/ide/completion';
import { formatting } from '../../server/engine/ide/format';
import { ALL_HINTS, hintsOf } from '../../server/engine/ide/hints';
import { closerAt } from '../../server/engine/ide/hints/closer';
import { SteadyHints } from '../../server/engine/ide/hints/steady';
import { hover } from '../../server/engine/ide/hover';
import { LENS_KINDS, lensesOf, lensText } from '../../server/engine/ide/lenses';
import { onEnter } from '../../server/engine/ide/on-enter';
import { signaturesAt } from '../../server/engine/ide/signature';
import type { Position } from '../../server/engine/ide/types';
import type { Job } from '../../server/engine/workspace/job';
import { withEdits } from '../harness/edits';
import '../harness/seed';
import { job } from './ask';

const LINES = [
  '',
  '  ',
  'perpend 1',
  'job "A"',
  'use "firm.perp"',
  'use "',
  'wall n "N"',
  'wall',
  'wall n',
  '  brick red',
  '  length 7.4 m',
  '  length 999999999999999999999 m',
  '  length -3 m',
  '  height 8..10 courses',
  '  height ?',
  '  coping brick-on-edge',
  '  opening gate',
  '    from left 1 m',
  '    width',
  'pier p',
  '  size 1.5 x 1.5 bricks',
  'repair r',
  '  in n',
  '  repoint 2..3 m2',
  'cost s "Skip" 2 at £240',
  'cost s "Skip" 1 at £0.00000001 per day',
  'option o',
  '  change n height $ courses',
  '  change n',
  'price',
  '  profit 20%',
  '  stage "A" rest',
  'labour',
  '  gang 2 masons',
  '  mason £1 per',
  'mix m',
  '  parts cement 1,',
  '# a',
  '  note "open',
  '🧱 §§ £',
];

function asked(of: Job, at: Position): void {
  const found = completion(of, at, () => ['a.perp']);
  for (const { label, kind, insert } of found?.items ?? []) {
    expect(typeof insert).toBe('string');
    explained(of, { line: at.line, column: found!.span.start, label, kind });
  }
  signaturesAt(of, at);
  hover(of, at);
}

function shown(of: Job): void {
  const hints = hintsOf(of, { first: 0, last: 1e6 }, ALL_HINTS);
  for (const hint of hints) {
    expect(hint.column).toBeLessThanOrEqual(of.file.lines[hint.line]!.length);
    expect(hint.text).not.toMatch(/NaN|undefined|Infinity/);
    expect(closerAt(of, hint)).toBeDefined();
  }
  for (const lens of lensesOf(of.file, new Set(LENS_KINDS)))
    expect(lensText(of, lens).title).not.toMatch(/NaN|undefined|Infinity|^$/);
}

test('of any text', () => {
  const place = { line: fc.nat(12), column: fc.nat(30) };
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...LINES), { maxLength: 10 }),
      fc.record(place),
      (lines, at) => {
        const text = lines.join('\n');
        const of = job(text);
        asked(of, at);
        shown(of);
        withEdits(text, onEnter(of.file, at));
        withEdits(text, formatting(of.file, [{ first: at.line, last: at.line + 2 }]));
      },
    ),
    { numRuns: 40 },
  );
});

test('hints that are held stand within the text, whatever is typed', () => {
  const line = fc.constantFrom(...LINES);
  fc.assert(
    fc.property(
      fc.array(line, { minLength: 2, maxLength: 8 }),
      fc.nat(7),
      line,
      (lines, at, other) => {
        const steady = new SteadyHints();
        const of = job(lines.join('\n'));
        const range = { first: 0, last: 1e6 };
        steady.of(of, range, ALL_HINTS);
        const end = { line: at % lines.length, column: 0 };
        const now = { startLine: end.line, startColumn: 0, endLine: end.line };
        of.file.edit({ ...now, endColumn: lines[end.line]!.length, text: other });
        of.refresh();
        for (const hint of steady.of(of, range, ALL_HINTS))
          expect(hint.column).toBeLessThanOrEqual(of.file.lines[hint.line]!.length);
      },
    ),
    { numRuns: 25 },
  );
});
