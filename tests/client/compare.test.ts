import { beforeEach, describe, expect, test, vi } from 'vitest';
import * as compare from '../../client/compare/commands';
import { type Repository, repositoryOf } from '../../client/compare/git';
import { Sides } from '../../client/compare/sides';
import type { MarkdownPages } from '../../client/markdown-pages';
import { COMPARE, type Compared, USED } from '../../shared/protocol/compare';
import { serverWith } from './server';
import { extensions, forget, happens, reader, seen, Uri } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

const JOB = Uri.parse('file:///jobs/job.perp');
const COMPARED: Compared = {
  nothing: false,
  labels: { left: 'Orchard, last commit', right: 'Orchard, now' },
  left: 'Price\u00a0£1',
  right: 'Price £2',
  page: {
    kind: 'compare',
    title: 'What changed',
    lang: 'en',
    html: '',
    markdown: '# What changed',
    asides: [],
  },
};
const COMMITS = [
  {
    hash: 'aaaaaaaaaa',
    message: 'Raise the wall\n\nby a course',
    authorDate: new Date('2026-03-03'),
  },
  { hash: 'bbbbbbbbbb', message: 'First', authorDate: new Date('2026-03-02') },
];

/** What stands in each revision, by path. */
const TEXTS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  HEAD: { '/jobs/job.perp': 'perpend 1\n# head', '/jobs/firm.perp': 'perpend 1\n# firm' },
  aaaaaaaaaa: { '/jobs/job.perp': 'perpend 1\n# a', '/jobs/firm.perp': 'perpend 1\n# firm of a' },
  bbbbbbbbbb: { '/jobs/job.perp': 'perpend 1\n# b' },
};

const repository: Repository = {
  rootUri: Uri.file('/jobs') as never,
  state: { indexChanges: [] },
  log: async () => COMMITS,
  getCommit: async (ref) => {
    const commit = COMMITS.find(({ hash }) => hash.startsWith(ref));
    if (!commit) throw new Error('unknown');
    return commit;
  },
  show: async (ref, path) => {
    const text = TEXTS[ref]?.[path];
    if (text === undefined) throw new Error('not there');
    return text;
  },
};

function withGit(api: object, enabled = true): void {
  const git = { enabled, getAPI: () => api };
  extensions.getExtension.mockReturnValue({ activate: async () => git, exports: git });
}

const API = { state: 'initialized', getRepository: () => repository };

function bench(answers: Readonly<Record<string, unknown>> = {}) {
  const stub = serverWith({ [COMPARE]: COMPARED, [USED]: ['file:///jobs/firm.perp'], ...answers });
  const show = vi.fn(async (_title: string, _markdown: string) => Uri.parse('x:/y'));
  const pages = { show } as unknown as MarkdownPages;
  const sides = new Sides(stub.server, pages);
  return { ...stub, sides, show };
}

const before = (stub: ReturnType<typeof bench>) =>
  stub.asked.find(({ method }) => method === COMPARE)?.params.before;

describe('where there is no git', () => {
  test.each([
    ['no extension', () => extensions.getExtension.mockReturnValue(undefined), /has no git here/],
    ['switched off', () => withGit(API, false), /git\.enabled/],
    ['no repository', () => withGit({ ...API, getRepository: () => null }), /no git repository/],
  ])('%s: it is said plainly', async (_, set, said) => {
    set();
    expect(await repositoryOf(JOB as never)).toMatch(said);
    await compare.withLastCommit(bench(), JOB);
    expect(seen.messages).toEqual([expect.stringMatching(said)]);
    expect(seen.ran).toEqual([]);
  });

  test('a file of another machine stands in none', async () => {
    withGit(API);
    expect(await repositoryOf(Uri.parse('vscode-vfs://github/x.perp') as never)).toMatch(
      /no repository/,
    );
  });

  test('what was sent can still be read from the record', async () => {
    extensions.getExtension.mockReturnValue(undefined);
    const stub = bench({ [COMPARE]: { ...COMPARED, left: '', right: '' } });
    await compare.withSent(stub, JOB);
    expect(before(stub)).toEqual({ sent: [] });
    expect(stub.show).toHaveBeenCalledWith('What changed', '# What changed');
  });

  test('that nothing was sent is told, and not that there is no git', async () => {
    extensions.getExtension.mockReturnValue(undefined);
    await compare.withSent(bench({ [COMPARE]: { refused: 'Nothing was sent.' } }), JOB);
    expect(seen.messages).toEqual(['Nothing was sent.']);
  });
});

describe('with the last commit', () => {
  beforeEach(() => withGit(API));

  test('the job and what it uses are taken from it', async () => {
    const stub = bench();
    await compare.withLastCommit(stub, JOB);
    expect(before(stub)).toEqual({
      text: 'perpend 1\n# head',
      label: 'last commit',
      files: { 'file:///jobs/firm.perp': 'perpend 1\n# firm' },
    });
  });

  test('the two are put side by side, by meaning, under their names', async () => {
    const stub = bench();
    await compare.withLastCommit(stub, JOB);
    const [{ command, given }] = seen.ran as [{ command: string; given: [Uri, Uri, string] }];
    expect([command, given[2]]).toEqual(['vscode.diff', 'Orchard, last commit ↔ Orchard, now']);
    const texts = given
      .slice(0, 2)
      .map((side) => stub.sides.provideTextDocumentContent(side as never));
    expect(texts).toEqual(['Price £1', 'Price £2']);
    // What tells of a job is none: it would be checked as one.
    for (const side of given.slice(0, 2) as Uri[]) expect(side.path).toMatch(/\.txt$/);
  });

  test('the page tells what moved the price', async () => {
    const stub = bench();
    await compare.withLastCommit(stub, JOB);
    await stub.sides.showPage(seen.ran[0]!.given[1]);
    expect(stub.show).toHaveBeenCalledWith('What changed', '# What changed');
  });

  test('what the server refuses is told, and nothing is shown', async () => {
    const stub = bench({ [COMPARE]: { refused: 'It cannot be read.' } });
    await compare.withLastCommit(stub, JOB);
    expect([seen.messages, seen.ran]).toEqual([['It cannot be read.'], []]);
  });

  test('a job that is not committed yet says so', async () => {
    withGit({
      ...API,
      getRepository: () => ({ ...repository, show: async () => Promise.reject(new Error('no')) }),
    });
    await compare.withLastCommit(bench(), JOB);
    expect(seen.messages).toEqual([
      expect.stringMatching(/^The last commit does not hold this job/),
    ]);
  });

  test('a job that git was told to move is found under the name it had', async () => {
    const change = { originalUri: JOB as never, renameUri: Uri.file('/jobs/moved.perp') as never };
    const moved = { ...repository, state: { indexChanges: [change] } };
    withGit({ ...API, getRepository: () => moved });
    const stub = bench();
    await compare.withLastCommit(stub, Uri.file('/jobs/moved.perp'));
    expect(before(stub)).toMatchObject({ text: 'perpend 1\n# head' });
  });

  test('what is typed counts, in whichever file of a job, and in one that was opened again', async () => {
    vi.useFakeTimers();
    const stub = bench();
    await compare.withLastCommit(stub, JOB);
    const told: string[] = [];
    stub.sides.onDidChange((uri) => told.push(uri.fragment));
    happens.edit.fire({
      document: { uri: Uri.parse('file:///jobs/firm.perp'), languageId: 'perpend' },
    });
    happens.edit.fire({
      document: { uri: Uri.parse('file:///jobs/a.txt'), languageId: 'plaintext' },
    });
    await vi.advanceTimersByTimeAsync(2000);
    expect(told).toEqual(['left', 'right']);
    vi.useRealTimers();
    stub.sides.dispose();
  });
});

test('with a file: both are told by their ways, since jobs often have one name', async () => {
  seen.files.set('file:///jobs/old/job.perp', new Uint8Array());
  seen.files.set(JOB.toString(), new Uint8Array());
  reader.answers = ['old/job.perp'];
  const stub = bench();
  await compare.withFile(stub, JOB);
  expect(before(stub)).toEqual({ file: 'file:///jobs/old/job.perp' });
  expect(seen.picks[0]!.items).toHaveLength(1);
  expect(seen.ran[0]!.given[2]).toBe('old/job.perp ↔ job.perp');
});

describe('with another revision', () => {
  beforeEach(() => withGit(API));

  test('those that changed the job are offered, the newest first', async () => {
    reader.answers = ['First'];
    const stub = bench();
    await compare.withAnother(stub, JOB);
    const labels = seen.picks[0]!.items.map((item) => (item as { label: string }).label);
    expect(labels).toEqual(['Raise the wall', 'First', 'Another Revision…']);
    expect(before(stub)).toEqual({
      text: 'perpend 1\n# b',
      label: 'bbbbbbb, 2026-03-02',
      files: {},
    });
  });

  test('the words of a commit draw no picture, and a day is that of the place', async () => {
    const authorDate = new Date(2026, 2, 2, 0, 30);
    const log = async () => [{ hash: 'cccccccccc', message: '$(flame) warm', authorDate }];
    withGit({ ...API, getRepository: () => ({ ...repository, log }) });
    await compare.withAnother(bench(), JOB);
    const [item] = seen.picks[0]!.items as { label: string; description: string }[];
    expect(item!.label).not.toContain('$(');
    expect(item!.description).toBe('ccccccc, 2026-03-02');
  });

  test('who turns away compares nothing', async () => {
    const stub = bench();
    await compare.withAnother(stub, JOB);
    expect(before(stub)).toBeUndefined();
  });
});

describe('with what was sent', () => {
  beforeEach(() => withGit(API));

  test('the server finds it among all revisions, and what it used is fetched', async () => {
    const stub = bench({ [COMPARE]: { ...COMPARED, took: 0 } });
    await compare.withSent(stub, JOB);
    const asked = stub.asked
      .filter(({ method }) => method === COMPARE)
      .map(({ params }) => params.before);
    expect(asked).toEqual([
      {
        sent: [
          { text: 'perpend 1\n# a', label: 'aaaaaaa, 2026-03-03' },
          { text: 'perpend 1\n# b', label: 'bbbbbbb, 2026-03-02' },
        ],
      },
      {
        text: 'perpend 1\n# a',
        label: 'sent, aaaaaaa, 2026-03-03',
        files: { 'file:///jobs/firm.perp': 'perpend 1\n# firm of a' },
      },
    ]);
  });

  test('where no revision holds it, the page tells what the record keeps', async () => {
    const stub = bench({ [COMPARE]: { ...COMPARED, left: '', right: '' } });
    await compare.withSent(stub, JOB);
    expect(stub.show).toHaveBeenCalledWith('What changed', '# What changed');
    expect([seen.messages, seen.ran]).toEqual([[], []]);
  });

  test('where nothing was sent, that is told', async () => {
    const stub = bench({ [COMPARE]: { refused: 'Nothing was sent.' } });
    await compare.withSent(stub, JOB);
    expect([seen.messages, seen.ran]).toEqual([['Nothing was sent.'], []]);
  });
});
