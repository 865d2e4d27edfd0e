import { expect, test, vi } from 'vitest';
import { renamedTo } from '../../client/preview/editors';
import { Uri } from './vscode';

vi.mock('vscode', () => import('./vscode'));

const JOB = Uri.parse('file:///jobs/a/job.perp');
const renamed = (from: string, to: string) =>
  renamedTo(JOB as never, [
    { oldUri: Uri.parse(from) as never, newUri: Uri.parse(to) as never },
  ])?.toString();

test.each([
  ['the file itself', 'file:///jobs/a/job.perp', 'file:///jobs/a/wall.perp', '/jobs/a/wall.perp'],
  ['a folder it is in', 'file:///jobs/a', 'file:///jobs/b', '/jobs/b/job.perp'],
  ['a folder over that', 'file:///jobs', 'file:///old', '/old/a/job.perp'],
])('a preview goes along when %s is renamed', (_, from, to, now) => {
  expect(renamed(from, to)).toBe(`file://${now}`);
});

test.each([
  ['file:///jobs/a/job.perp.bak', 'file:///jobs/x'],
  ['file:///jobs/a/job', 'file:///jobs/x'],
  ['memfs:///jobs/a/job.perp', 'memfs:///jobs/x'],
])('and stays where %s is', (from, to) => {
  expect(renamed(from, to)).toBeUndefined();
});
