import { describe, expect, test } from 'vitest';
import { allFigures } from '../../server/engine/views/job-view';
import { workingOf } from '../../server/engine/views/working';
import type { Term } from '../../server/engine/working/term';
import type { WorkingView } from '../../shared/views';
import { agree, allTerms, evaluated } from './evaluate';
import { exampleJob, JOBS } from './examples';

const cases = JOBS.flatMap((name) =>
  allFigures(exampleJob(name)).map(({ key, term }) => ({ name, key, term })),
);

describe('a working', () => {
  test('there is one for every figure of every example', () => {
    expect(JOBS.length).toBeGreaterThan(4);
    expect(cases.length).toBeGreaterThan(100);
  });

  test.each(JOBS)('of %s gives the figure when it is worked out again from its leaves', (name) => {
    const wrong = cases
      .filter((each) => each.name === name)
      .filter(({ term }) => !agree(evaluated(term), term.value))
      .map(
        ({ key, term }) => `${key}: ${term.value.toFixed()} is not ${evaluated(term).toFixed()}`,
      );
    expect(wrong).toEqual([]);
  });

  test.each(JOBS)('of %s agrees at every step on the way', (name) => {
    const steps = new Set<Term>();
    for (const each of cases) if (each.name === name) allTerms(each.term, steps);
    const wrong = [...steps]
      .filter((step) => !agree(evaluated(step), step.value))
      .map((step) => `${step.label}: ${step.value.toFixed()}`);
    expect(wrong).toEqual([]);
  });

  test.each(JOBS)('of %s ends in lines of a file, or in what was counted and says how', (name) => {
    const wrong = cases
      .filter((each) => each.name === name)
      .flatMap(({ key, term }) => leaves(term).map((leaf) => ({ key, leaf })))
      .filter(({ leaf }) => !grounded(leaf))
      .map(
        ({ key, leaf }) =>
          `${key}: ${leaf.op} “${leaf.label}” ${leaf.value.toFixed()} ${leaf.unit}`,
      );
    expect(wrong).toEqual([]);
  });

  test.each(JOBS)('of %s, read out, gives every fact its line', (name) => {
    const job = exampleJob(name);
    for (const { term } of allFigures(job)) {
      const view = workingOf(term, job.env);
      expect(view.result).not.toMatch(/NaN|Infinity|undefined/);
      for (const each of views(view)) {
        expect(each.result).not.toMatch(/NaN|Infinity|undefined|function/);
        if (each.place) expect(each.line?.length).toBeGreaterThan(0);
        if (each.place) expect(each.place.file).toMatch(/^(\/jobs\/|library:)/);
      }
    }
  });
});

function leaves(term: Term): Term[] {
  return [...allTerms(term)].filter((each) => each.args.length === 0);
}

/** A line said it; or the setting-out counted it and tells how; or it is a gap, which says what is missing. */
function grounded(leaf: Term): boolean {
  if (leaf.gaps.length || leaf.origin) return true;
  if (leaf.op === 'sum' && leaf.value.isZero()) return true;
  return leaf.op === 'count' && (leaf.note !== undefined || leaf.detail !== undefined);
}

function views(view: WorkingView): WorkingView[] {
  return [view, ...view.parts.flatMap(views)];
}
