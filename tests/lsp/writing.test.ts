/** What helps while one writes, over the protocol: words, signatures, hints, lines over headings, order, hovers. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  type ClientCapabilities,
  type CodeLens,
  type CompletionItem,
  type CompletionList,
  type Hover,
  type InlayHint,
  type InlayHintLabelPart,
  LSPErrorCodes,
  type MarkupContent,
  type SignatureHelp,
  type TextEdit,
} from 'vscode-languageserver-protocol/node';
import { withEdits } from '../harness/edits';
import { FIRM, spaced } from '../ide/ask';
import { near } from './near';
import { EDITOR, Peer } from './peer';

/** As VS Code says of itself, as far as it matters here. */
const ABLE: ClientCapabilities = {
  ...EDITOR,
  textDocument: {
    ...EDITOR.textDocument,
    inlayHint: { resolveSupport: { properties: ['tooltip', 'label.location'] } },
    completion: {
      completionItem: {
        snippetSupport: true,
        insertReplaceSupport: true,
        labelDetailsSupport: true,
        commitCharactersSupport: true,
      },
      completionList: { itemDefaults: ['commitCharacters', 'editRange', 'data'] },
    },
    signatureHelp: {
      signatureInformation: {
        parameterInformation: { labelOffsetSupport: true },
        activeParameterSupport: true,
        noActiveParameterSupport: true,
      },
    },
  },
  workspace: { ...EDITOR.workspace, configuration: true, codeLens: { refreshSupport: true } },
};
const COMMANDS = ['perpend.working', 'perpend.preview', 'editor.action.triggerSuggest'];

const JOB = `perpend 1
job "Orchard"
use "firm.perp"
wall north
  brick   red
  length  1790 mm
  height  6 courses
  stands  held
`;

let peer: Peer;
/** Settings as the reader has them, by file name at the end of the address. */
let settings: Record<string, Record<string, boolean>>;

beforeEach(() => {
  settings = {};
  peer = new Peer(near());
  peer.connection.onRequest(
    'workspace/configuration',
    ({ items }: { items: { scopeUri: string; section: string }[] }) =>
      items.map(({ scopeUri, section }) => {
        const own = settings[scopeUri.split('/').at(-1)!];
        return own?.[section.replace('perpend.', '')] ?? null;
      }),
  );
});
afterEach(() => peer.stop());

async function started(text = JOB, capabilities = ABLE, options: object = { commands: COMMANDS }) {
  writeFileSync(path.join(peer.folder, 'firm.perp'), FIRM);
  await peer.start({ capabilities, options });
  return peer.open('job.perp', text);
}

const at = (line: number, character: number) => ({ position: { line, character } });

describe('words', () => {
  const words = (uri: string, line: number, character: number, more: object = {}) =>
    peer.about<CompletionList>('completion', uri, { ...at(line, character), ...more });

  test('say once for all of them what is replaced, and explain nothing', async () => {
    const uri = await started(`${JOB}  bond fl\n`);
    const { itemDefaults, items } = await words(uri, 8, 9);
    const range = { start: { line: 8, character: 7 }, end: { line: 8, character: 9 } };
    expect(itemDefaults).toMatchObject({ editRange: { insert: range, replace: range } });
    const flemish = items.find((i) => i.label === 'flemish')!;
    expect(flemish).toMatchObject({ textEditText: 'flemish', filterText: 'flemish' });
    expect(flemish.documentation).toBeUndefined();
    expect(flemish.labelDetails).toMatchObject({ detail: ' Flemish bond', description: 'uk.perp' });
  });

  test('a block that is put in says that its lines stand as deep as its place', async () => {
    const uri = await started(`${JOB}  op\n`);
    const opening = (items: readonly CompletionItem[]) =>
      items.find((i) => i.label === 'opening …');
    expect(opening((await words(uri, 8, 4)).items)).not.toHaveProperty('insertTextMode');
    const able = structuredClone(ABLE);
    able.textDocument!.completion!.completionItem!.insertTextModeSupport = { valueSet: [1, 2] };
    peer.stop();
    peer = new Peer(near());
    const again = await started(`${JOB}  op\n`, able);
    expect(opening((await words(again, 8, 4)).items)).toMatchObject({ insertTextMode: 2 });
  });

  test('one is explained when it is looked at, by what the list says of all', async () => {
    const uri = await started(`${JOB}  bond fl\n`);
    const { itemDefaults, items } = await words(uri, 8, 9);
    const flemish = items.find((i) => i.label === 'flemish')!;
    const asked = { ...flemish, data: itemDefaults!.data };
    const told = await peer.ask<CompletionItem>('completionItem/resolve', asked);
    expect((told.documentation as MarkupContent).value).toContain('bond flemish');
    expect(told).toMatchObject({ label: 'flemish', textEditText: 'flemish' });
  });

  test('also after more of it has been typed', async () => {
    const uri = await started(`${JOB}  bond fl\n`);
    const { itemDefaults, items } = await words(uri, 8, 9);
    await peer.edit(uri, 'em', { line: 8, character: 9 });
    const asked = { ...items.find((i) => i.label === 'flemish')!, data: itemDefaults!.data };
    const told = await peer.ask<CompletionItem>('completionItem/resolve', asked);
    expect(told.documentation).toBeDefined();
  });

  test('a client that takes none of that gets each edit whole, and can ask all the same', async () => {
    const uri = await started(`${JOB}  bond fl\n`, {}, {});
    const { itemDefaults, items } = await words(uri, 8, 9);
    expect(itemDefaults).toBeUndefined();
    const flemish = items.find((i) => i.label === 'flemish')!;
    expect(flemish).toMatchObject({ detail: 'Flemish bond' });
    expect(flemish.textEdit).toEqual({
      range: { start: { line: 8, character: 7 }, end: { line: 8, character: 9 } },
      newText: 'flemish',
    });
    expect(flemish.labelDetails).toBeUndefined();
    expect(flemish.command).toBeUndefined();
    const told = await peer.ask<CompletionItem>('completionItem/resolve', flemish);
    expect(told.documentation).toBeDefined();
  });

  test('a word that is not ours is given back as it came', async () => {
    await started();
    const other = { label: 'x', data: { a: 1 } };
    expect(await peer.ask('completionItem/resolve', other)).toEqual(other);
    expect(await peer.ask('completionItem/resolve', { label: 'x' })).toEqual({ label: 'x' });
  });

  test('after a word that wants more the next can be offered at once', async () => {
    const uri = await started(`${JOB}  \n`);
    const { items } = await words(uri, 8, 2);
    expect(items.find((i) => i.label === 'bond')!.command).toMatchObject({ command: COMMANDS[2] });
  });

  test('a space where the line could end offers nothing, so that Enter ends it; a letter does', async () => {
    const uri = await started(`${JOB}  footing 450 x 225 mm \n`);
    const space = { context: { triggerKind: 2, triggerCharacter: ' ' } };
    expect(await words(uri, 8, 23, space)).toBeNull();
    expect((await words(uri, 8, 23)).items.map((i) => i.label)).toContain('general');
    await peer.edit(uri, '  left ', { line: 8, character: 0 }, { line: 8, character: 23 });
    expect((await words(uri, 8, 7, space)).items.map((i) => i.label)).toContain('stopped');
  });

  test('files beside are offered by a quotation mark, and nowhere else', async () => {
    const uri = await started(`${JOB}use "\n  note "\n`);
    mkdirSync(path.join(peer.folder, 'other'));
    writeFileSync(path.join(peer.folder, 'other/firm.perp'), FIRM);
    const quote = { context: { triggerKind: 2, triggerCharacter: '"' } };
    const { items } = await words(uri, 8, 5, quote);
    expect(items.map((i) => i.label)).toEqual(['firm.perp', 'other/firm.perp']);
    expect(items[0]).toMatchObject({ kind: 17 });
    expect((await words(uri, 9, 8, quote))?.items ?? []).toEqual([]);
  });
});

describe('signatures', () => {
  const help = (uri: string, line: number, character: number, context?: object) =>
    peer.about<SignatureHelp | null>('signatureHelp', uri, { ...at(line, character), context });

  test('tell the ways of a line and where the cursor is in them', async () => {
    const uri = await started(`${JOB}  footing 450 x 225 mm \n`);
    const found = (await help(uri, 8, 23))!;
    const [first] = found.signatures;
    expect(first!.label).toBe('footing length x length [mix]');
    expect(first!.activeParameter).toBe(1);
    expect(first!.parameters![1]!.label).toEqual([25, 28]);
    expect(found.activeParameter).toBe(1);
  });

  test('a way that cannot go on has no active part', async () => {
    const uri = await started(`${JOB}brick b\n  price £1 per \n`);
    const found = (await help(uri, 9, 15))!;
    expect(found.activeSignature).toBe(1);
    expect(found.signatures.map((s) => s.activeParameter)).toEqual([null, 2, 2]);
  });

  test('parts are told as text to a client that knows no places', async () => {
    const uri = await started(`${JOB}  footing \n`, {}, {});
    const found = (await help(uri, 8, 10))!;
    expect(found.signatures[0]!.parameters![0]!.label).toBe('length x length');
  });

  test('a space in a text opens none, but keeps one that is open', async () => {
    const uri = await started(`${JOB}  note "one \n`);
    const space = { triggerKind: 2, triggerCharacter: ' ' };
    expect(await help(uri, 8, 12, { ...space, isRetrigger: false })).toBeNull();
    expect(await help(uri, 8, 12, { ...space, isRetrigger: true })).not.toBeNull();
  });
});

describe('hints', () => {
  const parts = (hint: InlayHint) => hint.label as InlayHintLabelPart[];
  const text = (hint: InlayHint) =>
    spaced(
      parts(hint)
        .map((p) => p.value)
        .join(''),
    );
  const resolve = (hint: InlayHint) => peer.ask<InlayHint>('inlayHint/resolve', hint);

  test('come in parts, and each leads to where its figure came from when it is looked at', async () => {
    const uri = await started();
    const wall = (await peer.hints(uri)).find((h) => h.position.line === 3)!;
    expect(text(wall)).toMatch(/^price £[\d.]+ · 48 bricks · /);
    expect(wall.tooltip).toBeUndefined();
    const close = await resolve(wall);
    expect((close.tooltip as MarkupContent).value).toContain('Bricks: **48');
    const places = parts(close).flatMap((part) => part.location?.uri ?? []);
    expect(places).toContain(peer.uri('firm.perp'));
    expect(text(close)).toBe(text(wall));
    expect(close.position).toEqual(wall.position);
  });

  test('one that says something else by now stays as it was', async () => {
    const uri = await started();
    const wall = (await peer.hints(uri)).find((h) => h.position.line === 3)!;
    await peer.edit(uri, '9', { line: 6, character: 10 }, { line: 6, character: 11 });
    expect(await resolve(wall)).toEqual(wall);
    const odd = { position: wall.position, label: 'x' };
    expect(await resolve(odd)).toEqual(odd);
  });

  test('stay while a line cannot be read', async () => {
    const uri = await started();
    const before = (await peer.hints(uri)).map((h) => [h.position.line, text(h)]);
    await peer.edit(uri, '', { line: 5, character: 10 }, { line: 5, character: 17 });
    const now = (await peer.hints(uri)).map((h) => [h.position.line, text(h)]);
    expect(now).toEqual(before.filter(([line]) => line !== 5));
  });

  test('each kind by its own setting, of each file, and at once when it changes', async () => {
    settings['job.perp'] = { 'hints.lines': false, 'hints.names': true };
    const uri = await started();
    const other = await peer.open('other.perp', JOB);
    const lines = async (of: string) => (await peer.hints(of)).map((h) => h.position.line);
    expect(await lines(uri)).toEqual([1, 3, 4]);
    expect(await lines(other)).toEqual([1, 3, 5, 6]);
    settings['job.perp'] = {};
    await peer.tell('workspace/didChangeConfiguration', { settings: null });
    await peer.hear('workspace/inlayHint/refresh');
    await peer.hear('workspace/codeLens/refresh');
    expect(await lines(uri)).toEqual([1, 3, 5, 6]);
  });

  test('an edit of the file itself does not have the editor ask again', async () => {
    const uri = await started();
    await new Promise((resolve) => setTimeout(resolve, 400));
    peer.heard.length = 0;
    await peer.edit(uri, '9', { line: 6, character: 10 }, { line: 6, character: 11 });
    await peer.hints(uri);
    await new Promise((resolve) => setTimeout(resolve, 400));
    expect(peer.heard.map((h) => h.method)).not.toContain('workspace/inlayHint/refresh');
  });
});

describe('lines over headings', () => {
  const lenses = (uri: string) => peer.about<CodeLens[]>('codeLens', uri);
  const resolve = (lens: CodeLens) => peer.ask<CodeLens>('codeLens/resolve', lens);

  test('stand there at once, and say what they say when they come into sight', async () => {
    const uri = await started();
    const found = await lenses(uri);
    expect(found.map((l) => l.range.start.line)).toEqual([1, 1, 3, 3, 3]);
    expect(found.every((l) => l.command === undefined)).toBe(true);
    const told = await Promise.all(found.map(resolve));
    expect(told.map((l) => spaced(l.command!.title))).toEqual([
      expect.stringMatching(/^£[\d.]+ incl\. VAT · earns £[\d.]+ an hour$/),
      'Working',
      expect.stringMatching(/^£[\d.]+ of the price · [\d.]+ h$/),
      'Drawing',
      'Working',
    ]);
    expect(told.map((l) => l.command!.command)).toEqual([
      'perpend.working',
      'perpend.working',
      'perpend.working',
      'perpend.preview',
      'perpend.working',
    ]);
    expect(told[2]!.command!.arguments).toEqual([{ uri, id: 'north.price' }]);
    expect(told[3]!.command!.arguments).toEqual([{ uri, line: 3 }]);
  });

  test('a client without the commands is told figures, and led nowhere', async () => {
    const uri = await started(JOB, ABLE, {});
    const found = await lenses(uri);
    expect(found.map((l) => l.range.start.line)).toEqual([1, 3]);
    const [job] = await Promise.all(found.map(resolve));
    expect(job!.command).toMatchObject({ command: '' });
    expect(job!.command!.title).toContain('an hour');
  });

  test('can be switched off, each kind by itself', async () => {
    settings['job.perp'] = { 'lenses.drawing': false, 'lenses.working': false };
    const uri = await started();
    expect(await lenses(uri)).toHaveLength(2);
    settings['job.perp'] = { ...settings['job.perp'], 'lenses.figures': false };
    await peer.tell('workspace/didChangeConfiguration', { settings: null });
    expect(await lenses(uri)).toEqual([]);
  });

  test('one of a text that has gone on is not told by its line, where something else may stand', async () => {
    const uri = await started();
    const [old] = await lenses(uri);
    await peer.edit(uri, 'wall zero\n', { line: 1, character: 0 });
    await expect(resolve(old!)).rejects.toMatchObject({ code: LSPErrorCodes.ContentModified });
    expect((await lenses(uri)).length).toBeGreaterThan(5);
  });

  test('one that is not ours, or of a file that is closed, says little', async () => {
    const uri = await started();
    const [lens] = await lenses(uri);
    await peer.tell('textDocument/didClose', { textDocument: { uri } });
    expect((await resolve(lens!)).command!.title).toBe('…');
    expect((await resolve({ range: lens!.range })).command!.title).toBe('…');
  });
});

describe('order', () => {
  const applied = (text: string, edits: readonly TextEdit[]) =>
    withEdits(
      text,
      edits.map(({ range: { start, end }, newText }) => ({
        startLine: start.line,
        startColumn: start.character,
        endLine: end.line,
        endColumn: end.character,
        text: newText,
      })),
    );
  const OPTIONS = { options: { tabSize: 2, insertSpaces: true } };
  const lines = (first: number, last: number) => ({
    start: { line: first, character: 0 },
    end: { line: last, character: 99 },
  });

  test('several ranges at once', async () => {
    const text = 'perpend 1\n\nwall n\n brick red\n\nwall m\n length 3 m\n height 4 courses\n';
    const uri = await started(text);
    const edits = await peer.about<TextEdit[]>('rangesFormatting', uri, {
      ...OPTIONS,
      ranges: [lines(3, 3), lines(6, 6)],
    });
    expect(applied(text, edits)).toBe(
      'perpend 1\n\nwall n\n  brick     red\n\nwall m\n  length    3 m\n height 4 courses\n',
    );
  });

  test('on Enter, with the line ends of the file', async () => {
    const text = 'perpend 1\r\n\r\nwall n\r\n   brick red\r\n   ';
    const uri = await started(text);
    const edits = await peer.about<TextEdit[]>('onTypeFormatting', uri, {
      ...OPTIONS,
      ...at(4, 3),
      ch: '\n',
    });
    expect(applied(text, edits)).toBe('perpend 1\r\n\r\nwall n\r\n  brick     red\r\n  ');
    expect(await peer.about('onTypeFormatting', uri, { ...OPTIONS, ...at(4, 3), ch: 'x' })).toEqual(
      [],
    );
  });

  test('small edits, so that cursors stay', async () => {
    const text = 'perpend 1\n\nwall n\n  brick red\n';
    const uri = await started(text);
    const edits = await peer.about<TextEdit[]>('formatting', uri, OPTIONS);
    expect(edits).toEqual([
      {
        range: { start: { line: 3, character: 7 }, end: { line: 3, character: 8 } },
        newText: '     ',
      },
    ]);
  });
});

describe('hovers', () => {
  const value = async (uri: string, line: number, character: number) => {
    const found = await peer.about<Hover>('hover', uri, at(line, character));
    return (found.contents as MarkupContent).value;
  };

  test('lead to the whole working where the client has a page for it', async () => {
    const uri = await started();
    const text = await value(uri, 3, 1);
    const [, given] = /\(command:perpend\.working\?([^)]*)\)/.exec(text)!;
    expect(JSON.parse(decodeURIComponent(given!))).toEqual([{ uri, id: 'north.bricks' }]);
  });

  test('and nowhere else', async () => {
    const uri = await started(JOB, ABLE, {});
    expect(await value(uri, 3, 1)).not.toContain('command:');
  });
});

test('what can be done is said at the start', async () => {
  const { capabilities } = await peer.start({ capabilities: ABLE });
  expect(capabilities).toMatchObject({
    completionProvider: { resolveProvider: true, triggerCharacters: [' ', '"'] },
    signatureHelpProvider: { triggerCharacters: [' '] },
    inlayHintProvider: { resolveProvider: true },
    codeLensProvider: { resolveProvider: true },
    documentRangeFormattingProvider: { rangesSupport: true },
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
    semanticTokensProvider: { full: { delta: true }, range: true },
  });
});
