/** Options: the job with one taken is the job of the text that the option makes of it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allFigures } from '../../server/engine/views/job-view';
import type { Job } from '../../server/engine/workspace/job';
import { inRoot, jobOf, workspaceOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import '../harness/seed';

const FILES = { 'firm.perp': FIRM };
const at = (text: string) => jobOf(text, FILES);

const WALLS = `perpend 1
use "firm.perp"
job "Two walls"
wall north
  brick   red
  length  4.5 m
  height  6 courses
  pier hanging
    at      right
    size    1.5 x 1.5 bricks
    height  8 courses
    coping  brick-on-edge
wall south
  brick   red
  length  2.25 m
  height  5 courses
cost skip "Skip hire" 1 at £120
`;

function withOption(lines: readonly string[], more = ''): Job {
  const option = ['option one "One"', ...lines.map((line) => `  ${line}`)].join('\n');
  return at(`${WALLS}${more}${option}\n`);
}

const total = (job: Job | undefined) => job!.price.total.value.toFixed();

describe('an option', () => {
  test.each([
    [
      'changes a line',
      ['change north height 8 courses'],
      ['height  6 courses', 'height  8 courses'],
    ],
    [
      'adds a line',
      ['change north coping brick-on-edge'],
      ['  height  6 courses\n', '  height  6 courses\n  coping brick-on-edge\n'],
    ],
    [
      'changes a line of a pier in a wall',
      ['change hanging height 9 courses'],
      ['height  8 courses', 'height  9 courses'],
    ],
    [
      'leaves a piece of work out',
      ['leave-out south'],
      [WALLS.slice(WALLS.indexOf('wall south'), WALLS.indexOf('cost')), ''],
    ],
    ['leaves a cost out', ['leave-out skip'], ['cost skip "Skip hire" 1 at £120\n', '']],
    [
      'leaves a pier out',
      ['leave-out hanging'],
      [WALLS.slice(WALLS.indexOf('  pier'), WALLS.indexOf('wall south')), ''],
    ],
    ['leaves a line out', ['leave-out hanging coping'], ['    coping  brick-on-edge\n', '']],
    [
      'swaps a top',
      ['leave-out hanging coping', 'change hanging cap 400 x 400 mm'],
      ['coping  brick-on-edge', 'cap 400 x 400 mm'],
    ],
  ] as const)('that %s comes to what the same text by hand comes to', (_, lines, [from, to]) => {
    const job = withOption(lines);
    expect(WALLS).toContain(from);
    const by = at(WALLS.replace(from, to));
    const [option] = job.options.priced;
    expect(total(job)).toBe(total(at(WALLS)));
    expect(option!.price.total.value.toFixed()).toBe(total(by));
    expect(option!.more.total.value.toFixed()).toBe(
      by.price.total.value.sub(job.price.total.value).toFixed(),
    );
    expect(option!.price.net.value.toFixed()).toBe(by.price.price.value.toFixed());
    expect(option!.job.price.total.gaps).toEqual(by.price.total.gaps);
  });

  test('that says what the text says already adds nothing', () => {
    const [option] = withOption([
      'change north height 6 courses',
      'change hanging size 1.5 x 1.5 bricks',
    ]).options.priced;
    expect(option!.more.total.value.isZero()).toBe(true);
    expect(option!.more.net.value.isZero()).toBe(true);
  });

  test('with work and costs of its own is priced as if they stood there without a condition', () => {
    const extra = (line: string) =>
      `wall east\n  brick   red\n  length  900 mm\n  height  4 courses\n${line}cost permit "Permit" 1 at £35\n${line}`;
    const job = withOption([], extra('  option  one\n'));
    expect(total(job)).toBe(total(at(WALLS)));
    expect(job.works.map((w) => w.name)).toEqual(['north', 'south']);
    expect(total(job.options.with(['one']))).toBe(total(at(WALLS + extra(''))));
  });

  test('that two name is done when either is taken, and two can be taken together', () => {
    const more =
      'wall east\n  brick   red\n  length  900 mm\n  height  4 courses\n  option  one, two\noption two\n  change south height 7 courses\n';
    const job = withOption(['change north height 8 courses'], more);
    const both = job.options.with(['two', 'one'])!;
    expect(both.works.map((w) => w.name)).toEqual(['north', 'south', 'east']);
    const by = WALLS.replace('height  6 courses', 'height  8 courses').replace(
      'height  5 courses',
      'height  7 courses',
    );
    expect(total(both)).toBe(
      total(at(`${by}wall east\n  brick   red\n  length  900 mm\n  height  4 courses\n`)),
    );
    expect(job.options.with(['two'])!.works).toHaveLength(3);
    expect(job.options.with(['none'])).toBeUndefined();
    expect(job.options.with([])).toBe(job);
  });

  test('leaves everything else the same object, so that nothing of it is worked out again', () => {
    const job = withOption(['change south height 7 courses', 'leave-out skip']);
    const [north, south] = job.options.with(['one'])!.works;
    expect(north).toBe(job.works[0]);
    expect(south).not.toBe(job.works[1]);
  });

  test('changes every line of a word but one that may stand once only; an unreadable line too', () => {
    const text = WALLS.replace('height  5 courses', 'height  five');
    const job = at(`${text}option one\n  change south height 5 courses\n`);
    expect(job.price.total.gaps.length).toBeGreaterThan(0);
    const with1 = job.options.with(['one'])!;
    expect(with1.price.total.gaps).toEqual([]);
    expect(total(with1)).toBe(total(at(WALLS)));
  });

  test('has figures, each with its working', () => {
    const job = withOption(['change north height 8 courses']);
    const figures = new Map(allFigures(job).map((f) => [f.key, f.term]));
    expect([...figures.keys()].filter((key) => key.startsWith('option.'))).toEqual([
      'option.one.more-net',
      'option.one.more',
      'option.one.net',
      'option.one.price',
    ]);
    expect(figures.get('option.one.more')!.args[1]).toBe(figures.get('job.price'));
  });
});

describe('the base of a job', () => {
  test('is what it would be without any option, whatever its options say', () => {
    const line = fc.constantFrom(
      'change north height 9 courses',
      'change south length 3 m',
      'change south brick engineering',
      'change nowhere height 1 courses',
      'leave-out south',
      'leave-out north height',
      'leave-out hanging',
      'leave-out skip',
      'change north nonsense 4',
      'change north',
      'instead-of two',
      'instead-of one',
    );
    const plain = at(WALLS);
    fc.assert(
      fc.property(fc.array(line, { maxLength: 5 }), (lines) => {
        const job = withOption(lines);
        expect(total(job)).toBe(total(plain));
        expect(job.price.figures.map((f) => f.term.value.toFixed())).toEqual(
          plain.price.figures.map((f) => f.term.value.toFixed()),
        );
        for (const option of job.options.priced)
          expect(option.price.total.value.isFinite()).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});

describe('after an edit', () => {
  test('options stand as they would for a fresh start', () => {
    const text = `${WALLS}option one\n  change north height 8 courses\n  leave-out skip\nwall east\n  brick red\n  length 900 mm\n  height 4 courses\n  option one\n`;
    const workspace = workspaceOf({ ...FILES, 'job.perp': text });
    const name = inRoot('job.perp');
    workspace.opened(name, text);
    workspace.job(name)!.findings;
    const steps: [string, string][] = [
      ['height 8 courses', 'height 9 courses'],
      ['length  2.25 m', 'length  3 m'],
      ['at £120', 'at £90'],
      ['  leave-out skip\n', ''],
      ['  option one\n', ''],
      ['height  6 courses', 'height  7 courses'],
      ['job "Two walls"', '# a line more\njob "Two walls"'],
    ];
    let now = text;
    for (const [from, to] of steps) {
      expect(now).toContain(from);
      now = now.replace(from, to);
      workspace.replaced(name, now);
      const job = workspace.job(name)!;
      const fresh = at(now);
      expect(total(job)).toBe(total(fresh));
      expect(total(job.options.with(['one']))).toBe(total(fresh.options.with(['one'])));
      expect(job.findings).toEqual(fresh.findings);
    }
  });
});
