/** What must hold of any two revisions, whatever stands in them: common sense, checked on random edits of whole jobs. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format } from '../../grammar/print';
import { type Comparison, compared } from '../../server/engine/compare';
import { ZERO } from '../../shared/exact';
import { FIRM, JOB, RANGED } from '../cli/jobs';
import { anyChange, changed, fitted, linesOf } from '../engine/edits';
import { jobOf } from '../engine/world';
import '../harness/seed';
import { files, read } from '../tree';
import { plainOf } from './plain';

const BASES = [JOB, RANGED, `${JOB}\n${RANGED.slice(RANGED.indexOf('repair'))}`];

/** Another name, another order, a line moved to another piece of work: what random letters never make. */
const TURNS: readonly ((text: string) => string)[] = [
  (text) => text.replace('wall walnorth', 'wall elsewhere'),
  (text) => text.replaceAll('walsouth', 'walnorth'),
  (text) => text.replace(/(wall walnorth[\s\S]*?)(wall walsouth[\s\S]*)/, '$2\n$1'),
  (text) => text.replace(/gatehole/, 'hole'),
  (text) => text.replace(/( {2}brick .*\n)( {2}bond .*\n)/, '$2$1'),
];

const edited = (text: string) =>
  fc
    .tuple(fc.subarray([...TURNS], { maxLength: 2 }), fc.array(anyChange, { maxLength: 4 }))
    .map(([turns, changes]) =>
      changes.reduce(
        (now, change) => changed(now, fitted(change, linesOf(now))),
        turns.reduce((now, turn) => turn(now), text),
      ),
    );

const two = fc
  .constantFrom(...BASES)
  .chain((base) =>
    fc.tuple(
      fc.oneof(fc.constant(base), edited(base)),
      edited(base),
      fc.oneof(fc.constant(FIRM), edited(FIRM)),
    ),
  );

const between = ([before, after, firm]: readonly [string, string, string]) =>
  [jobOf(before, { 'firm.perp': FIRM }), jobOf(after, { 'firm.perp': firm })] as const;

/** The parts of a difference of money are all of it. */
function addsUp({ money, before, after }: Comparison): void {
  if (!money) return;
  const sum = (parts: typeof money.parts) => parts.reduce((all, p) => all.add(p.difference), ZERO);
  const total = after.price.total.value.sub(before.price.total.value);
  expect(sum(money.parts).toFixed()).toBe(total.toFixed());
  expect(money.total.difference.toFixed()).toBe(total.toFixed());
  const net = after.price.price.value.sub(before.price.price.value);
  // A job without work has a price that no piece of work has a part of.
  if (before.works.length && after.works.length)
    expect(sum(money.works).toFixed()).toBe(net.toFixed());
  for (const { difference } of money.parts) expect(difference.decimalPlaces()).toBeLessThan(3);
}

describe('any two revisions', () => {
  test('the same text is no change', () => {
    fc.assert(
      fc.property(two, ([, after, firm]) => {
        const job = () => jobOf(after, { 'firm.perp': firm });
        expect(compared(job(), job())).toMatchObject({ nothing: true, idle: 0 });
      }),
      { numRuns: 12 },
    );
  });

  test('one way round is the other way round in a mirror, and money adds up', () => {
    fc.assert(
      fc.property(two, (texts) => {
        const [before, after] = between(texts);
        const on = compared(before, after);
        expect(plainOf(compared(after, before), 'back')).toEqual(plainOf(on));
        addsUp(on);
      }),
      { numRuns: 30 },
    );
  });

  test('comments, layout and empty lines are no change', () => {
    const comments = fc.array(fc.nat({ max: 40 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(fc.constantFrom(...BASES), comments, (text, places) => {
        const lines = text.split('\n');
        for (const place of places) lines[place % lines.length] += '   # a word beside it';
        const loose = lines.map((line) => line.replace(/^ {2}/, '\t\t').replace(/ {2,}/g, '    '));
        const [was, is] = [text, ['# first', ...loose].join('\r\n')].map((each) =>
          jobOf(each, { 'firm.perp': FIRM }),
        );
        expect(compared(was!, is!).nothing).toBe(true);
      }),
      { numRuns: 6 },
    );
  });

  test('one revision and a third differ by what each differs from the second', () => {
    const texts = [
      JOB,
      JOB.replace('5 m', '6 m'),
      JOB.replace('5 m', '6 m').replace('8 courses', '9 courses'),
    ];
    const [a, b, c] = texts.map((text) => jobOf(text, { 'firm.perp': FIRM }));
    const by = (x: typeof a, y: typeof a) => compared(x!, y!).money!.total.difference;
    expect(by(a, b).add(by(b, c)).toFixed()).toBe(by(a, c).toFixed());
    expect(by(a, c).isZero()).toBe(false);
  });
});

describe('the examples', () => {
  const jobs = files().filter((file) => /^examples\/[^/]+\/job\.perp$/.test(file));

  test.each(jobs)('%s put in order says what it said', (file) => {
    const others = Object.fromEntries(
      files()
        .filter((name) => /^examples\/.*\.perp$/.test(name))
        .map((name) => [name, read(name)]),
    );
    const at = (text: string) => jobOf(text.replaceAll('"../', '"examples/'), others);
    const text = read(file);
    const found = compared(at(text), at(format(`# seen\n${text}`)));
    expect(found.nothing).toBe(true);
  });
});
