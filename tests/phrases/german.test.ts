/** What the server says in German: all of it, the same as on papers, and nothing of it in English. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { SERVER } from '../../.scripts/phrases.mjs';
import { PHRASES_DE } from '../../server/documents/words/de/phrases';
import { speak } from '../../shared/phrase';
import { lines as lineCases } from '../grammar/faults/lines';
import { meant } from '../grammar/faults/meant';
import { numbers } from '../grammar/faults/numbers';
import { values } from '../grammar/faults/values';
import { faultsOf } from '../grammar/reading';
import { parseMarks } from '../harness/marks';
import { readJson } from '../tree';
import { type Said, saidAt, saidOf } from './asked';
import { isNotation, unquoted, withoutExamples } from './left';
import { veil } from './pseudo';
import { OWN, veiledJob } from './veiled';

type Words = Readonly<Record<string, string>>;

const GERMAN = readJson<Words>(SERVER.replace('.json', '.de.json'));
const ENGLISH = Object.keys(readJson<Words>(SERVER));

test('at least 98 of 100 phrases are German', () => {
  const said = ENGLISH.filter((phrase) => Object.hasOwn(GERMAN, phrase));
  expect(said.length / ENGLISH.length).toBeGreaterThanOrEqual(0.98);
});

test('an editor says the same as a paper', () => {
  const odd = Object.keys(PHRASES_DE).filter((phrase) => PHRASES_DE[phrase] !== GERMAN[phrase]);
  expect(odd).toEqual([]);
});

/** A sentence of several words that is the same in both languages was forgotten. */
test('no sentence is English still', () => {
  const same = ENGLISH.filter(
    (phrase) => GERMAN[phrase] === phrase && /[a-z]+ [a-z]+ [a-z]+/.test(phrase),
  );
  expect(same).toEqual([]);
});

/** What stands before and after is glued to something else. */
test('a piece keeps the spaces and the quotation marks that it has', () => {
  const ends = (text: string) => [/^\s*/.exec(text)![0], /\s*$/.exec(text)![0]].join('|');
  const odd = Object.keys(GERMAN).filter((key) => ends(key) !== ends(GERMAN[key]!));
  expect(odd).toEqual([]);
  expect(
    Object.keys(GERMAN).filter((key) => /[“”]/.test(GERMAN[key]!) && !/„/.test(GERMAN[key]!)),
  ).toEqual([]);
});

const wordsIn = (text: string) => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];

/** Words of English phrases that no German one holds, and the notation neither. */
const only = new Set(ENGLISH.flatMap((phrase) => wordsIn(unquoted(phrase))));
for (const text of Object.values(GERMAN)) for (const word of wordsIn(text)) only.delete(word);

function english(said: readonly Said[]): string[] {
  return said.flatMap(({ where, text }) => {
    const left = wordsIn(unquoted(withoutExamples(text).replace(/„[^“]*“/g, ' '))).filter(
      (word) => only.has(word) && !OWN.has(word) && !isNotation(word),
    );
    return left.length ? [`${where}: ${left.join(' ')} | ${text.slice(0, 300)}`] : [];
  });
}

describe('of a German reader nothing is told in English', () => {
  beforeAll(() => speak(GERMAN));
  afterAll(() => speak(undefined));

  test.each(['de-mauer/job.perp', 'repair/job.perp', 'us-wall/job.perp'])('of %s', (name) => {
    expect(english(saidOf(veiledJob(name), 25))).toEqual([]);
  });

  test('at the places of de-mauer/job.perp', () => {
    const job = veiledJob('de-mauer/job.perp');
    const lines = job.file.lines.flatMap((text, line) =>
      line % 5 === 2 && text.trim() ? [line] : [],
    );
    expect(english(lines.flatMap((line) => saidAt(job, line)))).toEqual([]);
  });

  test('of what cannot be read', () => {
    const said = [...lineCases, ...values, ...numbers, ...meant].flatMap(({ says, marked }) =>
      faultsOf(veil(parseMarks(marked).text)).flatMap(({ message, ways }) =>
        [message, ...ways.map((way) => way.title)].map((text) => ({ where: says, text })),
      ),
    );
    expect(english(said)).toEqual([]);
  });
});

test('the words that are looked for are those of English', () => {
  for (const word of ['the', 'with', 'courses', 'bricks', 'line', 'which'])
    expect({ word, only: only.has(word) || isNotation(word) }).toEqual({ word, only: true });
});
