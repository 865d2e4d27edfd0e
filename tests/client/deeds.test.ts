import { beforeEach, describe, expect, test, vi } from 'vitest';
import { newJob } from '../../client/deeds/new';
import { next } from '../../client/deeds/next';
import { record } from '../../client/deeds/record';
import { share } from '../../client/deeds/share';
import { take } from '../../client/deeds/take';
import { NEW, NEXT, TEMPLATES } from '../../shared/protocol/new';
import { SHARE, TAKE } from '../../shared/protocol/partners';
import { RECORD } from '../../shared/protocol/record';
import { serverWith } from './server';
import { forget, seen, window, workspace } from './vscode';

vi.mock('vscode', () => import('./vscode'));
const JOB = 'file:///jobs/job.perp';

beforeEach(() => {
  forget();
  window.showTextDocument.mockClear();
  const at = { range: { start: 0, end: 0 } };
  const open = {
    lineCount: 9,
    lineAt: () => at,
    languageId: 'perpend',
    version: 1,
    isUntitled: false,
  };
  workspace.openTextDocument.mockImplementation(async (uri) => ({ uri, ...open }));
});

const edit = (version = 1) => ({
  documentChanges: [
    {
      textDocument: { uri: JOB, version },
      edits: [
        {
          range: { start: { line: 8, character: 0 }, end: { line: 8, character: 0 } },
          newText: 'record\n',
        },
      ],
    },
  ],
});
const texts = () =>
  seen.edits.flatMap(({ made }) => made.map(({ uri, text }) => [uri.toString(), text]));

describe('a record', () => {
  const made = { edit: edit(), line: 8, lines: ['record'], asides: ['Keep a copy.'] };
  const said = { uri: JOB, what: 'paid', date: '2026-03-02', words: ['£5'] };

  test('is an edit of the job that can be undone, and its line is shown', async () => {
    const { server, asked } = serverWith({ [RECORD]: made });
    await record(server, said);
    expect(asked[0]).toEqual({ method: RECORD, params: said });
    expect(texts()).toEqual([[JOB, 'record\n']]);
    expect(window.showTextDocument).toHaveBeenCalledOnce();
    expect(seen.messages).toEqual(['Keep a copy.']);
  });

  test('is not put into a text that has gone on', async () => {
    await record(serverWith({ [RECORD]: { ...made, edit: edit(7) } }).server, said);
    expect(texts()).toEqual([]);
    expect(seen.messages[0]).toMatch(/edited meanwhile/);
  });

  test('that is refused changes nothing', async () => {
    await record(serverWith({ [RECORD]: { refused: 'That cannot be read.' } }).server, said);
    expect([texts(), seen.messages]).toEqual([[], ['That cannot be read.']]);
  });
});

describe('new texts are not saved before the reader has seen them', () => {
  const NEXT_MADE = {
    text: 'perpend 1',
    cleared: ['client'],
    rates: [],
    before: '£1',
    after: '£2',
  };

  test('a job from a past one, under a name that is free', async () => {
    seen.files.set('file:///jobs/job-next.perp', new Uint8Array());
    const { server, asked } = serverWith({ [NEXT]: NEXT_MADE });
    await next(server, { uri: JOB, client: 'Quillbank' });
    expect(asked[0]!.params).toMatchObject({
      to: 'file:///jobs/job-next-2.perp',
      client: 'Quillbank',
    });
    expect(texts()).toEqual([['untitled:///jobs/job-next-2.perp', 'perpend 1']]);
    expect(seen.files.size).toBe(1);
    expect(seen.messages[0]).toContain('£2');
  });

  test('a copy for a partner, under a name that does not tell whose job it is', async () => {
    const made = {
      text: 'perpend 1',
      name: 'job-for-halden.perp',
      left: [{ what: 'prices', count: 3 }],
      replaced: [],
      asides: [],
    };
    const { server, asked } = serverWith({ [SHARE]: made });
    await share(server, { uri: JOB, whom: 'Halden', without: 'money', client: false });
    expect(asked[0]!.params).toEqual({ uri: JOB, whom: 'Halden', without: 'money', client: false });
    expect(texts()).toEqual([['untitled:///jobs/job-for-halden.perp', 'perpend 1']]);
    expect(seen.messages).toEqual(['Left out: prices: 3.']);
  });

  test('a job from a template', async () => {
    const template = { name: 'garden-wall', title: 'Garden wall', asks: [] };
    const made = { text: 'perpend 1', wrong: [], firm: '../firm.perp', price: '£3', missing: [] };
    const { server, asked } = serverWith({ [TEMPLATES]: [template], [NEW]: made });
    const answers = [{ what: 'wall', line: 'length', answer: '7 m' }];
    await newJob(server, { template: 'garden-wall', answers, folder: 'file:///jobs/b' });
    expect(asked[1]!.params).toEqual({
      template: 'garden-wall',
      to: 'file:///jobs/b/garden-wall.perp',
      answers,
    });
    expect(texts()).toEqual([['untitled:///jobs/b/garden-wall.perp', 'perpend 1']]);
    expect(seen.messages[0]).toContain('It comes to £3.');
  });
});

test('a template of the firm is the file that is named: its server is told of it', async () => {
  const name = 'file:///jobs/our%20wall.perp';
  const made = { text: 'perpend 1', wrong: [], firm: '../firm.perp', price: '£3', missing: [] };
  const template = { name, title: 'Our wall', asks: [] };
  const { server, asked } = serverWith({ [TEMPLATES]: [template], [NEW]: made });
  await newJob(server, { template: name, answers: [], folder: 'file:///jobs/b' });
  expect(asked.map(({ params }) => params)).toEqual([
    { uri: name },
    { template: name, to: 'file:///jobs/b/our%20wall.perp', answers: [] },
  ]);
});

test('what a partner’s copy says is taken in as an edit', async () => {
  const made = {
    edit: edit(),
    taken: [{ block: 'wall north', under: [], change: 'new', after: 'x' }],
    refused: 2,
    ours: [],
    offered: [],
  };
  const { server, asked } = serverWith({ [TAKE]: made });
  const back = 'file:///jobs/back.perp';
  const theirs = 'perpend 1\n# what came back';
  const opens = workspace.openTextDocument.getMockImplementation()!;
  workspace.openTextDocument.mockImplementation(async (uri) => ({
    ...(await opens(uri)),
    getText: () => (uri.toString() === back ? theirs : ''),
  }));
  await take(server, { uri: JOB, theirs: back, names: ['north'], rates: false });
  // The server reads no file of theirs: it is handed the text.
  expect(asked[0]!.params).toEqual({ uri: JOB, theirs, names: ['north'], rates: false });
  expect(texts()).toEqual([[JOB, 'record\n']]);
  expect(seen.messages[0]).toMatch(/Taken: one line.*Not taken: 2/);
});
