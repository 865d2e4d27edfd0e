/** What can be done, as an editor asks for it: edits when an action is taken, kinds, data of diagnostics, places to fill in. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  type ClientCapabilities,
  type CodeAction,
  type Diagnostic,
  LSPErrorCodes,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';
import { withEdits } from '../../harness/edits';
import { FIRM } from '../../ide/ask';
import { Editor, FULL, HEAD, JOB } from './editor';

let editor: Editor;
beforeEach(() => {
  editor = new Editor();
});
afterEach(() => editor.stop());

interface Asked {
  readonly only?: string[];
  readonly diagnostics?: Diagnostic[];
}

function actionsAt(uri: string, line: number, column: number, asked: Asked = {}) {
  const at = { line, character: column };
  return editor.about<CodeAction[]>('codeAction', uri, {
    range: { start: at, end: at },
    context: { diagnostics: [], ...asked },
  });
}

const resolve = (action: CodeAction) => editor.ask<CodeAction>('codeAction/resolve', action);

const titles = (actions: readonly CodeAction[]) => actions.map(({ title }) => title);

function editsOf({ documentChanges, changes }: WorkspaceEdit): TextEdit[] {
  const versioned = (documentChanges ?? []) as TextDocumentEdit[];
  return [
    ...versioned.flatMap(({ edits }) => edits as TextEdit[]),
    ...Object.values(changes ?? {}).flat(),
  ];
}

function after(text: string, edit: WorkspaceEdit): string {
  const edits = editsOf(edit).map(({ range: { start, end }, newText }) => ({
    startLine: start.line,
    startColumn: start.character,
    endLine: end.line,
    endColumn: end.character,
    text: newText,
  }));
  return withEdits(text, edits);
}

/** A client that wants every edit at once. */
const PLAIN: ClientCapabilities = {
  ...FULL,
  textDocument: { ...FULL.textDocument, codeAction: {} },
  workspace: { ...FULL.workspace, workspaceEdit: {} },
};

const BAD = JOB.replace('red', 'rad');

describe('ways out', () => {
  test('come without their edits, which are asked for when one is taken', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', BAD);
    const [action] = await actionsAt(uri, 3, 9);
    expect(action).toMatchObject({ title: 'Write red', kind: 'quickfix', isPreferred: true });
    expect(action).not.toHaveProperty('edit');
    expect(after(BAD, (await resolve(action!)).edit!)).toBe(JOB);
  });

  test('come with their edits to a client that cannot ask for them', async () => {
    await editor.begin({ capabilities: PLAIN });
    const uri = await editor.open('job.perp', BAD);
    const [action] = await actionsAt(uri, 3, 9);
    expect(action).not.toHaveProperty('data');
    expect(Object.keys(action!.edit!.changes!)).toEqual([uri]);
    expect(after(BAD, action!.edit!)).toBe(JOB);
  });

  test('say the version that their edits are for', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', BAD);
    const { edit } = await resolve((await actionsAt(uri, 3, 9))[0]!);
    expect(edit!.documentChanges).toMatchObject([{ textDocument: { uri, version: 1 } }]);
  });

  test('are refused once the text is another', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', BAD);
    const [action] = await actionsAt(uri, 3, 9);
    await editor.edit(uri, '\n', { line: 0, character: 0 });
    await expect(resolve(action!)).rejects.toMatchObject({ code: LSPErrorCodes.ContentModified });
  });

  test('name the diagnostics that they are of', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', BAD);
    const told = await editor.findings(uri);
    const wanted = told.filter((d) => d.code === 'name-unknown');
    const [action] = await actionsAt(uri, 3, 9, { diagnostics: told });
    expect(action!.diagnostics).toEqual(wanted);
  });

  test('are found by a diagnostic alone, whatever place it is asked at', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', BAD);
    const told = (await editor.findings(uri)).filter((d) => d.code === 'name-unknown');
    const found = await actionsAt(uri, 0, 0, { diagnostics: told, only: ['quickfix'] });
    expect(titles(found)).toEqual(['Write red']);
    expect(after(BAD, (await resolve(found[0]!)).edit!)).toBe(JOB);
  });

  test('of one of two at the same place are not the other’s', async () => {
    await editor.begin();
    // Both runs that do not work are told of at the length.
    const text = `${HEAD}wall n\n  brick red\n  stands held\n  length 2055 mm\n  height 8 courses\n  opening o\n    from left 440 mm\n    width 910 mm\n    sill 4 courses\n`;
    const uri = await editor.open('job.perp', text);
    const told = (await editor.findings(uri)).filter((d) => d.code === 'fit-run');
    const [first, second] = told.filter((d) => d.range.start.line === 5);
    expect(second!.range).toEqual(first!.range);
    const found = await actionsAt(uri, 5, 11, { diagnostics: [first!, second!] });
    const mine = (one: Diagnostic) =>
      found.filter((a) => a.diagnostics?.[0]?.message === one.message);
    for (const one of [first!, second!]) {
      expect(mine(one).length).toBeGreaterThan(0);
      expect(mine(one).every((a) => a.diagnostics!.length === 1)).toBe(true);
      const edit = (await resolve(mine(one)[0]!)).edit!;
      const left = await editor.findings(await editor.open('after.perp', after(text, edit)));
      expect(left.map((d) => d.message)).not.toContain(one.message);
    }
  });

  test('all at once are not offered where none of them can be mended', async () => {
    for (const capabilities of [FULL, PLAIN]) {
      editor.stop();
      editor = new Editor();
      await editor.begin({ capabilities });
      const uri = await editor.open('job.perp', JOB.replace('red', 'nothing-like-it'));
      expect(await actionsAt(uri, 0, 0, { only: ['source.fixAll'] })).toEqual([]);
    }
  });

  test('of the second of two are not the first’s', async () => {
    await editor.begin();
    const text = BAD.replace('general', 'generol');
    const uri = await editor.open('job.perp', text);
    const told = (await editor.findings(uri)).filter((d) => d.code === 'name-unknown');
    const found = await actionsAt(uri, 0, 0, { diagnostics: told.slice(1), only: ['quickfix'] });
    expect(titles(found)[0]).toBe('Write general');
  });

  test.each([
    ['of another source', { source: 'spelling', data: { code: 'name-unknown', nth: 0 } }],
    ['without data', { source: 'perpend' }],
    ['with data of nobody', { source: 'perpend', data: { code: 7, nth: 'x' } }],
    [
      'of a finding that is not there',
      { source: 'perpend', data: { code: 'name-unknown', nth: 9 } },
    ],
  ])('of a diagnostic %s there are none', async (_, told) => {
    await editor.begin();
    const uri = await editor.open('job.perp', BAD);
    const at = { line: 0, character: 0 };
    const diagnostic = { range: { start: at, end: at }, message: '', ...told };
    const found = await actionsAt(uri, 0, 0, { diagnostics: [diagnostic], only: ['quickfix'] });
    expect(found).toEqual([]);
  });

  test('several of one finding all come, one of them preferred', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', JOB.replace('2240', '2300'));
    const found = await actionsAt(uri, 4, 10, { only: ['quickfix'] });
    expect(found.length).toBeGreaterThan(2);
    expect(found.filter((a) => a.isPreferred)).toHaveLength(1);
  });

  test('in a file with other line ends write those', async () => {
    await editor.begin();
    const uri = await editor.open('b.perp', 'perpend 1\r\nwall n\r\n');
    const action = (await actionsAt(uri, 1, 1)).find((a) => a.title.startsWith('Add'))!;
    expect(JSON.stringify((await resolve(action)).edit)).toContain('\\r\\n  length');
  });
});

describe('kinds', () => {
  test.each([
    [['quickfix'], ['quickfix']],
    [['refactor'], ['refactor.extract', 'refactor.rewrite']],
    [['refactor.rewrite'], ['refactor.rewrite']],
    [['refactor.extract'], ['refactor.extract']],
    [['source'], ['source.fixAll.perpend']],
    [['source.fixAll'], ['source.fixAll.perpend']],
    [['source.fixAll.perpend'], ['source.fixAll.perpend']],
    [['source.organizeImports'], []],
    [['quick'], []],
    [undefined, ['quickfix', 'refactor.extract', 'refactor.rewrite']],
  ])('%j are answered with %j', async (only, kinds) => {
    await editor.begin();
    const text = JOB.replace('general', 'generol').replace('2240', '2300');
    const uri = await editor.open('job.perp', text);
    const found = await actionsAt(uri, 4, 10, only && { only });
    expect([...new Set(found.map((a) => a.kind))].sort()).toEqual(kinds);
  });

  test('are told of at the start', async () => {
    const { capabilities } = await editor.begin();
    expect(capabilities.codeActionProvider).toEqual({
      codeActionKinds: ['quickfix', 'source.fixAll.perpend', 'refactor'],
      resolveProvider: true,
    });
  });
});

describe('all at once', () => {
  const TWO = JOB.replace('red', 'rad').replace('length', 'lenght');

  test('all that was plainly meant, when it is saved', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', TWO);
    const [action] = await actionsAt(uri, 0, 0, { only: ['source.fixAll'] });
    expect(after(TWO, (await resolve(action!)).edit!)).toBe(JOB);
  });

  test('at once for a client that cannot ask', async () => {
    await editor.begin({ capabilities: PLAIN });
    const uri = await editor.open('job.perp', TWO);
    const [action] = await actionsAt(uri, 0, 0, { only: ['source.fixAll'] });
    expect(after(TWO, action!.edit!)).toBe(JOB);
  });

  test('is not offered where nothing is to be mended', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', JOB);
    expect(await actionsAt(uri, 0, 0, { only: ['source.fixAll'] })).toEqual([]);
  });

  test('all of one kind in the file', async () => {
    await editor.begin();
    const text = `${BAD}wall m\n  brick rad\n  length 2240 mm\n  height 8 courses\n`;
    const uri = await editor.open('job.perp', text);
    const all = (await actionsAt(uri, 3, 9)).find((a) => a.title.startsWith('Mend all 2'))!;
    expect(after(text, (await resolve(all)).edit!)).toBe(text.replaceAll('rad', 'red'));
  });
});

describe('places to fill in', () => {
  test('are led through in the editor', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', 'perpend 1\nwall n\n');
    const action = (await actionsAt(uri, 1, 1)).find((a) => a.title.startsWith('Add'))!;
    const [{ edits }] = (await resolve(action)).edit!.documentChanges as [TextDocumentEdit];
    expect(edits).toEqual([
      {
        range: { start: { line: 1, character: 6 }, end: { line: 1, character: 6 } },
        snippet: {
          kind: 'snippet',
          // biome-ignore lint/suspicious/noTemplateCurlyInString: places to fill in, as editors write them
          value: '\n  length  ${1:7.4 m}\n  height  ${2:18 courses}',
        },
      },
    ]);
  });

  test('are question marks for a client that cannot', async () => {
    await editor.begin({ capabilities: PLAIN });
    const uri = await editor.open('job.perp', 'perpend 1\nwall n\n');
    const action = (await actionsAt(uri, 1, 1)).find((a) => a.title.startsWith('Add'))!;
    expect(editsOf(action.edit!)[0]!.newText).toBe('\n  length  ?\n  height  ?');
  });

  test('of a text that is still to be filled in stand within its quotation marks', async () => {
    await editor.begin();
    const text = 'perpend 1\nuse uk\nfirm "A"\n  town  "? Your town"\n';
    const uri = await editor.open('own.perp', text);
    const [found] = await editor.findings(uri);
    expect(found).toMatchObject({ code: 'blank', severity: 2 });
    const end = found!.range.end;
    const actions = await editor.about<CodeAction[]>('codeAction', uri, {
      range: { start: end, end },
      context: { diagnostics: [found], triggerKind: 1 },
    });
    expect(actions.map(({ title }) => title)).toEqual(['Take the line out', 'Fill it in']);
    const { edit } = await editor.ask<CodeAction>('codeAction/resolve', actions[1]);
    const value = ['"$', '{1:? Your town}"'].join('');
    expect(edit!.documentChanges).toMatchObject([
      { edits: [{ range: found!.range, snippet: { kind: 'snippet', value } }] },
    ]);
  });

  test('may stand in the firm’s file, and are not offered where they cannot be filled in', async () => {
    editor.put('firm.perp', `${FIRM}firm "Harrow & Lane"\n`);
    const text = `${HEAD}job "A"\ncost s "Skip" 1 at £9\nrecord\n  invoiced 2026-03-08 £9\n`;
    await editor.begin();
    const uri = await editor.open('job.perp', text);
    const action = (await actionsAt(uri, 5, 4)).find((a) => a.title.startsWith('Add the tax'))!;
    const [{ textDocument }] = (await resolve(action)).edit!.documentChanges as [TextDocumentEdit];
    expect(textDocument).toEqual({ uri: editor.uri('firm.perp'), version: null });
  });
});
