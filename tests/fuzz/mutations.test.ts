import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allFigures } from '../../server/engine/views/job-view';
import { linesOf } from '../engine/edits';
import { EXAMPLES, exampleJob, JOBS } from '../engine/examples';
import { jobOf } from '../engine/world';
import { runs } from '../harness/runs';
import { mutated, mutation, rubbish } from './mutate';
import { sound } from './sound';

const seed = 20260302;

/** For each example: some three hundred of a sort over all of them. */
const RUNS = 48;

const figuresOf = Object.fromEntries(JOBS.map((name) => [name, sound(exampleJob(name))]));

function jobWith(name: string, lines: readonly string[]) {
  return exampleJob(name, { [name]: lines.join('\n') });
}

describe('a job with something wrong in it', () => {
  test.each(JOBS)(
    '%s still says what it can, and never a number that is none',
    (name) => {
      const lines = linesOf(EXAMPLES[name]!);
      fc.assert(
        fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (all) => {
          sound(
            jobWith(
              name,
              all.reduce((text, each) => mutated(text, each), lines),
            ),
          );
        }),
        { seed, numRuns: runs(120) },
      );
    },
    30_000,
  );

  test.each(['firm.perp', 'us/firm.perp', 'de/firm.perp'])(
    'of which the file is %s',
    (firm) => {
      const lines = linesOf(EXAMPLES[firm]!);
      const users = JOBS.filter((name) => EXAMPLES[name]!.includes(`use "../${firm}"`));
      expect(users.length).toBeGreaterThan(0);
      fc.assert(
        fc.property(fc.array(mutation, { minLength: 1, maxLength: 3 }), (all) => {
          const text = all.reduce((sofar, each) => mutated(sofar, each), lines).join('\n');
          sound(exampleJob(users[0]!, { [firm]: text }));
        }),
        { seed, numRuns: runs(80) },
      );
    },
    30_000,
  );

  test('whole texts of rubbish', () => {
    const keys = fc.constantFrom(
      'wall a',
      '  length',
      '  height',
      'brick b',
      '  size',
      'use',
      'job',
      '  opening o',
      '    from',
      'price',
      '  stage',
      'labour',
      '  gang',
      'repair r',
      'pier p',
    );
    const line = fc
      .tuple(keys, fc.array(rubbish, { maxLength: 4 }))
      .map(([key, more]) => `${key} ${more.join(' ')}`);
    fc.assert(
      fc.property(fc.array(fc.oneof(line, rubbish), { maxLength: 30 }), (lines) => {
        sound(jobOf(lines.join('\n')));
      }),
      { seed, numRuns: 250 },
    );
  });
});

/** The top-level blocks that are work, with where their lines begin and end. */
function workBlocks(name: string) {
  const { file } = exampleJob(name);
  return file.blocks.flatMap((block, i) => {
    const end = file.blocks[i + 1]?.firstLine ?? file.lines.length;
    const work = ['wall', 'pier', 'repair', 'cost'].includes(block.kind ?? '');
    return work ? [{ name: block.name!, from: block.firstLine, to: end }] : [];
  });
}

describe('something wrong in one block', () => {
  const OWN = /\.(?:cost|price)$/;

  test.each(JOBS)(
    'of %s leaves the figures of the others as they are',
    (name) => {
      const lines = linesOf(EXAMPLES[name]!);
      const twice = [...lines, ...linesOf(EXTRA)];
      const before = sound(jobWith(name, twice));
      const others = [...before].filter(([key]) => /^(?:zz1|zz2)\./.test(key) && !OWN.test(key));
      expect(others.length).toBeGreaterThan(8);
      fc.assert(
        fc.property(mutation, fc.nat(), (each, at) => {
          const blocks = workBlocks(name);
          const block = blocks[at % blocks.length]!;
          const after = sound(
            jobWith(name, mutated(twice, inside(each), [block.from, block.to - 1])),
          );
          const left = others.filter(([key, value]) => after.get(key) !== value);
          expect(left).toEqual([]);
        }),
        { seed, numRuns: runs(RUNS) },
      );
    },
    30_000,
  );

  /** A word in the first column would open a block, and so be another mutation than one inside a block. */
  function inside<T extends { rubbish: string }>(each: T): T {
    return { ...each, rubbish: each.rubbish.replace(/[\r\n]/g, '') };
  }

  test.each(JOBS)(
    'of %s is told at its line, unless every figure is what it was',
    (name) => {
      const lines = linesOf(EXAMPLES[name]!);
      const before = figuresOf[name]!;
      const known = exampleJob(name).findings.map((f) => f.message);
      fc.assert(
        fc.property(
          fc.nat(),
          fc.constantFrom('§', 'qqqq', '"', '7,4', ') (', 'NaN'),
          (at, wrong) => {
            const bodies = lines.flatMap((line, i) => (/^ {2,}[a-z]/.test(line) ? [i] : []));
            const line = bodies[at % bodies.length]!;
            const changed = lines.map((text, i) =>
              i === line ? text.replace(/(\S+)\s+.*$/, `$1 ${wrong}`) : text,
            );
            const job = jobWith(name, changed);
            const after = sound(job);
            const same = sameFigures(before, after);
            const told = job.findings.some(
              (f) => f.place.line === line && !known.includes(f.message),
            );
            expect(told || same, changed[line]).toBe(true);
          },
        ),
        { seed, numRuns: runs(RUNS) },
      );
    },
    30_000,
  );
});

/** Every figure as it was; those of an opening or a pier that has another name now under that. */
function sameFigures(
  before: ReadonlyMap<string, unknown>,
  after: ReadonlyMap<string, unknown>,
): boolean {
  const values = (figures: ReadonlyMap<string, unknown>) =>
    [...figures.values()].map(String).sort();
  return isDeepStrictEqual(values(before), values(after));
}

/** Numbers of a line with their units, as far as a `?` can stand in their place. */
const MEASURES =
  /(?<=\s)(?:[£$])?\d[\d./]*(?:\.\.\d+)?(?: \d\/\d+)?(?: x [\d.]+(?: \d\/\d+)?)*(?: ?(?:mm|m2|m|km|miles?|courses|bricks?|in|kg|lb|t|h|days?|%|€)(?![\w/]))?/g;

/** Each line with each of its measures made a `?`, by its number. */
function unmeasured(lines: readonly string[]): [line: number, text: string][] {
  return lines.flatMap((line, i): [number, string][] => {
    const code = line.replace(/\s+#.*$/, '');
    if (!/^ {2,}[a-z]/.test(code) || /^ +(?:ref|date|address|phone|tax-number)/.test(code))
      return [];
    const bare = code.replace(/"[^"]*"/g, (text) => '_'.repeat(text.length));
    return [...bare.matchAll(MEASURES)].map(({ 0: text, index }) => [
      i,
      `${code.slice(0, index)}?${code.slice(index + text.length)}`,
    ]);
  });
}

describe('what is still to be measured', () => {
  const firms = ['firm.perp', 'us/firm.perp', 'de/firm.perp'].map((firm) => ({
    file: firm,
    job: JOBS.find((name) => EXAMPLES[name]!.includes(`use "../${firm}"`))!,
  }));
  const cases = [...JOBS.map((job) => ({ file: job, job })), ...firms];

  test.each(cases)('in $file is told, or takes nothing from any total', ({ file, job: name }) => {
    const lines = linesOf(EXAMPLES[file]!);
    const before = figuresOf[name]!;
    const all = unmeasured(lines);
    expect(all.length).toBeGreaterThan(5);
    const silent = all.filter(([at, text]) => {
      const job = exampleJob(name, {
        [file]: lines.map((line, i) => (i === at ? text : line)).join('\n'),
      });
      const after = sound(job);
      const stages = job.price.stages.flatMap((stage) => stage.amount.gaps);
      const told = job.price.total.gaps.length + stages.length > 0;
      // A line of the record that cannot be read is told where it stands, and is in no price.
      const unread = job.findings.some((f) => f.severity === 'error' && f.place.line === at);
      const open = new Set(
        allFigures(job).flatMap(({ key, term }) => (term.gaps.length ? key : [])),
      );
      // What became of the job says so itself, or is not there: nothing is done in an unknown number of hours.
      const itself = (key: string) =>
        open.has(key) || (key.startsWith('result.') && (unread || !after.has(key)));
      return !told && [...before].some(([key, value]) => after.get(key) !== value && !itself(key));
    });
    expect(silent.map(([, text]) => text)).toEqual([]);
  });
});

/** Two more walls, below all else, that no example speaks of. */
const EXTRA = `
wall zz1
  thick   1/2 brick
  length  2 m
  height  300 mm
wall zz2
  thick   1/2 brick
  length  4 m
  height  600 mm
  opening gap
    from   left 1 m
    width  1 m
`;
