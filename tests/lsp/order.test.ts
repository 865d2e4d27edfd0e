/** Messages out of order, and such as say not where they ask (LSP 3.17, "Server lifecycle" and "Base protocol"). */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ErrorCodes } from 'vscode-languageserver-protocol/node';
import { TOTALS } from '../../shared/protocol';
import { near } from './near';
import { EDITOR, Peer } from './peer';

let peer: Peer;
beforeEach(() => {
  peer = new Peer(near());
});
afterEach(() => peer.stop());

const AT = { line: 1, character: 3 };
const JOB = 'perpend 1\nwall north\n  length 3 m\n';
const begin = (capabilities: unknown) =>
  peer.ask('initialize', { processId: null, rootUri: null, capabilities });

async function refusal(method: string, params?: unknown): Promise<number | undefined> {
  const asked =
    params === undefined ? peer.connection.sendRequest(method) : peer.ask(method, params);
  return asked.then(
    () => undefined,
    (error: { code: number }) => error.code,
  );
}

describe('order', () => {
  test('nothing is answered before the start, and a text that came before is not known', async () => {
    const uri = await peer.open('job.perp', JOB);
    const hover = { textDocument: { uri }, position: AT };
    expect(await refusal('textDocument/hover', hover)).toBe(ErrorCodes.ServerNotInitialized);
    expect(await refusal('shutdown')).toBe(ErrorCodes.ServerNotInitialized);
    await peer.start();
    expect(await peer.about('documentSymbol', uri)).toBeNull();
  });

  test('it starts once', async () => {
    await peer.start();
    expect(await refusal('initialize', { capabilities: {} })).toBe(ErrorCodes.InvalidRequest);
  });

  test('between start and “initialized” it answers', async () => {
    await begin({});
    const uri = await peer.open('job.perp', JOB);
    expect(await peer.about('documentSymbol', uri)).toHaveLength(1);
  });

  test('after the end nothing is answered', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    await peer.connection.sendRequest('shutdown');
    const symbols = { textDocument: { uri } };
    expect(await refusal('textDocument/documentSymbol', symbols)).toBe(ErrorCodes.InvalidRequest);
    expect(await refusal('shutdown')).toBe(ErrorCodes.InvalidRequest);
  });
});

describe('questions about nothing', () => {
  test.each([
    ['no file', 'textDocument/hover', { position: AT }],
    ['a file that is null', 'textDocument/foldingRange', { textDocument: null }],
    ['no place', 'textDocument/hover', { textDocument: { uri: 'file:///a.perp' } }],
    [
      'a place without a column',
      'textDocument/definition',
      { textDocument: { uri: 'a' }, position: { line: 1 } },
    ],
    [
      'a place in words',
      'textDocument/completion',
      { textDocument: { uri: 'a' }, position: { line: '1', character: '2' } },
    ],
    ['no places', 'textDocument/selectionRange', { textDocument: { uri: 'a' } }],
    [
      'half a range',
      'textDocument/inlayHint',
      { textDocument: { uri: 'a' }, range: { start: AT } },
    ],
    [
      'one range of two',
      'textDocument/rangesFormatting',
      { textDocument: { uri: 'a' }, ranges: [{ start: AT, end: AT }, null] },
    ],
    ['no new name', 'textDocument/rename', { textDocument: { uri: 'a' }, position: AT }],
    [
      'no context',
      'textDocument/codeAction',
      { textDocument: { uri: 'a' }, range: { start: AT, end: AT } },
    ],
    ['no letters', 'workspace/symbol', {}],
    ['totals of nothing', TOTALS, null],
  ])('%s', async (_, method, params) => {
    await peer.start();
    expect(await refusal(method, params)).toBe(ErrorCodes.InvalidParams);
    expect(peer.heard.filter((each) => each.method === 'window/logMessage')).toEqual([]);
  });

  test('a place before the first, or between two, is taken for the nearest', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    for (const position of [
      { line: -4, character: -1 },
      { line: 0.4, character: 2.7 },
    ])
      expect(await peer.about('hover', uri, { position })).toMatchObject({
        range: { start: { line: 0, character: 0 } },
      });
  });
});

test('a client that says nothing at all of itself is told so', async () => {
  const said = { processId: null, rootUri: null, capabilities: null };
  expect(await refusal('initialize', said)).toBe(ErrorCodes.InvalidParams);
});

describe('changes that are none', () => {
  const symbols = (uri: string) => peer.about<{ name: string }[]>('documentSymbol', uri);
  const change = (uri: string, contentChanges: unknown) =>
    peer.tell('textDocument/didChange', { textDocument: { uri, version: 9 }, contentChanges });

  test.each([
    ['no list', null],
    ['nothing in it', [null]],
    ['no text', [{ range: { start: AT, end: AT } }]],
    ['half a range', [{ range: { start: AT }, text: 'x' }]],
  ])('%s leaves the text as it is', async (_, contentChanges) => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    await change(uri, contentChanges);
    expect((await symbols(uri)).map((s) => s.name)).toEqual(['wall north']);
  });

  test('a range from its end to its beginning is that range', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    const range = { start: { line: 1, character: 10 }, end: { line: 1, character: 5 } };
    await change(uri, [{ range, text: 'south' }]);
    expect((await symbols(uri)).map((s) => s.name)).toEqual(['wall south']);
  });
});

describe('clients that say odd things of themselves', () => {
  test.each([
    ['nothing', {}],
    ['nulls', { textDocument: null, workspace: null, general: null }],
    [
      'resolving of nothing',
      {
        textDocument: {
          codeAction: { dataSupport: true, resolveSupport: {} },
          inlayHint: { resolveSupport: {} },
        },
        workspace: { symbol: { resolveSupport: {} } },
      },
    ],
    ['no encoding that there is', { general: { positionEncodings: ['x', 5] } }],
    ['encodings that are null', { general: { positionEncodings: null } }],
    ['no folds', { textDocument: { foldingRange: { rangeLimit: 0 } } }],
    ['fewer than no folds', { textDocument: { foldingRange: { rangeLimit: -3 } } }],
  ])('%s', async (_, capabilities) => {
    expect(await begin(capabilities)).toMatchObject({
      capabilities: { positionEncoding: 'utf-16' },
    });
    await peer.tell('initialized', {});
    const uri = await peer.open('job.perp', JOB);
    const answers = ['documentSymbol', 'foldingRange', 'codeLens', 'semanticTokens/full'];
    for (const method of answers) expect(await peer.about(method, uri)).not.toBeNull();
    expect((await peer.findings(uri)).length).toBeGreaterThan(0);
  });

  test('the editor’s own start is unharmed', async () => {
    await peer.start({ capabilities: EDITOR });
    expect(await peer.about('documentSymbol', await peer.open('job.perp', JOB))).toHaveLength(1);
  });
});
