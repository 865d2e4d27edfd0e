import { beforeEach, describe, expect, test, vi } from 'vitest';
import { pageChoices } from '../../client/papers/choose';
import { folderOf, save } from '../../client/papers/save';
import { openFile, revealFile } from '../../client/papers/written';
import { base64 } from '../../shared/base64';
import { EXPORT, type Exported, PAGES, type PageItem } from '../../shared/protocol/pages';
import { serverWith } from './server';
import { env, forget, reader, seen, UIKind, Uri, window, workspace } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

const JOB = 'file:///jobs/a/job.perp';
const MADE: Exported = {
  name: 'Quote 26-041.pdf',
  type: 'application/pdf',
  base64: base64(new TextEncoder().encode('%PDF paper')),
  asides: ['No number of tax is given.'],
};
const item = (more: Partial<PageItem>): PageItem => ({
  kind: 'quote',
  title: 'Quote',
  about: 'For the client.',
  reader: 'client',
  forms: ['pdf', 'html'],
  works: [],
  ...more,
});
const ITEMS = [
  item({}),
  item({ kind: 'price', title: 'Price', reader: 'firm', forms: ['json'] }),
  item({ kind: 'invoice', title: 'Invoice', why: 'Nothing was accepted.' }),
];
const answers = { [EXPORT]: MADE, [PAGES]: ITEMS };
const text = (uri: string) => new TextDecoder().decode(seen.files.get(uri));

describe('saving a paper', () => {
  test('what is said is not asked for, and the file is what the server made', async () => {
    const { server, asked } = serverWith(answers);
    const to = 'file:///out/q.pdf';
    const file = await save(server, { uri: JOB, page: 'quote', form: 'pdf', to });
    expect(String(file)).toBe(to);
    expect(text(to)).toBe('%PDF paper');
    expect(asked).toEqual([
      { method: EXPORT, params: { uri: JOB, page: 'quote', form: 'pdf', options: undefined } },
    ]);
    expect(seen.picks).toEqual([]);
  });

  test('else the reader says which, in which form and where, beside the job at first', async () => {
    reader.answers = ['Quote', 'PDF'];
    reader.saves = Uri.parse('file:///jobs/a/q.pdf');
    await save(serverWith(answers).server, { uri: JOB });
    expect(window.showSaveDialog.mock.lastCall?.[0]).toMatchObject({
      defaultUri: expect.objectContaining({ path: '/jobs/a/Quote 26-041.pdf' }),
    });
    expect(text('file:///jobs/a/q.pdf')).toBe('%PDF paper');
  });

  test('one message tells of it, with what the firm should know', async () => {
    await save(serverWith(answers).server, {
      uri: JOB,
      page: 'quote',
      form: 'pdf',
      to: 'file:///jobs/q.pdf',
    });
    const told = ['q.pdf is written. No number of tax is given.'];
    await vi.waitFor(() => expect(seen.messages).toEqual(told));
  });

  test.each([
    ['turns away from the list', [undefined]],
    ['turns away from the forms', ['Quote', undefined]],
    ['turns away from the place', ['Quote', 'PDF']],
  ])('nothing is written when the reader %s', async (_, said) => {
    reader.answers = said;
    expect(await save(serverWith(answers).server, { uri: JOB })).toBeUndefined();
    expect(seen.files.size).toBe(0);
  });

  test('what there is none of says why', async () => {
    await save(serverWith(answers).server, { uri: JOB, page: 'invoice' });
    expect(seen.messages).toEqual(['Nothing was accepted.']);
  });

  test('what is refused is told, and nothing is written', async () => {
    const refused = { ...answers, [EXPORT]: { refused: 'The price is not complete.' } };
    await save(serverWith(refused).server, {
      uri: JOB,
      page: 'quote',
      form: 'pdf',
      to: 'file:///q.pdf',
    });
    expect([seen.messages, seen.files.size]).toEqual([['The price is not complete.'], 0]);
  });

  test.each([
    ['NoPermissions', 'q.pdf may not be written there.'],
    ['FileIsADirectory', 'q.pdf is a folder: nothing is written over it.'],
    [undefined, 'q.pdf could not be written: Error: full'],
  ])('a place that takes nothing (%s) is told, and another can be chosen', async (code, said) => {
    const write = vi.spyOn(workspace.fs, 'writeFile');
    write.mockRejectedValueOnce(Object.assign(new Error('full'), { code }));
    reader.answers = ['Save Elsewhere…'];
    reader.saves = Uri.parse('file:///jobs/b.pdf');
    const file = await save(serverWith(answers).server, {
      uri: JOB,
      page: 'quote',
      form: 'pdf',
      to: 'file:///jobs/q.pdf',
    });
    write.mockRestore();
    expect(String(file)).toBe('file:///jobs/b.pdf');
    expect(seen.messages[0]).toBe(said);
    expect([...seen.files.keys()]).toEqual(['file:///jobs/b.pdf']);
  });

  test('of a file that is no job nothing is asked', async () => {
    const { server, asked } = serverWith(answers);
    await save(server, { uri: 'file:///jobs/notes.txt' });
    expect([asked, seen.messages.length]).toEqual([[], 1]);
  });

  test('a job that is not saved puts it into the folder that is open', () => {
    const document = { uri: Uri.parse('untitled:/x.perp'), isUntitled: true };
    expect(folderOf(document as never).path).toBe('/jobs');
  });
});

describe('the list', () => {
  const rows = pageChoices(ITEMS);

  test('stands under who reads it, and tells the firm’s own apart', () => {
    expect(rows.map(({ label }) => label)).toEqual([
      'For the client: no costs',
      'Quote',
      'For the firm itself',
      'Price',
    ]);
  });
});

describe('after it', () => {
  const pdf = Uri.parse('file:///jobs/q.pdf');

  test('a paper opens with what the machine opens it with', async () => {
    await openFile(pdf as never);
    expect(seen.opened).toEqual(['outside file:///jobs/q.pdf']);
  });

  test.each([
    ['on another machine', { remoteName: 'ssh', uiKind: UIKind.Desktop }],
    ['in a browser', { remoteName: undefined, uiKind: UIKind.Web }],
  ])('%s the editor opens it, and shows it in its own list of files', async (_, where) => {
    Object.assign(env, where);
    await openFile(pdf as never);
    await revealFile(pdf as never);
    expect(seen.opened).toEqual([]);
    expect(seen.ran.map(({ command }) => command)).toEqual(['vscode.open', 'revealInExplorer']);
  });

  test('on this machine it is shown in the file manager', async () => {
    await revealFile(pdf as never);
    expect(seen.ran.map(({ command }) => command)).toEqual(['revealFileInOS']);
  });
});
