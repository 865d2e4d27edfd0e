/** Where a new file goes, and which job is meant, as somebody meets it who has no folder open and a page in front. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { newJob } from '../../client/deeds/new';
import { firmFile } from '../../client/first/firm';
import { documentOf, rememberFront } from '../../client/target';
import { NEW, TEMPLATES } from '../../shared/protocol/new';
import { serverWith } from './server';
import { forget, reader, seen, Uri, window, workspace } from './vscode';

vi.mock('vscode', () => import('./vscode'));

const file = (address: string) => ({
  uri: Uri.parse(address),
  languageId: 'perpend',
  isUntitled: address.startsWith('untitled:'),
  lineCount: 1,
});
const EXAMPLE = file('file:///u/globalStorage/perpend.perpend/examples/garden-wall/job.perp');
const FIRM = file('file:///jobs/firm.perp');
const inEditor = (document: unknown) => ({ document });

let closing: (document: unknown) => void = () => undefined;

beforeEach(() => {
  forget();
  workspace.workspaceFolders = undefined;
  vi.spyOn(workspace, 'onDidCloseTextDocument').mockImplementation(((tell: typeof closing) => {
    closing = tell;
    return { dispose: () => undefined };
  }) as never);
});
afterEach(() => {
  window.activeTextEditor = undefined;
  for (const document of [EXAMPLE, FIRM]) closing(document);
  vi.restoreAllMocks();
});

function front(document: unknown): void {
  window.activeTextEditor = inEditor(document);
  rememberFront();
}

const template = { name: 'garden-wall', title: 'Garden wall', asks: [] };
const made = { text: 'perpend 1', wrong: [], price: '£3', missing: ['no price is given for Lime'] };
const request = { template: 'garden-wall', answers: [] };

async function madeAt(more = {}): Promise<unknown> {
  const answers = { [TEMPLATES]: [template], [NEW]: { ...made, ...more } };
  const { server, asked } = serverWith(answers);
  await newJob(server, request);
  return (asked[1]!.params as { to: string }).to;
}

describe('a command asked for from a page that stands over the job', () => {
  test('is about the job that was in front last', async () => {
    front(FIRM);
    window.activeTextEditor = undefined;
    expect(await documentOf(undefined)).toBe(FIRM);
  });

  test('is refused once that job is closed', async () => {
    front(FIRM);
    window.activeTextEditor = undefined;
    closing(FIRM);
    expect(await documentOf(undefined)).toBeUndefined();
    expect(seen.messages[0]).toMatch(/Open a job first/);
  });
});

describe('a new job with no folder open', () => {
  test('goes beside the firm’s file in front', async () => {
    front(FIRM);
    expect(await madeAt()).toBe('file:///jobs/garden-wall.perp');
  });

  test('goes beside a firm’s file that is open, and never among the examples', async () => {
    workspace.textDocuments = [EXAMPLE, FIRM];
    front(EXAMPLE);
    expect(await madeAt()).toBe('file:///jobs/garden-wall.perp');
  });

  test('asks where, is saved there so that it finds its prices, and writes over nothing', async () => {
    reader.folder = Uri.parse('file:///mine');
    seen.files.set('file:///mine/garden-wall.perp', new Uint8Array());
    expect(await madeAt()).toBe('file:///mine/garden-wall-2.perp');
    const written = seen.files.get('file:///mine/garden-wall-2.perp');
    expect(new TextDecoder().decode(written)).toBe('perpend 1');
    expect(seen.files.get('file:///mine/garden-wall.perp')).toHaveLength(0);
  });

  test('is a text without an address when the reader does not say', async () => {
    const opened = vi
      .spyOn(workspace, 'openTextDocument')
      .mockImplementation(async () => FIRM as never);
    await madeAt();
    expect(opened.mock.calls).toEqual([[{ language: 'perpend', content: 'perpend 1' }]]);
    expect(seen.messages[0]).toMatch(/^No firm\.perp stands beside this job/);
  });

  test('without prices leads to them', async () => {
    front(FIRM);
    reader.answers = ['Your Firm’s Prices'];
    await madeAt();
    await Promise.resolve();
    expect(seen.ran.map(({ command }) => command)).toEqual(['perpend.firm']);
  });

  test('says what its price lacks', async () => {
    front(FIRM);
    await madeAt({ firm: 'firm.perp' });
    expect(seen.messages).toEqual([
      'It uses your firm’s file firm.perp. The price is not complete: no price is given for Lime.',
    ]);
  });
});

test('a firm’s file with no folder open goes where the reader says', async () => {
  reader.folder = Uri.parse('file:///mine');
  seen.files.set('file:///mine/firm.perp', new Uint8Array());
  const opened = vi
    .spyOn(workspace, 'openTextDocument')
    .mockImplementation(async () => FIRM as never);
  await firmFile({} as never);
  expect(String(opened.mock.calls[0]![0])).toBe('file:///mine/firm.perp');
});
