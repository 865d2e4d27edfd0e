/** Findings as an editor asks for them: related places, tags, data, help, and whether they are what was told before. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { DocumentDiagnosticReport } from 'vscode-languageserver-protocol/node';
import { Editor, FULL, HEAD, JOB, WALL } from './editor';

let editor: Editor;
beforeEach(() => {
  editor = new Editor();
});
afterEach(() => editor.stop());

const ask = (uri: string, previousResultId?: string) =>
  editor.about<DocumentDiagnosticReport>('diagnostic', uri, { previousResultId });

describe('a finding', () => {
  test('has its code, words, severity, place and source', async () => {
    await editor.begin();
    const [told] = await editor.told(JOB.replace('red', 'rad'));
    expect(told).toMatchObject({
      code: 'name-unknown',
      severity: 1,
      source: 'perpend',
      range: { start: { line: 3, character: 8 }, end: { line: 3, character: 11 } },
      message: expect.stringContaining('“rad”'),
    });
  });

  test.each([
    ['error', 1, JOB.replace('red', 'rad')],
    ['warning', 2, JOB.replace('2240', '2300')],
    ['information', 3, `${JOB}job "A"\n  lift\n`.replace('8 courses', '24 courses')],
    ['hint', 4, JOB.replace('  height', 'height')],
  ])('is an %s by number', async (_, severity, text) => {
    await editor.begin();
    expect((await editor.told(text)).map((d) => d.severity)).toContain(severity);
  });

  test('leads to its page of help, where the client has said by what scheme', async () => {
    await editor.begin();
    const [told] = await editor.told(JOB.replace('red', 'rad'));
    expect(told!.codeDescription).toEqual({ href: 'perpend-help:/name-unknown.md' });
  });

  test.each([
    ['nothing', {}],
    ['what is no scheme', { help: 'a b' }],
    ['what is no text', { help: 7 }],
  ])('leads nowhere for a client that says %s', async (_, options) => {
    await editor.begin({ options });
    const [told] = await editor.told(JOB.replace('red', 'rad'));
    expect(told).not.toHaveProperty('codeDescription');
  });

  test.each([
    ['job twice', `${JOB}job "A"\njob "B"\n`, 'block-twice', 'job.perp', 8],
    [
      'a limit of the library',
      JOB.replace('8 courses', '24 courses'),
      'lift',
      'uk.perp',
      undefined,
    ],
    [
      'an invoice’s number',
      `${JOB}record\n  invoiced 2026-01-02 £1 as a\n  invoiced 2026-01-03 £1 as a\n`,
      'invoice-number-twice',
      'job.perp',
      9,
    ],
  ])('leads to the other place that it speaks of: %s', async (_, text, code, file, line) => {
    await editor.begin();
    const told = (await editor.told(text)).find((d) => d.code === code)!;
    const [related] = told.relatedInformation!;
    expect(related!.location.uri).toMatch(new RegExp(`/${file}$`));
    if (line !== undefined) expect(related!.location.range.start.line).toBe(line);
    expect(related!.message).not.toBe('');
  });

  test('has no related places for a client that cannot go there', async () => {
    await editor.begin({
      capabilities: { ...FULL, textDocument: { ...FULL.textDocument, diagnostic: {} } },
    });
    const [told] = await editor.told(`${JOB}job "A"\njob "B"\n`);
    expect(told).not.toHaveProperty('relatedInformation');
    expect(told).not.toHaveProperty('tags');
  });

  test.each([
    ['a line that changes nothing', `${JOB}  fit run-1 joints\n`, 'fit-idle'],
    ['a second block of what there is one of', `${JOB}job "A"\njob "B"\n`, 'block-twice'],
    ['a line that stands twice', `${JOB}  length 3 m\n`, 'line-twice'],
    ['an option that changes nothing', `${JOB}option o\n`, 'option-idle'],
    ['retention without stages', `${JOB}price\n  retention 5% for 180 days\n`, 'retention-idle'],
  ])('is tagged as of what is not needed: %s', async (_, text, code) => {
    await editor.begin();
    const told = (await editor.told(text)).find((d) => d.code === code)!;
    expect(told.tags).toEqual([1]);
  });

  test('has no tag otherwise', async () => {
    await editor.begin();
    const [told] = await editor.told(JOB.replace('red', 'rad'));
    expect(told).not.toHaveProperty('tags');
  });

  test('says in its data which it is of its code', async () => {
    await editor.begin();
    const text = JOB.replace('red', 'rad').replace('general', 'generol');
    const told = (await editor.told(text)).filter((d) => d.code === 'name-unknown');
    expect(told.map((d) => d.data)).toEqual([
      { code: 'name-unknown', nth: 0 },
      { code: 'name-unknown', nth: 1 },
    ]);
  });
});

describe('an answer', () => {
  test('says that nothing has changed, by the id of the one before', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', JOB.replace('red', 'rad'));
    const first = await ask(uri);
    expect(first.kind).toBe('full');
    expect(await ask(uri, first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
  });

  test('stays the same over an edit that changes no finding', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', `${JOB.replace('red', 'rad')}\n`);
    const first = await ask(uri);
    await editor.edit(uri, '# a remark', { line: 8, character: 0 });
    expect((await ask(uri, first.resultId)).kind).toBe('unchanged');
  });

  test.each([
    ['a line above', '\n', { line: 2, character: 0 }],
    ['another word', 'x', { line: 3, character: 10 }],
  ])('is another after an edit that moves or changes one: %s', async (_, text, at) => {
    await editor.begin();
    const uri = await editor.open('job.perp', JOB.replace('red', 'rad'));
    const first = await ask(uri);
    await editor.edit(uri, text, at);
    const second = await ask(uri, first.resultId);
    expect(second.kind).toBe('full');
    expect(second.resultId).not.toBe(first.resultId);
  });

  test('is full for an id that is not known', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', JOB);
    expect((await ask(uri, 'of another day')).kind).toBe('full');
  });

  test('of one file is not taken for another’s', async () => {
    await editor.begin();
    const first = await ask(await editor.open('a.perp', JOB.replace('red', 'rad')));
    const second = await ask(
      await editor.open('b.perp', JOB.replace('red', 'rod')),
      first.resultId,
    );
    expect(second.kind).toBe('full');
  });

  test('is empty when the file is closed', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', JOB.replace('red', 'rad'));
    await editor.tell('textDocument/didClose', { textDocument: { uri } });
    expect(await ask(uri)).toEqual({ kind: 'full', items: [] });
  });

  test('sent unasked has the same findings, its version, and none after the end', async () => {
    const { diagnostic, ...textDocument } = FULL.textDocument!;
    const takes = { relatedInformation: true, tagSupport: { valueSet: [1 as const] } };
    await editor.begin({
      capabilities: { ...FULL, textDocument: { ...textDocument, publishDiagnostics: takes } },
    });
    await editor.open('job.perp', `${HEAD}${WALL}job "A"\njob "B"\n`);
    expect(await editor.hear('textDocument/publishDiagnostics')).toMatchObject({
      version: 1,
      diagnostics: expect.arrayContaining([
        expect.objectContaining({ code: 'block-twice', tags: [1] }),
      ]),
    });
  });
});
