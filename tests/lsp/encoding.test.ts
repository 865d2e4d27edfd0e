/** Columns as the client counts them: in bytes of UTF-8 or in UTF-16 units. */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chosen, columnIn, columnOut, type Encoding } from '../../server/lsp/encoding';
import '../harness/seed';
import { read } from '../tree';
import { near } from './near';
import { EDITOR, Peer } from './peer';

describe('what is chosen', () => {
  test.each<[offered: string[] | undefined, wanted: Encoding]>([
    [undefined, 'utf-16'],
    [[], 'utf-16'],
    [['utf-16'], 'utf-16'],
    [['utf-8'], 'utf-8'],
    [['utf-8', 'utf-16'], 'utf-8'],
    [['utf-16', 'utf-8'], 'utf-16'],
    [['utf-32'], 'utf-32'],
    [['utf-7', 'utf-8'], 'utf-8'],
    [['utf-7'], 'utf-16'],
  ])('of %j it is %s', (offered, wanted) => {
    expect(chosen(offered)).toBe(wanted);
  });
});

/** Letters of one to four bytes. */
const LETTER = fc.constantFrom('a', ' ', '"', 'é', 'ß', '½', '€', '“', '漢', '𝔸', '🧱', '\u0301');
const TEXT = fc.array(LETTER, { maxLength: 20 }).map((letters) => letters.join(''));

/** As Node counts, not as we do. */
const MEASURE: Readonly<Record<Encoding, (text: string) => number>> = {
  'utf-8': (text) => Buffer.byteLength(text, 'utf8'),
  'utf-16': (text) => text.length,
  'utf-32': (text) => Buffer.from(text, 'utf16le').length && [...text].length,
};

describe.each<Encoding>(['utf-8', 'utf-16', 'utf-32'])('a column in %s', (encoding) => {
  test('is what stands before it', () => {
    fc.assert(
      fc.property(TEXT, TEXT, (before, after) => {
        const length = MEASURE[encoding](before);
        expect(columnOut(before + after, before.length, encoding)).toBe(length);
        expect(columnIn(before + after, length, encoding)).toBe(before.length);
      }),
    );
  });

  test('beyond the line is its end, within a character its beginning', () => {
    expect(columnIn('aé🧱', 99, encoding)).toBe(4);
    expect(columnIn('🧱', encoding === 'utf-32' ? 0 : 1, encoding)).toBe(0);
  });
});

interface Position {
  line: number;
  character: number;
}

/** Every position of an answer in UTF-16 units, by Node’s own count of bytes. */
function in16(answer: unknown, lines: readonly string[]): unknown {
  if (typeof answer !== 'object' || answer === null) return answer;
  if (Array.isArray(answer)) return answer.map((each) => in16(each, lines));
  const { line, character } = answer as Position;
  if (typeof line === 'number' && typeof character === 'number')
    return position16(answer as Position, lines);
  const { uri, targetUri } = answer as { uri?: string; targetUri?: string };
  const other = library(uri ?? targetUri ?? '');
  return Object.fromEntries(
    Object.entries(answer).map(([key, each]) => [
      key,
      in16(each, key === 'originSelectionRange' ? lines : (other ?? lines)),
    ]),
  );
}

/** The lines of a library that ships. */
function library(uri: string): string[] | undefined {
  const name = /\/library\/(\w+\.perp)$/.exec(uri)?.[1];
  return name === undefined ? undefined : read(`server/library/${name}`).split('\n');
}

function position16({ line, character }: Position, lines: readonly string[]): Position {
  const bytes = Buffer.from(lines[line] ?? '', 'utf8');
  return { line, character: bytes.toString('utf8', 0, character).length };
}

function position8({ line, character }: Position, lines: readonly string[]): Position {
  return { line, character: Buffer.byteLength(lines[line]!.slice(0, character), 'utf8') };
}

/** Words with the places they stand at: `line:start-end`. */
function words(data: readonly number[], lines: readonly string[], bytes: boolean): string[] {
  const found: string[] = [];
  let [line, start] = [0, 0];
  for (let i = 0; i < data.length; i += 5) {
    const [down = 0, over = 0, length = 0] = data.slice(i, i + 3);
    start = down ? over : start + over;
    line += down;
    const ends = [start, start + length].map((character) =>
      bytes ? position16({ line, character }, lines).character : character,
    );
    found.push(`${line}:${ends.join('-')}`);
  }
  return found;
}

const NAME = fc.constantFrom('rød', 'mauer-ß', 'wall', 'größe', 'κήπος');
const TITLE = fc.constantFrom('"🧱 Ziegel"', '"漢字 é"', '"plain"', '“𝔸”');
const LINE = fc.oneof(
  NAME.map((name) => `wall ${name}`),
  fc.tuple(NAME, TITLE).map(([name, title]) => `brick ${name} ${title} # 🧱 note`),
  NAME.map((name) => `  brick ${name} # é`),
  fc.tuple(NAME, TITLE).map(([name, title]) => `  opening ${name} ${title}`),
  fc.constantFrom(
    '  lenght 3 m # 漢',
    '  length  3,5 m',
    'use “firm.perp” # 🧱',
    '# 🧱🧱',
    '  says "🧱 https://é.example/🧱 x"',
    '',
  ),
);

describe('the same questions', () => {
  let peer8: Peer;
  let peer16: Peer;

  beforeAll(async () => {
    [peer8, peer16] = [new Peer(near()), new Peer(near())];
    const offering = (positionEncodings: string[]) => ({
      ...EDITOR,
      general: { positionEncodings },
    });
    const first = await peer8.start({
      folders: [peer8.folder],
      capabilities: offering(['utf-8', 'utf-16']),
    });
    const second = await peer16.start({
      folders: [peer16.folder],
      capabilities: offering(['utf-16']),
    });
    expect(first.capabilities.positionEncoding).toBe('utf-8');
    expect(second.capabilities.positionEncoding).toBe('utf-16');
  });
  afterAll(() => {
    peer8.stop();
    peer16.stop();
  });

  const POINT = [
    'hover',
    'definition',
    'documentHighlight',
    'linkedEditingRange',
    'completion',
    'prepareRename',
  ] as const;
  const WHOLE = [
    'documentSymbol',
    'foldingRange',
    'formatting',
    'documentLink',
    'diagnostic',
  ] as const;

  async function all(
    peer: Peer,
    uri: string,
    lines: readonly string[],
    at: Position,
    bytes: boolean,
  ) {
    const position = bytes ? position8(at, lines) : at;
    const back = (answer: unknown) => (bytes ? in16(answer, lines) : answer);
    const ask = async (method: string, more: object) =>
      back(await peer.about(method, uri, more).catch((error: Error) => error.message));
    const answers: Record<string, unknown> = {};
    for (const method of POINT) answers[method] = await ask(method, { position });
    for (const method of WHOLE)
      answers[method] = await ask(method, { options: { tabSize: 2, insertSpaces: true } });
    answers.references = await ask('references', {
      position,
      context: { includeDeclaration: true },
    });
    answers.rename = await ask('rename', { position, newName: 'nový' });
    answers.selectionRange = await ask('selectionRange', { positions: [position] });
    const range = { start: { line: 0, character: 0 }, end: { line: lines.length, character: 0 } };
    answers.inlayHint = await ask('inlayHint', { range });
    answers.codeLens = await ask('codeLens', {});
    answers.signatureHelp = await ask('signatureHelp', { position });
    answers.codeAction = await ask('codeAction', { range, context: { diagnostics: [] } });
    const tokens = await peer.about<{ data: number[] }>('semanticTokens/full', uri);
    answers.tokens = words(tokens.data, lines, bytes);
    return JSON.parse(
      JSON.stringify(answers)
        .replaceAll(peer.folder, '')
        .replace(/"resultId":"\d+"/g, ''),
    );
  }

  test('over any text have the same answers, after edits too', async () => {
    let number = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(LINE, { minLength: 1, maxLength: 8 }),
        fc.nat(),
        fc.nat(),
        LETTER,
        async (lines, row, column, put) => {
          const name = `t${number++}.perp`;
          const text = lines.join('\n');
          const at = placeIn(lines, row, column);
          const [uri8, uri16] = [await peer8.open(name, text), await peer16.open(name, text)];
          expect(await all(peer8, uri8, lines, at, true)).toEqual(
            await all(peer16, uri16, lines, at, false),
          );
          await peer8.edit(uri8, put, position8(at, lines));
          await peer16.edit(uri16, put, at);
          const line = lines[at.line]!;
          const after = [...lines];
          after[at.line] = line.slice(0, at.character) + put + line.slice(at.character);
          expect(await all(peer8, uri8, after, at, true)).toEqual(
            await all(peer16, uri16, after, at, false),
          );
          for (const [peer, uri] of [
            [peer8, uri8],
            [peer16, uri16],
          ] as const)
            await peer.tell('textDocument/didClose', { textDocument: { uri } });
        },
      ),
      { numRuns: 6 },
    );
  });

  /** Between two characters of a line. */
  function placeIn(lines: readonly string[], row: number, column: number): Position {
    const line = row % lines.length;
    const letters = [...lines[line]!];
    return { line, character: letters.slice(0, column % (letters.length + 1)).join('').length };
  }
});

test.each(['utf-8', 'utf-16', 'utf-32'])(
  'a column beyond its line is the end of it, in %s',
  async (encoding) => {
    const peer = new Peer(near());
    await peer.start({ capabilities: { general: { positionEncodings: [encoding] } } as never });
    const uri = await peer.open('a.perp', 'wall a "🧱"\n  length 3 m\n');
    const position = { line: 1, character: 9999 };
    const end = { line: 1, character: 12 };
    const [grown] = await peer.about<{ range: object }[]>('selectionRange', uri, {
      positions: [position],
    });
    expect(grown!.range).toEqual({ start: end, end });
    const { items } = await peer.about<{ items: { textEdit: { range: { end: object } } }[] }>(
      'completion',
      uri,
      { position },
    );
    expect(new Set(items.map((each) => JSON.stringify(each.textEdit.range.end)))).toEqual(
      new Set([JSON.stringify(end)]),
    );
    peer.stop();
  },
);
