/** Whatever is typed, the server’s text is the client’s: a CR that meets an LF, a mark at the beginning, letters of two units. */
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Position } from 'vscode-languageserver-protocol/node';
import '../harness/seed';
import { near } from './near';
import { EDITOR, Peer } from './peer';

let peer: Peer;
beforeAll(async () => {
  peer = new Peer(near());
  await peer.start({ capabilities: EDITOR });
});
afterAll(() => peer.stop());

const NOTES = Array.from({ length: 6 }, (_, i) => `wall w${i} "Wall 🧱 ${i}"`);

/** As the protocol counts lines. */
const END = /\r\n|\n|\r/;

/** The whole text, by the whole text: slow and plain. */
function written(text: string, start: Position, end: Position, put: string): string {
  const offset = ({ line, character }: Position) => {
    let from = 0;
    for (const eol of [...text.matchAll(new RegExp(END, 'g'))].slice(0, line))
      from = eol.index + eol[0].length;
    return from + character;
  };
  return text.slice(0, offset(start)) + put + text.slice(offset(end));
}

/** All that tells of lines and columns. */
async function shape(uri: string): Promise<unknown[]> {
  const { data } = await peer.about<{ data: number[] }>('semanticTokens/full', uri);
  return [data, await peer.about('documentSymbol', uri), await peer.about('foldingRange', uri)];
}

/** Opens a text, edits it, and asks whether what it is then is what it would be if it were opened anew. */
async function expectAlike(text: string, edits: readonly [Position, Position, string][]) {
  const uri = await peer.open('typed.perp', text);
  let own = text;
  for (const [start, end, put] of edits) {
    await peer.edit(uri, put, start, end);
    own = written(own, start, end, put);
  }
  const fresh = await peer.open('fresh.perp', own);
  expect(await shape(uri)).toEqual(await shape(fresh));
}

const at = (line: number, character: number): Position => ({ line, character });

test.each<[what: string, text: string, edits: [Position, Position, string][]]>([
  [
    'a CR before an LF',
    'wall a\nwall b\n',
    [
      [at(0, 6), at(0, 6), '\r'],
      [at(1, 5), at(1, 6), 'c'],
    ],
  ],
  [
    'an LF behind a CR',
    'wall a\rwall b\n',
    [
      [at(1, 0), at(1, 0), '\n'],
      [at(1, 5), at(1, 6), 'c'],
    ],
  ],
  [
    'what stood between goes',
    'wall a\r# \nwall b\n',
    [
      [at(1, 0), at(1, 2), ''],
      [at(1, 5), at(1, 6), 'c'],
    ],
  ],
  [
    'a CR before a CRLF',
    'wall a\r\nwall b\r\n',
    [
      [at(0, 6), at(0, 6), '\r'],
      [at(2, 5), at(2, 6), 'c'],
    ],
  ],
  [
    'CRs alone',
    'wall a\rwall b\r',
    [
      [at(1, 0), at(1, 0), 'wall c\r'],
      [at(2, 5), at(2, 6), 'd'],
    ],
  ],
  [
    'behind a mark at the beginning',
    '\ufeffwall a\nwall b\n',
    [
      [at(0, 7), at(0, 7), 'b'],
      [at(1, 5), at(1, 6), 'c'],
    ],
  ],
  [
    'the mark goes',
    '\ufeffwall a\nwall b\n',
    [
      [at(0, 0), at(0, 1), ''],
      [at(0, 5), at(0, 6), 'c'],
    ],
  ],
  [
    'no end of the last line',
    'wall a',
    [
      [at(0, 6), at(0, 6), '\nwall b'],
      [at(1, 6), at(1, 6), '\r\n'],
    ],
  ],
])('%s', async (_, text, edits) => {
  await expectAlike(text, edits);
});

test('columns count a mark at the beginning where the client sends one', async () => {
  const uri = await peer.open('mark.perp', '\ufeffwall a\n');
  const [symbol] = await peer.about<{ name: string; selectionRange: unknown }[]>(
    'documentSymbol',
    uri,
  );
  expect(symbol).toMatchObject({ name: 'wall a', selectionRange: { start: { character: 1 } } });
});

test('in any order', async () => {
  const put = fc.constantFrom(
    '\r',
    '\n',
    '\r\n',
    '',
    'x',
    '🧱',
    '"',
    '#',
    '\nwall z\n',
    '\u0301',
    '\t',
  );
  const edit = fc.tuple(fc.nat(9), fc.nat(20), fc.nat(3), put);
  const end = fc.constantFrom('\n', '\r\n', '\r');
  await fc.assert(
    fc.asyncProperty(end, fc.array(edit, { minLength: 4, maxLength: 12 }), async (eol, list) => {
      const text = NOTES.join(eol);
      let own = text;
      const edits = list.map(([line, character, more, put]): [Position, Position, string] => {
        const [start, stop] = [whole(own, line, character), whole(own, line, character + more)];
        own = written(own, start, stop, put);
        return [start, stop, put];
      });
      await expectAlike(text, edits);
    }),
    { numRuns: 25 },
  );
});

/** The nearest place before it that is not within a letter. */
function whole(text: string, line: number, character: number): Position {
  const lines = text.split(END);
  const nearest = Math.min(line, lines.length - 1);
  const column = Math.min(character, lines[nearest]!.length);
  const half = /[\udc00-\udfff]/.test(lines[nearest]![column] ?? '');
  return at(nearest, column - (half ? 1 : 0));
}

test('a sign of two units is one to a selection and to a finding', async () => {
  const uri = await peer.open('sign.perp', 'perpend 1\nwall a\n  length 🧱\n');
  const [selection] = await peer.about<{ range: unknown; parent: { range: unknown } }[]>(
    'selectionRange',
    uri,
    { positions: [at(2, 9)] },
  );
  expect(selection!.parent.range).toEqual({ start: at(2, 9), end: at(2, 11) });
  const ranges = (await peer.findings(uri)).map((found) => found.range);
  expect(ranges).toContainEqual({ start: at(2, 9), end: at(2, 11) });
});
