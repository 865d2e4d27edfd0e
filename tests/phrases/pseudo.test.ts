import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { SERVER } from '../../.scripts/phrases.mjs';
import { COMMANDS } from '../../server/cli/run';
import { speak } from '../../shared/phrase';
import { inside } from '../cli/inside';
import { lines as lineCases } from '../grammar/faults/lines';
import { meant } from '../grammar/faults/meant';
import { numbers } from '../grammar/faults/numbers';
import { values } from '../grammar/faults/values';
import { faultsOf } from '../grammar/reading';
import { parseMarks } from '../harness/marks';
import { findingsOf, type Said, saidAt, saidOf } from './asked';
import { leftIn } from './left';
import { pseudoOf, veil } from './pseudo';
import { FILES, OWN, veiledJob } from './veiled';

const CASES = [...lineCases, ...values, ...numbers, ...meant];

const seen = new Set<string>();

/** Lines with something left in them, each looked at once: workings say the same again and again. */
function plain(said: readonly Said[]): string[] {
  return said.flatMap(({ where, text }) => {
    const lines = text.replace(/```[\s\S]*?```/g, ' ').split('\n');
    return lines.flatMap((line) => {
      if (seen.has(line)) return [];
      seen.add(line);
      const left = leftIn(line, OWN);
      return left.length ? [`${where}: ${left.join(' ')} | ${line}`] : [];
    });
  });
}

beforeAll(() => speak(pseudoOf(SERVER)));
afterAll(() => speak(undefined));

/** Between them they have walls, piers, openings, copings, repairs, matching, options, a record, and both systems of units. */
const FEW = ['repair/job.perp', 'us-wall/job.perp', 'whole-life/11-paid.perp'];

describe('in a language that nobody speaks nothing is said in English', () => {
  test.each(FEW)('of %s', (name) => {
    expect(plain(saidOf(veiledJob(name), 9))).toEqual([]);
  });

  test.each(['repair/job.perp', 'us-wall/job.perp'])('at the places of %s', (name) => {
    const job = veiledJob(name);
    const lines = job.file.lines.flatMap((text, line) => (line % 2 && text.trim() ? [line] : []));
    expect(plain(lines.flatMap((line) => saidAt(job, line)))).toEqual([]);
  });

  test.each(['us-wall/job.perp', 'stepped-wall/job.perp'])(
    'of what is wrong in %s with a line gone',
    (name) => {
      const lines = FILES[name]!.split('\n');
      const texts = lines.flatMap((_, at) => (at % 3 ? [] : [lines.toSpliced(at, 1).join('\n')]));
      expect(plain(texts.flatMap((text) => findingsOf(veiledJob(name, text))))).toEqual([]);
    },
  );

  test('of what cannot be read', () => {
    const said = CASES.flatMap(({ says, marked }) =>
      faultsOf(veil(parseMarks(marked).text)).flatMap(({ message, ways }) =>
        [message, ...ways.map((way) => way.title)].map((text) => ({ where: says, text })),
      ),
    );
    expect(said.length).toBeGreaterThan(CASES.length);
    expect(plain(said)).toEqual([]);
  });

  test('of any command', () => {
    const names = new Set([
      'help',
      'html',
      'pdf',
      'md',
      'csv',
      'xlsx',
      ...COMMANDS.map(({ name }) => name),
    ]);
    const said = [['--help'], ...COMMANDS.map(({ name }) => [name, '--help'])].map((args) => {
      const text = inside(args).out.replace(/--[a-z]+|\b[A-Z]{2,}\b/g, ' ');
      return {
        where: args.join(' '),
        text: text.replace(/\b[a-z]+\b/g, (w) => (names.has(w) ? ' ' : w)),
      };
    });
    expect(plain(said)).toEqual([]);
  });
});

test('what a way out writes into a text is no phrase', () => {
  for (const name of FEW)
    for (const { ways } of veiledJob(name).findings)
      for (const { edits } of ways) for (const { text } of edits) expect(text).not.toMatch(/[⟦⟧~]/);
});
