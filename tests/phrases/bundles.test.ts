import { parseAst } from 'vite';
import { describe, expect, test } from 'vitest';
import { CLIENT, FOLDER, SERVER, serverPhrases } from '../../.scripts/phrases.mjs';
import { wordsOfLines } from '../../grammar/reference/words';
import { files, read, readJson } from '../tree';
import { literalsOf } from './literals';

type Words = Readonly<Record<string, string>>;

describe('what a translator is given is what the sources say (npm run phrases)', () => {
  test('of the server', async () => {
    expect(readJson(SERVER)).toEqual(await serverPhrases(wordsOfLines()));
  });

  /** Read by ourselves: what makes the file takes seconds to. */
  test('of the extension', () => {
    const sources = files().filter((file) => /^client\/.*\.ts$/.test(file));
    const said = sources.flatMap((file) => literalsOf(parseAst(read(file), { lang: 'ts' }, file)));
    const phrases = said.flatMap(({ text, first }) => (first === 't' ? [text] : []));
    expect([...new Set(phrases)].sort()).toEqual(Object.keys(readJson<Words>(CLIENT)).sort());
  });
});

const MANIFEST = 'package.nls.json';
/** Files of other languages, each with the English one that it is made from. */
const OTHERS = files().flatMap((file) => {
  const found = /^(?:client\/l10n\/(server|bundle\.l10n)|(package\.nls))\.[a-z-]+\.json$/.exec(
    file,
  );
  if (!found || file === CLIENT) return [];
  return [[file, found[2] ? MANIFEST : `${FOLDER}/${found[1]}.json`] as const];
});

const placesIn = (text: string) => [...new Set(text.match(/\{\d+\}|\]\(command:[^)]*\)/g))].sort();

describe.each(OTHERS)('%s', (file, english) => {
  const words = readJson<Words>(file);
  const source = readJson<Words>(english);

  test('holds nothing that nobody says any more', () => {
    expect(Object.keys(words).filter((key) => !Object.hasOwn(source, key))).toEqual([]);
  });

  test('has a place for everything that is put in, and for nothing else', () => {
    const text = (key: string) => (english === MANIFEST ? source[key]! : key);
    const odd = Object.keys(words).filter(
      (key) => String(placesIn(words[key]!)) !== String(placesIn(text(key))),
    );
    expect(odd).toEqual([]);
  });
});

describe('the manifest', () => {
  const manifest = readJson<unknown>('package.json');
  const said = readJson<Words>(MANIFEST);

  /** What an editor shows of a manifest. Models are told in English, and a name is a name. */
  const SHOWN =
    /^(title|shortTitle|description|markdownDescription|displayName|userDescription|label|contents|altText|contextualTitle|\w*deprecationMessage)$/i;
  const LISTS = /^(markdownEnumDescriptions|enumDescriptions|enumItemLabels)$/;

  function* shown(value: unknown, way: readonly string[] = []): Generator<string> {
    const key = way.at(-1) ?? '';
    if (way.includes('inputSchema')) return;
    if (typeof value === 'string') {
      if (SHOWN.test(key) || LISTS.test(way.at(-2) ?? '')) yield value;
    } else if (value && typeof value === 'object')
      for (const [inner, each] of Object.entries(value)) yield* shown(each, [...way, inner]);
  }

  test('says nothing in plain English', () => {
    const texts = [...shown(manifest)];
    expect(texts.length).toBeGreaterThan(50);
    expect(texts.filter((text) => text !== 'Perpend' && !/^%[\w.-]+%$/.test(text))).toEqual([]);
  });

  test('says all that package.nls.json holds, and no more', () => {
    const asked = [...read('package.json').matchAll(/"%([\w.-]+)%"/g)].map((found) => found[1]!);
    expect([...new Set(asked)].sort()).toEqual(Object.keys(said).sort());
  });
});
