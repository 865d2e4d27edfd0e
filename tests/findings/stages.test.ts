import { describe, expect, test } from 'vitest';
import { oneCost, pricedAs } from '../harness/priced';
import { afterWay, FIRM, findingsOf, silent, tells } from './tells';

/** By hand: one cost of £200, with 20% of VAT as the library has it (GOV.UK, VAT Notice 708) a price of £240. */
describe('stages-off', () => {
  test('is told of stages that come to less than the price, at the last of them, and adds the rest', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        cost skip "Skip hire" 1 at £200
        price
          stage "Deposit" 25%
          stage "Half way" £100
          ^^^^^^^^^^^^^^^^^^^^^ stages-off: The stages come to £160.00, and the price is £240.00
      `,
      { ways: ['Add a stage for the rest'] },
    );
    expect(0.25 * 240 + 100).toBe(160);
    expect(found!.severity).toBe('error');
    expect(found!.ways[0]!.preferred).toBe(true);
  });

  test('the stage it adds stands below the others and takes what they leave', () => {
    const text = pricedAs('  stage "Deposit" 25%\n  stage "Half way" £100\n');
    const [found] = findingsOf('stages-off', text);
    expect(afterWay(text, found!.ways[0]!.edits)).toBe(
      pricedAs('  stage "Deposit" 25%\n  stage "Half way" £100\n  stage "On completion" rest\n'),
    );
  });

  test('is told of stages that come to more, with or without a rest that is then less than nothing', () => {
    tells(`
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        stage "Deposit" 25%
        stage "Half way" £200
        ^^^^^^^^^^^^^^^^^^^^^ stages-off: The stages come to £260.00, and the price is £240.00
    `);
    tells(`
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        stage "Deposit" 25%
        stage "On completion" rest
        ^^^^^^^^^^^^^^^^^^^^^^^^^^ stages-off: more than the price of £240.00, so that nothing is left for “On completion”
        stage "Half way" £200
    `);
    expect(0.25 * 240 + 200).toBe(260);
  });

  test('is told of a second stage that takes the rest', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      job "A"
      cost skip "Skip hire" 1 at £200
      price
        stage "Deposit" 25%
        stage "Half way" rest
        stage "On completion" rest
                              ^^^^ stages-off: Two stages take the rest. Say how much “On completion” is
    `);
    expect(found!.severity).toBe('error');
  });

  test('where they stand in another file it is told at the job’s heading, and leads and writes there', () => {
    const firm = `${FIRM}price\n  stage "Deposit" 25%\n`;
    const text = oneCost();
    const files = { 'firm.perp': firm };
    const [found] = findingsOf('stages-off', text, files);
    expect(found!.place).toMatchObject({ line: 2, start: 0, end: 'job "A"'.length });
    const line = firm.split('\n').indexOf('  stage "Deposit" 25%');
    expect(found!.related.map((r) => [r.place.file, r.place.line])).toEqual([
      ['/jobs/firm.perp', line],
    ]);
    const { edits } = found!.ways[0]!;
    expect(edits.map((e) => e.place.file)).toEqual(['/jobs/firm.perp']);
    silent(text, 'stages-off', { 'firm.perp': afterWay(firm, edits) });
  });

  test('is not told of stages that make up the price, nor where there are none, nor of a price with gaps', () => {
    silent(pricedAs('  stage "Deposit" 25%\n  stage "On completion" rest\n'), 'stages-off');
    silent(pricedAs('  stage "Deposit" 25%\n  stage "On completion" 75%\n'), 'stages-off');
    silent(pricedAs('  stage "Deposit" £60\n  stage "On completion" £180\n'), 'stages-off');
    silent(pricedAs('  stage "All of it" £240\n  stage "On completion" rest\n'), 'stages-off');
    silent(pricedAs('  profit 0%\n'), 'stages-off');
    const open = 'wall north\n  brick red\n  stands held\n  length ?\n  height 4 courses\n';
    silent(`${pricedAs('  stage "Deposit" £10\n')}${open}`, 'stages-off');
  });
});
