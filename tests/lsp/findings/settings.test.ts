/** What a reader wants to be told, folder by folder, and at once when it changes. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ConfigurationParams, Diagnostic } from 'vscode-languageserver-protocol/node';
import { read } from '../../../server/lsp/finding-settings';
import { FIRM } from '../../ide/ask';
import { Editor, FULL, idsOf, JOB, saidOf } from './editor';

let editor: Editor;
/** By the name of the folder that settings are asked for. */
let settings: Record<string, unknown>;
let asked: string[];

const CAN = { ...FULL, workspace: { ...FULL.workspace, configuration: true } };
const HINT = JOB.replace('  height', 'height');

beforeEach(() => {
  editor = new Editor();
  settings = {};
  asked = [];
  editor.connection.onRequest('workspace/configuration', ({ items }: ConfigurationParams) =>
    items.map(({ scopeUri, section }) => {
      if (section !== 'perpend.findings') return null;
      asked.push(scopeUri!);
      return settings[scopeUri!.split('/').at(-1)!] ?? null;
    }),
  );
});
afterEach(() => editor.stop());

function folder(name: string, files: Record<string, string>): string {
  const at = path.join(editor.folder, name);
  mkdirSync(at);
  for (const [file, text] of Object.entries({ 'firm.perp': FIRM, ...files }))
    writeFileSync(path.join(at, file), text);
  return at;
}

const changed = () => editor.tell('workspace/didChangeConfiguration', { settings: null });
const hints = (items: readonly Diagnostic[]) => items.filter((d) => d.severity === 4);
const cautions = (items: readonly Diagnostic[]) =>
  items.filter((d) => String(d.code).startsWith('caution-')).map((d) => d.severity);

describe('by folder', () => {
  test('hints are told in one and not in the other', async () => {
    settings = { quiet: { hints: false } };
    await editor.begin({ folders: [folder('loud', {}), folder('quiet', {})], capabilities: CAN });
    const loud = await editor.findings(await editor.open('loud/a.perp', HINT));
    const quiet = await editor.findings(await editor.open('quiet/a.perp', HINT));
    expect(hints(loud)).toHaveLength(1);
    expect(hints(quiet)).toEqual([]);
    expect(quiet).toHaveLength(loud.length - 1);
  });

  test('cautions can be as faint as hints, and are never gone', async () => {
    settings = { quiet: { cautions: 'hint', hints: false }, off: { cautions: 'off' } };
    const folders = ['loud', 'quiet', 'off'].map((name) => folder(name, {}));
    await editor.begin({ folders, capabilities: CAN });
    const of = async (name: string) =>
      new Set(cautions(await editor.findings(await editor.open(`${name}/a.perp`, JOB))));
    expect([await of('loud'), await of('quiet'), await of('off')]).toEqual([
      new Set([3]),
      new Set([4]),
      new Set([3]),
    ]);
  });

  test('files that are not open are looked through in one and not in the other', async () => {
    settings = { quiet: { folder: false } };
    const bad = { 'a.perp': JOB.replace('red', 'rad') };
    const folders = [folder('loud', bad), folder('quiet', { 'b.perp': bad['a.perp'] })];
    await editor.begin({ folders, capabilities: CAN });
    expect(Object.keys(saidOf(await editor.folderReport())).sort()).toEqual([
      'a.perp',
      'firm.perp',
    ]);
  });

  test('a folder in another has its own', async () => {
    settings = { inner: { hints: false } };
    const outer = folder('outer', {});
    const inner = folder('outer/inner', {});
    await editor.begin({ folders: [outer, inner], capabilities: CAN });
    expect(hints(await editor.findings(await editor.open('outer/inner/a.perp', HINT)))).toEqual([]);
    expect(hints(await editor.findings(await editor.open('outer/a.perp', HINT)))).toHaveLength(1);
  });

  test('are asked for once, however many files', async () => {
    await editor.begin({ folders: [folder('loud', {})], capabilities: CAN });
    for (const name of ['a', 'b', 'c'])
      await editor.findings(await editor.open(`loud/${name}.perp`, HINT));
    expect(asked).toHaveLength(1);
  });

  test('a file in no folder has its own', async () => {
    await editor.begin({ folders: [folder('loud', {})], capabilities: CAN });
    const uri = await editor.open('untitled:Untitled-1', HINT);
    await editor.findings(uri);
    expect(asked).toEqual([uri]);
  });
});

describe('live', () => {
  test('a change is taken at once, and the editor told to ask again', async () => {
    await editor.begin({ folders: [folder('loud', {})], capabilities: CAN });
    const uri = await editor.open('loud/a.perp', HINT);
    expect(hints(await editor.findings(uri))).toHaveLength(1);
    editor.heard.length = 0;
    settings = { loud: { hints: false } };
    await changed();
    await editor.hear('workspace/diagnostic/refresh');
    expect(hints(await editor.findings(uri))).toEqual([]);
  });

  test('it is told of files that are not open, too', async () => {
    await editor.begin({ folders: [folder('loud', { 'a.perp': HINT })], capabilities: CAN });
    const waiting = editor.folderReport(idsOf(await editor.folderReport()));
    settings = { loud: { hints: false } };
    await changed();
    const { items } = await waiting;
    const report = items.find(({ uri }) => uri.endsWith('a.perp'))!;
    expect(report.kind === 'full' && hints(report.items)).toEqual([]);
  });

  test('files that are not to be looked through any more lose what was told of them', async () => {
    const bad = { 'a.perp': JOB.replace('red', 'rad') };
    await editor.begin({ folders: [folder('loud', bad)], capabilities: CAN });
    const waiting = editor.folderReport(idsOf(await editor.folderReport()));
    settings = { loud: { folder: false } };
    await changed();
    expect(saidOf(await waiting)).toEqual({ 'a.perp': [], 'firm.perp': [] });
  });

  test('a client that cannot ask is sent them anew', async () => {
    const { diagnostic, ...textDocument } = CAN.textDocument!;
    await editor.begin({
      folders: [folder('loud', {})],
      capabilities: { ...CAN, textDocument },
    });
    await editor.open('loud/a.perp', HINT);
    await editor.hear('textDocument/publishDiagnostics');
    editor.heard.length = 0;
    settings = { loud: { hints: false } };
    await changed();
    const sent = (await editor.hear('textDocument/publishDiagnostics')) as {
      diagnostics: Diagnostic[];
    };
    expect(hints(sent.diagnostics)).toEqual([]);
  });
});

describe('a folder that is opened or closed later', () => {
  const folders = (event: object) => editor.tell('workspace/didChangeWorkspaceFolders', { event });

  test('brings its files and its settings, and the editor is told to ask again', async () => {
    const [job, firm] = [folder('job', {}), folder('firm', {})];
    const of = (name: string) => [{ uri: editor.uri(name), name }];
    settings = { firm: { hints: false } };
    await editor.begin({ folders: [job], capabilities: CAN });
    const uri = await editor.open('job/a.perp', HINT.replace('firm.perp', '../firm/firm.perp'));
    const codes = async (file: string) => (await editor.findings(file)).map((d) => d.code);
    expect(await codes(uri)).toContain('use-outside');
    await editor.hear('workspace/diagnostic/refresh');
    const beside = await editor.open('firm/b.perp', HINT);
    expect(hints(await editor.findings(beside))).toHaveLength(1);
    await editor.hear('workspace/diagnostic/refresh');
    await new Promise((resolve) => setTimeout(resolve, 400));
    for (const [event, outside] of [
      [{ added: of('firm'), removed: [] }, false],
      [{ added: [], removed: of('firm') }, true],
    ] as const) {
      editor.heard.length = 0;
      await folders(event);
      await editor.hear('workspace/diagnostic/refresh');
      expect((await codes(uri)).includes('use-outside')).toBe(outside);
      expect(hints(await editor.findings(beside))).toHaveLength(outside ? 1 : 0);
    }
    expect(firm).toBeTruthy();
  });
});

describe('whatever a client sends', () => {
  test.each([
    [null],
    [undefined],
    ['off'],
    [[]],
    [{}],
    [{ hints: 'no', cautions: 7, folder: null }],
  ])('%j is taken as what ships', (found) => {
    expect(read(found)).toEqual({ hints: true, cautions: 'information', folder: true });
  });

  test('a client that has no settings is told everything', async () => {
    await editor.begin();
    expect(hints(await editor.findings(await editor.open('a.perp', HINT)))).toHaveLength(1);
    expect(asked).toEqual([]);
  });

  test('one that fails to answer, too', async () => {
    editor.connection.onRequest('workspace/configuration', () => {
      throw new Error('no');
    });
    await editor.begin({ capabilities: CAN });
    expect(hints(await editor.findings(await editor.open('a.perp', HINT)))).toHaveLength(1);
  });
});
