/** What became of a job, against sums done by hand. */
import { describe, expect, test } from 'vitest';
import { type Result, resultFigures, resultOf } from '../../server/engine/life/result';
import { allFigures } from '../../server/engine/views/job-view';
import { workingOf } from '../../server/engine/views/working';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';

// 80 bricks at 50 an hour take 1.6 h of a bricklayer and a labourer; one hour of both costs £27.50 + £16 = £43.50.
const JOB = `perpend 1
use "firm.perp"
job "A"
wall north
  brick   red
  length  4490 mm
  height  4 courses
  stands  held
price
  overhead 10%
  profit 20%
record
`;

function resultFor(record: string, text = JOB): Result | undefined {
  return resultOf(jobOf(text + record, { 'firm.perp': FIRM }));
}

function figures(result: Result): Record<string, number> {
  return Object.fromEntries(resultFigures(result).map((f) => [f.key, f.term.value.toNumber()]));
}

describe('the result of a job', () => {
  test('is none before anything is worked or spent', () => {
    expect(resultFor('  sent 2026-03-02 £346.80\n  paid 2026-03-03 £10\n')).toBeUndefined();
  });

  test('is what it cost, what it leaves, and what it earns an hour', () => {
    const result = resultFor(`  worked 2026-03-09 2 people 1.5 h facework 80 bricks
  worked 2026-03-10 1 person 1 h
  spent  2026-03-09 £120.00 "bricks and sand"
  spent  2026-03-09 £15.00 "parking" for travel
`)!;
    // 4 h of one person at £21.75 are £87; with £120 and £15 that is £222. The price before tax is £289, and 10% of
    // the reckoned cost of £218.60 is £21.86: £289 - £222 - £21.86 = £45.14, 15.6% of £289. Wages and that are £132.14,
    // for 2 h of the two together £66.07 each.
    expect(figures(result)).toMatchObject({
      'result.net': 289,
      'result.labour': 87,
      'result.materials': 120,
      'result.travel': 15,
      'result.others': 0,
      'result.cost': 222,
      'result.overhead': 21.86,
      'result.leaves': 45.14,
      'result.margin': 15.6,
      'result.earns': 66.07,
      'result.hours': 4,
      'result.hours-estimated': 3.2,
    });
    expect(result.parts.filter((p) => p.asEstimated).map((p) => p.part)).toEqual(['others']);
  });

  test('sets hours and amounts of each task beside what was reckoned, and gives the real output', () => {
    const { tasks } = resultFor(`  worked 2026-03-09 2 people 1.5 h facework 60 bricks
  worked 2026-03-10 2 people 0.5 h facework 20 bricks
  worked 2026-03-10 1 person 1 h
`)!;
    const numbers = tasks.map((t) => [
      t.task,
      ...[t.estimated, t.worked, t.amountEstimated, t.amount, t.output].map((x) =>
        x?.value.toNumber(),
      ),
    ]);
    // 4 h of two are 2 h of a bricklayer: 80 bricks are 40 an hour, beside the 50 that were reckoned.
    expect(numbers).toEqual([
      ['facework', 3.2, 4, 80, 80, 40],
      ['', undefined, 1, undefined, undefined, undefined],
    ]);
  });

  test('gives no output of a task whose amount is not said every day, or in two units', () => {
    const one = resultFor(
      '  worked 2026-03-09 1 person 1 h facework 60 bricks\n  worked 2026-03-10 1 person 1 h facework\n',
    )!;
    expect(one.tasks[0]!.output).toBeUndefined();
    const two = resultFor(
      '  worked 2026-03-09 1 person 1 h facework 60 bricks\n  worked 2026-03-10 1 person 1 h facework 2 m2\n',
    )!;
    expect(two.tasks[0]!.output).toBeUndefined();
  });

  test('takes the estimate for what is not recorded, and says so', () => {
    const result = resultFor('  worked 2026-03-09 2 people 1.6 h\n')!;
    expect(figures(result)['result.materials']).toBe(149);
    const materials = result.parts.find((p) => p.part === 'materials')!;
    expect(materials.actual.note).toContain('as estimated');
    // As reckoned in hours and in money: then it leaves and earns what was reckoned.
    expect(result.leaves.actual.value.toFixed()).toBe(result.leaves.estimated.value.toFixed());
    expect(result.earns!.actual.value.toFixed()).toBe(result.earns!.estimated!.value.toFixed());
  });

  test('is of the job as it was agreed, at the price that was given', () => {
    const option = 'option higher\n  change north height 5 courses\n';
    const text = JOB.replace('record\n', `${option}record\n`);
    const result = resultFor(
      '  accepted 2026-03-05 higher £360.00\n  worked 2026-03-09 2 people 2 h facework 100 bricks\n',
      text,
    )!;
    expect(result.tasks[0]!.amountEstimated!.value.toNumber()).toBe(100);
    // £360 with 20% tax is £300 before it.
    expect(result.net.value.toNumber()).toBe(300);
  });

  test('stands among the figures of the job, each with a working', () => {
    const job = jobOf(`${JOB}  worked 2026-03-09 2 people 1.5 h facework 80 bricks\n`, {
      'firm.perp': FIRM,
    });
    const ids = allFigures(job)
      .map((f) => f.key)
      .filter((key) => key.startsWith('result.'));
    expect(ids).toContain('result.task.facework.output');
    expect(ids).toContain('result.owed');
    const earns = allFigures(job).find((f) => f.key === 'result.earns')!;
    expect(workingOf(earns.term, job.env).parts.length).toBeGreaterThan(0);
  });

  test('does not fall over absurd records', () => {
    for (const line of [
      'worked 2026-03-09 0 people 0 h facework 0 bricks',
      'worked 2026-03-09 2 people ?',
      'spent 2026-03-09 ?',
      'spent 2026-03-09 £99999999999999',
      'worked 2026-03-09 999999 people 99999 h x 99999 bricks',
    ]) {
      const result = resultFor(`  ${line}\n`);
      for (const f of result ? resultFigures(result) : [])
        expect(f.term.value.isFinite()).toBe(true);
    }
  });
});
