/** Whatever numbers stand in a mix, its packs and measures: nothing breaks, nothing is endless, and nothing takes long. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leftOver, mixing } from '../../../server/cli/show/mortar';
import { allFigures } from '../../../server/engine/views/job-view';
import { workingOf } from '../../../server/engine/views/working';
import '../../harness/seed';
import { jobOf } from '../world';

const number = fc.constantFrom('0', '1', '7', '0.0000001', '999999999', '3 1/2', '?', '0.125');
const line = (of: (n: string, m: string) => string) =>
  fc.tuple(number, number).map(([n, m]) => of(n, m));

const inMix = fc.oneof(
  line((n, m) => `  parts cement ${n}, sand ${m}`),
  line((n, m) => `  batch ${n} bag sand, ${m} trowels cement`),
  line((n, m) => `  batch ${n} kg sand, ${m} l cement`),
  line((n, m) => `  ready ${n} kg bag makes ${m} l at £6`),
  line((n, m) => `  dose plasticiser ${n} ml per ${m} kg cement`),
  line((n) => `  life ${n} h`),
  line((n) => `  dry-volume ${n}`),
  line(() => '  yield cpwd'),
);
const inSand = fc.oneof(
  line((n, m) => `  pack ${n} kg bag at £${m === '?' ? '3' : m}`),
  line((n, m) => `  pack ${n} l tub at £${m === '?' ? '3' : m}`),
  line((n) => `  loose ${n} kg/m3`),
  line((n) => `  bulking ${n}%`),
  line((n) => `  price £${n === '?' ? '3' : n} per t`),
);
const block = (head: string, lines: fc.Arbitrary<string>) =>
  fc.array(lines, { maxLength: 5 }).map((all) => [head, ...all].join('\n'));

const job = fc
  .tuple(block('mix own', inMix), block('material sand', inSand), number)
  .map(
    ([mix, sand, mixer]) =>
      `perpend 1\nuse uk\n${mix}\n${sand}\nlabour\n  bricklayer £20 per h\n  gang 1 bricklayer\n  mixer ${mixer} l\nwall w\n  mix own\n  length 2240 mm\n  height 4 courses\n`,
  );

test('absurd mixes', () => {
  fc.assert(
    fc.property(job, (text) => {
      const of = jobOf(text);
      for (const { key, term } of allFigures(of)) {
        expect(term.value.isFinite(), `${key}\n${text}`).toBe(true);
        expect(workingOf(term, of.env).result).not.toMatch(/NaN|Infinity|undefined/);
      }
      expect([...mixing(of), ...leftOver(of)].join('\n')).not.toMatch(/NaN|Infinity|undefined/);
      expect(of.findings.length).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 40 },
  );
});
