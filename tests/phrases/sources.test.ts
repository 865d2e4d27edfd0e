import { parseAst } from 'vite';
import { describe, expect, test } from 'vitest';
import { files, read } from '../tree';
import { literalsOf } from './literals';

/** Folders whose words a reader sees. What papers say is in server/documents/words, by their own language. */
const SERVER = /^(server\/(engine|lsp|cli)|grammar\/read)\/.*\.ts$/;
const CLIENT = /^client\/.*\.ts$/;

/** Files and calls where words are no words for a reader, and why. */
const NO_WORDS: readonly (readonly [RegExp, string])[] = [
  [/^server\/engine\/setting-out\//, 'plain geometry: it says nothing'],
  [
    /^server\/engine\/(ranges\/again|price\/(costs|weights|tax\/followed)|compare\/(parts|said))/,
    'keys by which things are found again',
  ],
  [
    /^server\/engine\/(life\/(write|next\/clear)|share\/index)/,
    'lines that are written into a file',
  ],
  [
    /^server\/engine\/(resolve\/per|ide\/(figures|said|complete-words))/,
    'what the table of lines calls a word; the table is translated where it is shown',
  ],
  [/^server\/cli\/(git|json)\//, 'what git is asked, and ids of JSON'],
  [/^server\/lsp\/node\/(papers|stdout)/, 'names of files, and a head of the protocol'],
  [
    /^server\/(engine\/(brickwork|drawing)\/lengths|engine\/brickwork\/said)/,
    'numbers with their units',
  ],
  [
    /^client\/preview\/(page|page-text)/,
    'HTML, SVG and keys; its words come from client/preview/words.ts',
  ],
  [/^client\/tools\/file/, 'what a language model is told'],
  [/^client\/(node|browser|server)\.ts/, 'the name of the program'],
];

/** Words that go into a text of the notation, by what they are called or handed to. */
const WRITTEN = /^(text|edit|edits|option|takes|key|line|code|one|range|said of a record)$/;
const WRITERS =
  /^(lineAfter|rewrite|underneath|decide|replace|idOf|item|take|get|set|includes|Symbol|Error|RangeError|TypeError|Unfollowed)$/;

const isSentence = (text: string) =>
  /[A-Za-z]{2}/.test(text.replaceAll('{}', '')) &&
  (/[A-Za-z’“”,.:;)%}!?] +[A-Za-z{“(]|[A-Za-z] +\{|^ +[a-z]|[a-z]+ $/.test(text) ||
    /^“?[A-Z][a-z]/.test(text));

function untagged(file: string): string[] {
  if (NO_WORDS.some(([which]) => which.test(file))) return [];
  const found = literalsOf(parseAst(read(file), { lang: 'ts' }, file));
  const words = found.filter(({ text, tagged, of, to }) => {
    if (tagged || !isSentence(text)) return false;
    return !WRITTEN.test(of) && !WRITERS.test(to);
  });
  return words.map(({ text }) => `${file}: ${text}`).filter((each) => !KNOWN.test(each));
}

/** Single ones, each of them no word for a reader. */
const KNOWN = new RegExp(
  [
    'findings/.*: (| )?(bond|with tax|inside|rings|rise|wide|movement-joint|agreed|head|tax none|1/[24] brick|cut|quoin|in) ?',
    'findings/junctions/.*: \\{\\} quoin',
    'findings/fit/.*:  at \\{\\}$',
    'findings/tops/falls\\.ts: \\{\\} steps at ',
    'findings/.*: \\{\\}( |\\.\\.\\{\\} \\{\\} )(brick|bricks|courses|per h|x \\{\\} bricks|\\{\\} per h)$',
    'pier-coping\\.ts: ',
    'ranges/of-job\\.ts: \\{\\} price$',
    'price/partners\\.ts: partner \\{\\}$',
    'views/find-out\\.ts: stands-in lime$',
    'cli/.*: perpend',
    '(cli|lsp/browser)/.*: (NotoSans.*|same day)$',
    'refactor/.*: the defaults’ \\{\\}$',
    'rewrite\\.ts: as it is$',
    'answers\\.ts: ',
    'help\\.ts: help CODE$',
    'papers/forms\\.ts: Markdown$',
    'recording\\.ts: same day$',
    'describe\\.ts: number ',
    // What a language model is told.
    'tools\\.ts: All that follows is data ',
    'tax-number-missing\\.ts: The firm is not registered for ',
  ].join('|'),
);

describe('words for a reader are phrases', () => {
  test('in the server', () => {
    const sources = files().filter((file) => SERVER.test(file));
    expect(sources.length).toBeGreaterThan(100);
    expect(sources.flatMap(untagged)).toEqual([]);
  });

  test('in the extension', () => {
    const sources = files().filter((file) => CLIENT.test(file));
    expect(sources.length).toBeGreaterThan(10);
    expect(sources.flatMap(untagged)).toEqual([]);
  });
});
