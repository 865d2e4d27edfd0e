/** A file that a preview is of: deleted, and back again. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { comesAndGoes, isThere } from '../../client/preview/presence';
import { happens, TabInputText, Uri, window, workspace } from './vscode';

vi.mock('vscode', () => import('./vscode'));

const JOB = Uri.parse('file:///jobs/job.perp');
const OTHER = Uri.parse('file:///jobs/other.perp');
const { stat } = workspace.fs;

/** What a disk says of a file. */
function disk(code: string | undefined): void {
  workspace.fs.stat = async () => {
    if (code !== undefined) throw Object.assign(new Error(code), { code });
    return { type: 1, size: 1 };
  };
}

beforeEach(() => {
  window.tabGroups.all = [];
});
afterEach(() => {
  workspace.fs.stat = stat;
  window.tabGroups.all = [];
});

test('a file that the disk has is there, and one that it has not is gone', async () => {
  disk(undefined);
  expect(await isThere(JOB as never)).toBe(true);
  disk('FileNotFound');
  expect(await isThere(JOB as never)).toBe(false);
});

test('a disk that says nothing of it has not lost it', async () => {
  disk('Unavailable');
  expect(await isThere(JOB as never)).toBe(true);
});

test('what is in a tab, or was never saved, can still be drawn', async () => {
  disk('FileNotFound');
  window.tabGroups.all = [{ tabs: [{ input: new TabInputText(JOB) }] }];
  expect(await isThere(JOB as never)).toBe(true);
  expect(await isThere(OTHER as never)).toBe(false);
  expect(await isThere(Uri.parse('untitled:new.perp') as never)).toBe(true);
});

test('it is told of its own file, and of the tab that had it', () => {
  const told: string[] = [];
  let why = '';
  const listening = comesAndGoes(
    () => JOB as never,
    () => told.push(why),
  );
  const tab = (uri: Uri) => ({ closed: [{ input: new TabInputText(uri) }] });
  for (const uri of [OTHER, JOB]) {
    why = `deleted ${uri.path}`;
    happens.deleted.fire(uri);
    why = `created ${uri.path}`;
    happens.created.fire(uri);
    why = `closed ${uri.path}`;
    happens.tabs.fire(tab(uri));
  }
  listening.dispose();
  happens.deleted.fire(JOB);
  expect(told).toEqual(['deleted', 'created', 'closed'].map((each) => `${each} ${JOB.path}`));
});
