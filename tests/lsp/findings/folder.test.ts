/** Findings of the files that are not open: all of them, in parts, again only after a change, and never in the way of a key. */
import { mkdirSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  LSPErrorCodes,
  ProgressType,
  type WorkspaceDiagnosticReport,
} from 'vscode-languageserver-protocol/node';
import { FIRM } from '../../ide/ask';
import { Editor, HEAD, idsOf, JOB, saidOf, WALL } from './editor';

let editor: Editor;
beforeEach(() => {
  editor = new Editor();
});
afterEach(() => editor.stop());

const BAD = JOB.replace('red', 'rad');
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const unanswered = Symbol('not answered');

/** The answer, or that there is none within so many ms. */
const soon = <T>(asked: Promise<T>, ms = 450) =>
  Promise.race([asked, pause(ms).then(() => unanswered)]);

describe('what is asked of all files', () => {
  test('is offered, and depends on other files', async () => {
    const { capabilities } = await editor.begin();
    expect(capabilities.diagnosticProvider).toMatchObject({
      workspaceDiagnostics: true,
      interFileDependencies: true,
    });
  });

  test('is told of each file in the notation, in folders too', async () => {
    mkdirSync(path.join(editor.folder, 'old'));
    editor.put('a.perp', BAD);
    editor.put('b.perp', JOB);
    editor.put('old/c.perp', BAD.replace('"firm.perp"', '"../firm.perp"'));
    editor.put('note.txt', BAD);
    await editor.begin();
    expect(saidOf(await editor.folderReport())).toEqual({
      'a.perp': ['name-unknown'],
      'b.perp': [],
      'c.perp': ['name-unknown'],
      'firm.perp': [],
    });
  });

  test('says no version, since no editor holds the file', async () => {
    await editor.begin();
    const { items } = await editor.folderReport();
    expect(items.map(({ version }) => version)).toEqual([null]);
  });

  test('leaves out what is open: that is asked for by itself', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    await editor.open('a.perp', JOB);
    expect(Object.keys(saidOf(await editor.folderReport()))).toEqual(['firm.perp']);
  });

  test('leaves out hidden folders and what lies outside', async () => {
    mkdirSync(path.join(editor.folder, '.git'));
    editor.put('.git/a.perp', BAD);
    await editor.begin();
    expect(Object.keys(saidOf(await editor.folderReport()))).toEqual(['firm.perp']);
  });

  test('is nothing without a folder', async () => {
    await editor.begin({ folders: [] });
    expect(await editor.folderReport()).toEqual({ items: [] });
  });

  test('of two folders is of both, and of one in the other once', async () => {
    mkdirSync(path.join(editor.folder, 'in'));
    editor.put('in/a.perp', BAD);
    await editor.begin({ folders: [editor.folder, path.join(editor.folder, 'in')] });
    const { items } = await editor.folderReport();
    expect(items.map(({ uri }) => uri.split('/').at(-1)).sort()).toEqual(['a.perp', 'firm.perp']);
  });

  test('comes in parts where the client takes them', async () => {
    for (let i = 0; i < 30; i += 1) editor.put(`${i}.perp`, BAD);
    await editor.begin();
    const parts: WorkspaceDiagnosticReport['items'][] = [];
    editor.connection.onProgress(
      new ProgressType<WorkspaceDiagnosticReport>(),
      'parts',
      ({ items }) => void parts.push(items),
    );
    expect(await editor.folderReport([], 'parts')).toEqual({ items: [] });
    expect(parts.length).toBeGreaterThan(1);
    expect(new Set(parts.flat().map(({ uri }) => uri)).size).toBe(31);
  });

  test('has the ids that an open file has', async () => {
    const text = 'perpend 1\nbrick red\n  prise £1 each\n';
    const uri = editor.put('a.perp', text);
    await editor.begin();
    const answer = await editor.folderReport();
    const { value } = idsOf(answer).find((each) => each.uri === uri)!;
    expect(saidOf(answer)['a.perp']).toEqual(['line-unknown']);
    await editor.open('a.perp', text);
    const open = await editor.about<{ kind: string }>('diagnostic', uri, {
      previousResultId: value,
    });
    expect(open.kind).toBe('unchanged');
  });

  test('leaves cautions to whoever has the file open: of many jobs they would hide what is wrong', async () => {
    const uri = editor.put('a.perp', JOB);
    await editor.begin();
    const { items } = await editor.folderReport();
    const told = items.flatMap((each) => (each.kind === 'full' ? each.items : []));
    expect(told.filter(({ code }) => String(code).startsWith('caution-'))).toEqual([]);
    await editor.open('a.perp', JOB);
    const open = await editor.findings(uri);
    expect(open.filter(({ code }) => String(code).startsWith('caution-'))).not.toEqual([]);
  });
});

/** How many errors each file has, by its way from the folder. */
function byWay({ items }: WorkspaceDiagnosticReport): Record<string, number> {
  const top = editor.uri('').replace(/\/*$/, '/').length;
  return Object.fromEntries(
    items.flatMap((each) =>
      each.kind === 'full'
        ? [[each.uri.slice(top), each.items.filter((d) => d.severity === 1).length]]
        : [],
    ),
  );
}

describe('asked again', () => {
  test('there is no answer before something changes', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    const previous = idsOf(await editor.folderReport());
    const asked = editor.folderReport(previous);
    expect(await soon(asked)).toBe(unanswered);
    editor.put('a.perp', JOB);
    await editor.changed('a.perp');
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': [] });
  });

  test('a file that is told as before is said to be unchanged, and only beside one that is not', async () => {
    editor.put('a.perp', BAD);
    editor.put('b.perp', JOB);
    await editor.begin();
    const asked = editor.folderReport(idsOf(await editor.folderReport()));
    editor.put('a.perp', `${BAD}\n# a remark\n`);
    await editor.changed('a.perp');
    expect(await soon(asked, 600)).toBe(unanswered);
    editor.put('b.perp', BAD);
    editor.put('a.perp', `${BAD}\n# another remark\n`);
    await editor.changed('a.perp', 'b.perp');
    expect(saidOf(await asked)).toMatchObject({
      'a.perp': 'unchanged',
      'b.perp': ['name-unknown'],
    });
  });

  test('an edit of a file that others use is told of those that it concerns', async () => {
    editor.put('a.perp', JOB);
    editor.put('b.perp', `perpend 1\nuse uk\n`);
    await editor.begin();
    const uri = await editor.open('firm.perp', FIRM);
    const previous = idsOf(await editor.folderReport());
    const asked = editor.folderReport(previous);
    await editor.edit(uri, FIRM.replace('brick red', 'brick blue'));
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': ['name-unknown'] });
  });

  test('a file that comes is told of where it was missing', async () => {
    editor.put('a.perp', HEAD.replace('firm', 'other') + WALL);
    await editor.begin();
    const first = await editor.folderReport();
    expect(saidOf(first)).toMatchObject({ 'a.perp': ['use-missing', 'name-unknown'] });
    const asked = editor.folderReport(idsOf(first));
    editor.put('other.perp', FIRM);
    await editor.changed('other.perp');
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': [], 'other.perp': [] });
  });

  test('a firm’s file that comes is told of in a job that was begun without it', async () => {
    rmSync(path.join(editor.folder, 'firm.perp'));
    mkdirSync(path.join(editor.folder, 'in'));
    editor.put('in/a.perp', `perpend 1\nuse uk\n${WALL.replace('red', 'standard')}`);
    await editor.begin();
    const warned = ({ items }: WorkspaceDiagnosticReport) =>
      items.flatMap((each) => (each.kind === 'full' ? each.items : [])).map(({ code }) => code);
    const first = await editor.folderReport();
    expect(warned(first)).not.toContain('use-firm');
    const asked = editor.folderReport(idsOf(first));
    editor.put('firm.perp', FIRM);
    await editor.changed('firm.perp');
    expect(warned(await asked)).toContain('use-firm');
  });

  test('what is in a folder that moves is told of at once, though the editor tells of the folder alone', async () => {
    mkdirSync(path.join(editor.folder, 'in'));
    editor.put('in/a.perp', BAD);
    await editor.begin();
    const moved = (from: string, to: string) => {
      renameSync(path.join(editor.folder, from), path.join(editor.folder, to));
      return editor.tell('workspace/didChangeWatchedFiles', {
        changes: [
          { uri: editor.uri(from), type: 3 },
          { uri: editor.uri(to), type: 1 },
        ],
      });
    };
    const first = await editor.folderReport();
    const asked = editor.folderReport(idsOf(first));
    await moved('in', 'done.2026');
    const second = await asked;
    expect(byWay(second)).toMatchObject({ 'in/a.perp': 0, 'done.2026/a.perp': 2 });
    // Back again, while what was walked through is still fresh.
    const again = editor.folderReport(idsOf(second));
    await moved('done.2026', 'in');
    expect(byWay(await again)).toMatchObject({ 'in/a.perp': 2, 'done.2026/a.perp': 0 });
  });

  test('a file that is gone has no findings any more', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    const asked = editor.folderReport(idsOf(await editor.folderReport()));
    rmSync(path.join(editor.folder, 'a.perp'));
    await editor.changed('a.perp');
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': [] });
  });

  test('a file that is closed is told as it stands on disk', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    const uri = await editor.open('a.perp', JOB);
    const asked = editor.folderReport(idsOf(await editor.folderReport()));
    await editor.tell('textDocument/didClose', { textDocument: { uri } });
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': ['name-unknown'] });
  });

  test('a file that was open and has another name now has no findings under the old one', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    const uri = await editor.open('a.perp', BAD);
    expect(await editor.findings(uri)).not.toEqual([]);
    // The id of a file that was open is not among those: the client of VS Code forgets it, and goes on showing.
    const asked = editor.folderReport(idsOf(await editor.folderReport()));
    rmSync(path.join(editor.folder, 'a.perp'));
    editor.put('b.perp', BAD);
    await editor.tell('textDocument/didClose', { textDocument: { uri } });
    await editor.changed('a.perp', 'b.perp');
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': [], 'b.perp': ['name-unknown'] });
  });

  test('a client that has lost its ids is told everything', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    await editor.folderReport();
    expect(Object.keys(saidOf(await editor.folderReport())).sort()).toEqual([
      'a.perp',
      'firm.perp',
    ]);
  });

  test('a folder that is closed has no findings any more', async () => {
    editor.put('a.perp', BAD);
    await editor.begin();
    await editor.open('untitled:x', JOB);
    const asked = editor.folderReport(idsOf(await editor.folderReport()));
    const folder = { uri: editor.uri(''), name: '' };
    await editor.tell('workspace/didChangeWorkspaceFolders', {
      event: { added: [], removed: [{ ...folder, uri: folder.uri.replace(/\/$/, '') }] },
    });
    expect(saidOf(await asked)).toMatchObject({ 'a.perp': [] });
  });
});

describe('politely', () => {
  test('a cancelled question ends as cancelled, at work or waiting', async () => {
    for (let i = 0; i < 20; i += 1) editor.put(`${i}.perp`, BAD);
    await editor.begin();
    for (const previous of [[], idsOf(await editor.folderReport())]) {
      const source = new CancellationTokenSource();
      const params = { identifier: 'perpend', previousResultIds: previous };
      const asked = editor.connection.sendRequest('workspace/diagnostic', params, source.token);
      setTimeout(() => source.cancel(), previous.length ? 20 : 2);
      await expect(asked).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
    }
  });

  test('a key does not wait for it', async () => {
    for (let i = 0; i < 80; i += 1) editor.put(`${i}.perp`, BAD);
    await editor.begin();
    const uri = await editor.open('job.perp', JOB);
    await editor.findings(uri);
    let done = false;
    const asked = editor.folderReport([], 'parts').then(() => {
      done = true;
    });
    await editor.edit(uri, 'x', { line: 3, character: 10 });
    expect(await editor.hints(uri)).toBeTruthy();
    expect(done).toBe(false);
    await asked;
  });

  test('what changes while it works is told as it is in the end', async () => {
    for (let i = 0; i < 40; i += 1) editor.put(`${i}.perp`, JOB);
    await editor.begin();
    const asked = editor.folderReport();
    editor.put('39.perp', BAD);
    await editor.changed('39.perp');
    const first = await asked;
    const told =
      saidOf(first)['39.perp'] ?? saidOf(await editor.folderReport(idsOf(first)))['39.perp'];
    expect(told).toEqual(['name-unknown']);
  });
});
