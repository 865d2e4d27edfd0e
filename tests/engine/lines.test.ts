/** A working leads to the lines of the file: no figure, and no part of one, stands on nothing that was written. */
import { describe, expect, test } from 'vitest';
import { allFigures } from '../../server/engine/views/job-view';
import { showValue } from '../../server/engine/views/show';
import { workingOf } from '../../server/engine/views/working';
import type { Term } from '../../server/engine/working/term';
import { exact } from '../../shared/exact';
import type { WorkingView } from '../../shared/views';
import { allTerms } from './evaluate';
import { exampleJob, JOBS } from './examples';
import { jobOf } from './world';

const EMPTY = new Set(['none', 'no tax line']);

/** A line stands under it, or the file says nothing of it at all: an empty sum, or none. */
function hasLine(term: Term): boolean {
  const leaves = [...allTerms(term)].filter((t) => t.args.length === 0);
  return leaves.some((leaf) => leaf.origin) || leaves.every(saysNothing);
}

function saysNothing(leaf: Term): boolean {
  return (
    leaf.value.isZero() &&
    (leaf.op === 'sum' || EMPTY.has(leaf.label) || EMPTY.has(leaf.note ?? ''))
  );
}

function views(view: WorkingView): WorkingView[] {
  return [view, ...view.parts.flatMap(views)];
}

describe.each(JOBS)('%s', (name) => {
  const job = exampleJob(name);
  const figures = allFigures(job);

  test('every figure, and every step to it, has a line at its end', () => {
    const wrong = figures.flatMap(({ key, term }) =>
      [...allTerms(term)].filter((t) => !hasLine(t)).map((t) => `${key}: ${t.label}`),
    );
    expect(wrong).toEqual([]);
  });

  test('the mortar and the face lead to the sizes of the brick and its joints', () => {
    const wanted = figures.filter(
      ({ key, term }) => /\.(mortar|area)$/.test(key) && term.value.gt(0),
    );
    expect(wanted.length).toBeGreaterThan(0);
    for (const { term } of wanted) {
      const lines = views(workingOf(term, job.env)).flatMap((v) => v.line ?? []);
      expect(lines.some((l) => l.startsWith('size '))).toBe(true);
      expect(lines.some((l) => /^(joint|gauge) /.test(l))).toBe(true);
    }
  });

  test('the money on the lines of a cost adds up to it', () => {
    const costs = figures.filter(({ key }) => job.works.some((w) => key === `${w.name}.cost`));
    expect(costs.length).toBe(job.works.length);
    // Work of which nothing is measured yet has no cost to tell of.
    const known = costs.filter(({ term }) => !(term.gaps.length && term.value.isZero()));
    for (const { term } of known) {
      const lines = term.detail!().filter((l) => l.includes(' of '));
      expect(lines.length).toBeGreaterThan(1);
      const pence = lines.map((l) => penceIn(l.split(', ').at(-1)!.split(' of ')[0]!));
      expect(pence.reduce((a, b) => a + b, 0)).toBe(term.value.times(100).toNumber());
      expect(term.detail!().at(-1)).toBe('rounded so that all shares add up');
    }
  });
});

test('the whole of a job’s only work is told as the whole of each thing', () => {
  const job = exampleJob('garden-wall/job.perp');
  const cost = allFigures(job).find((f) => f.key === 'north.cost')!.term;
  for (const line of cost.detail!().filter((l) => l.includes(', '))) {
    const [part, whole] = line.split(', ').at(-1)!.split(' of ');
    expect(`${line.split(':')[0]} ${part}`).toBe(`${line.split(':')[0]} ${whole}`);
  }
});

/** “£1,234.56” and “1.234,56 €” are 123456. */
function penceIn(text: string): number {
  return Number(text.replace(/\D/g, ''));
}

const TWO = `perpend 1
job "Two walls"
brick red "Red"
  size 215 x 102.5 x 65 mm
  price 860 £ per 1000
brick blue "Blue"
  size 215 x 102.5 x 65 mm
  price 2 £ each
labour
  bricklayer 30 £ per h
  gang 1 bricklayer
wall a "A"
  length 1115 mm
  height 10 courses
  thick 1/2 brick
  brick red
wall b "B"
  length 2240 mm
  height 10 courses
  thick 1/2 brick
  brick red
`;

describe('what a share came from', () => {
  test('each thing is told with the amount and the cost of the whole job', () => {
    const job = jobOf(TWO);
    const cost = allFigures(job).find((f) => f.key === 'a.cost')!.term;
    const lines = cost.detail!().map((l) => l.replaceAll('\u00a0', ' '));
    // 4 x 225 - 10 + 225 = 1115: five bricks to a course; 2240 = 10 x 225 - 10: ten. 50 of 150.
    expect(lines[0]).toMatch(/^Red: 50 of 150 bricks, £[\d.]+ of £[\d.]+$/);
    expect(lines.some((l) => /^labour: [\d.]+ h of [\d.]+ h, £[\d.]+ of £[\d.]+$/.test(l))).toBe(
      true,
    );
  });

  test('an output is so many in an hour', () => {
    const job = jobOf(TWO);
    const hours = allFigures(job).find((f) => f.key === 'a.hours')!.term;
    const sums = views(workingOf(hours, job.env)).flatMap((v) => v.sum ?? []);
    expect(sums.map((s) => s.replaceAll('\u00a0', ' '))).toContainEqual(
      expect.stringMatching(/^50 bricks ÷ [\d.]+ bricks\/h$/),
    );
  });
});

describe('small amounts', () => {
  const { env } = jobOf('perpend 1\njob "Small"\n');
  test.each([
    ['0.361', 'l', '0.361 l'],
    ['6.498', 'l', '6.5 l'],
    ['3.456', 'kg', '3.46 kg'],
    ['34.56', 'kg', '34.6 kg'],
    ['0.0625', 'h', '0.063 h'],
    ['0.25', 'bricks', '0.3 bricks'],
    ['55', 'bricks/h', '55 bricks/h'],
    ['1.5', 'm2/h', '1.5 m²/h'],
  ])('%s %s is shown as %s', (value, unit, text) => {
    expect(showValue(exact(value), unit, env).replaceAll('\u00a0', ' ')).toBe(text);
  });
});

describe('bricks on edge that are cut', () => {
  const pier = (size: string) => `perpend 1
pier p "P"
  size ${size}
  height 8 courses
  brick standard
  coping brick-on-edge
`;

  test('are told in the count, and cutting is part of the work', () => {
    // A pier of 440 mm takes 6 on edge: 6 x 75 - 10 = 440. One of 330 mm takes 4, and leaves 30 mm: a cut.
    const job = jobOf(pier('330 x 330 mm'));
    const bricks = allFigures(job).find((f) => f.key === 'p.bricks')!.term;
    const told = views(workingOf(bricks, job.env)).map((v) => v.label);
    expect(told.some((l) => /^\d+ of these (is|are) cut on edge$/.test(l))).toBe(true);
    expect(job.works[0]!.facts.does.has('cutting')).toBe(true);
  });

  test('not where whole ones fill the top', () => {
    const job = jobOf(pier('440 x 440 mm'));
    const bricks = allFigures(job).find((f) => f.key === 'p.bricks')!.term;
    const told = views(workingOf(bricks, job.env)).map((v) => v.label);
    expect(told.filter((l) => l.includes('cut on edge'))).toEqual([]);
  });
});

describe('what is reckoned with until something is chosen', () => {
  const told = (lengths: string) =>
    jobOf(`perpend 1\nwall w "W"\n  ${lengths}\n  thick 1/2 brick\n  coping brick-on-edge\n`)
      .findings.filter((f) => f.code.startsWith('fit-'))
      .map((f) => f.message);

  test('joints, where no cut can be made', () => {
    // 155 - 2 x 65 = 25 mm between two; one whole and a cut would leave 155 - 65 - 10 = 80 mm: no cut of 65.
    const [coping] = told('length 155 mm\n  height 8 courses').slice(-1);
    expect(coping).toContain('Joints of 25 mm are reckoned with');
    expect(coping).not.toContain('A cut is');
  });

  test('a cut shorter than anyone would lay, where nothing else goes in', () => {
    const [coping] = told('length 30 mm\n  height 8 courses').slice(-1);
    expect(coping).toContain('not even one brick on edge goes in: it is 35 mm too long');
    expect(coping).toContain('A cut is reckoned with');
  });

  test('of none it is not said that it leaves a gap', () => {
    const all = [
      ...told('length 30 mm\n  height 8 courses'),
      ...told('length 2240 mm\n  height 30 mm'),
    ];
    expect(all.length).toBeGreaterThan(2);
    for (const message of all) expect(message).not.toMatch(/\b0 (course|brick)|\b1 are\b/);
    expect(all.at(-1)).toContain('not even one course goes in: it is 45 mm too long');
  });
});
