/** What the preview shows when its reader goes on before an answer is there. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { PreviewPanel } from '../../client/preview/panel';
import type { PreviewParams, Shown } from '../../shared/protocol/preview';
import { EventEmitter, forget, happens, Uri } from './vscode';

vi.mock('vscode', () => import('./vscode'));

const JOB = Uri.parse('file:///jobs/job.perp');
const OTHER = Uri.parse('file:///jobs/other.perp');
const FIRM = Uri.parse('file:///jobs/firm.perp');

/** Two pieces of work: a wall in the first ten lines, a pier in the ten after them. */
function shownFor({ uri, line, show, work, pinned }: PreviewParams): Shown {
  const key = pinned && work ? work : line < 10 ? 'wall' : 'pier';
  const first = key === 'wall' ? 0 : 10;
  return {
    version: 1,
    show,
    work: key,
    title: `${key} ${show} of ${uri}`,
    described: '',
    choices: [],
    works: uri === FIRM.toString() ? [] : [{ key, label: key, line: first }],
    from: [{ line: first, last: first + 9, label: key }],
    picture: {
      is: `${key} ${show}`,
      width: 1,
      height: 1,
      parts: {},
      order: [],
      units: 'millimetres',
      keys: [],
      notes: [],
    },
  };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

/** A panel whose server answers when it is told to, in any order. */
function opened() {
  const heard = new EventEmitter<unknown>();
  const posted: { say: string; shown?: Shown; line?: number }[] = [];
  const webview = {
    onDidReceiveMessage: heard.event,
    postMessage: (message: (typeof posted)[number]) => posted.push(message),
    cspSource: 'page:',
    asWebviewUri: (uri: Uri) => uri,
  };
  const panel = { webview, visible: true, onDidChangeViewState: () => ({ dispose() {} }) };
  const waiting: (() => void)[] = [];
  const asked: PreviewParams[] = [];
  const ask = (_: string, params: PreviewParams) => {
    asked.push(params);
    return new Promise((resolve) => waiting.push(() => resolve(shownFor(params))));
  };
  const server = { ask, uri: String, onChanged: () => ({ dispose() {} }) };
  const made = new PreviewPanel(
    panel as never,
    server as never,
    Uri.parse('file:///extension') as never,
    async () => undefined,
    { uri: JOB as never, line: 0 },
  );
  const hear = async (message: object) => {
    heard.fire(message);
    await settled();
  };
  const answer = async () => {
    waiting.shift()?.();
    await settled();
  };
  const answerAll = async () => {
    while (waiting.length > 0) await answer();
  };
  const titles = () => posted.flatMap(({ shown }) => shown?.title ?? []);
  return { panel: made, hear, answer, answerAll, titles, asked, posted, waiting };
}

type Opened = ReturnType<typeof opened>;
let on: Opened;

const cursor = async (line: number, uri = JOB) => {
  const document = { uri, languageId: 'perpend' };
  happens.selection.fire({ textEditor: { document, selection: { active: { line } } } });
  await settled();
};

beforeEach(async () => {
  forget();
  on = opened();
  await on.hear({ say: 'ready', room: { width: 100, height: 100 } });
  await on.answerAll();
});
afterEach(() => on.panel.dispose());

test('it shows the wall of the line', () => {
  expect(on.titles()).toEqual([`wall front of ${JOB}`]);
});

test('a page that is chosen while another is worked out is shown, and the other is not', async () => {
  happens.edit.fire({ document: { uri: JOB } });
  await settled();
  await on.hear({ say: 'show', show: 'plan' });
  await on.answerAll();
  expect(on.titles().slice(1)).toEqual([`wall plan of ${JOB}`]);
  expect(on.panel.shows.show).toBe('plan');
});

test('work that is chosen while another answer is on its way stays chosen', async () => {
  happens.edit.fire({ document: { uri: JOB } });
  await settled();
  await on.hear({ say: 'work', work: 'pier' });
  await on.answerAll();
  expect(on.titles().at(-1)).toBe(`pier front of ${JOB}`);
  expect(on.panel.shows).toMatchObject({ work: 'pier', pinned: true });
});

test('a page that wants the whole is not sent a change that was on its way', async () => {
  happens.edit.fire({ document: { uri: JOB } });
  await settled();
  expect(on.asked.at(-1)?.have).toBe('wall front');
  const before = on.titles().length;
  await on.hear({ say: 'again' });
  await on.answer();
  expect(on.titles()).toHaveLength(before);
  expect(on.asked.at(-1)?.have).toBeUndefined();
  await on.answerAll();
  expect(on.titles()).toHaveLength(before + 1);
});

test('a room of another size takes nothing back that is on its way', async () => {
  happens.edit.fire({ document: { uri: JOB } });
  await settled();
  await on.hear({ say: 'room', room: { width: 200, height: 100 } });
  await on.answer();
  expect(on.titles()).toHaveLength(2);
  await on.answerAll();
  expect(on.asked.at(-1)?.room.width).toBe(200);
});

test('a cursor that is back before the answer is there has its own work shown', async () => {
  await cursor(12);
  await cursor(3);
  await on.answerAll();
  expect(on.titles().at(-1)).toBe(`wall front of ${JOB}`);
});

test('a cursor that stands still is asked for once', async () => {
  await cursor(12);
  await on.answerAll();
  expect(on.asked.map(({ line }) => line)).toEqual([0, 12]);
});

test('of two files that come to the front the last is shown', async () => {
  await cursor(0, OTHER);
  await cursor(1, Uri.parse('file:///jobs/third.perp'));
  await on.answerAll();
  expect(on.panel.shows.uri.toString()).toBe('file:///jobs/third.perp');
});

test('a file that was left again before it was known what it shows is not shown', async () => {
  await cursor(0, OTHER);
  await cursor(4);
  await on.answerAll();
  expect(on.panel.shows.uri.toString()).toBe(JOB.toString());
});

test('a file with nothing to draw leaves what is shown', async () => {
  await cursor(0, FIRM);
  await on.answerAll();
  expect(on.titles()).toEqual([`wall front of ${JOB}`]);
});

test('nothing is told to a page that has gone', async () => {
  happens.edit.fire({ document: { uri: JOB } });
  await settled();
  const before = on.posted.length;
  on.panel.dispose();
  await on.answerAll();
  expect(on.posted).toHaveLength(before);
});
