import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { nameOf, ourTask, wordsFor } from '../../client/tasks/definition';
import { registerTasks } from '../../client/tasks/tasks';
import { root } from '../tree';
import { forget, tasks, Uri, workspace } from './vscode';

vi.mock('vscode', () => import('./vscode'));

const CHECK = { type: 'perpend', task: 'check' };
const WRITE = { type: 'perpend', task: 'write', paper: 'quote', file: 'a/job.perp' };

describe('a task', () => {
  test.each([
    [CHECK, ['check', '--lines', '.']],
    [{ ...CHECK, path: 'a' }, ['check', '--lines', 'a']],
    [WRITE, ['quote', 'a/job.perp', '--as', 'pdf', '--out', 'a/job-quote.pdf']],
    [{ ...WRITE, form: 'md', out: 'q.md' }, ['quote', 'a/job.perp', '--as', 'md', '--out', 'q.md']],
  ])('%o is these words', (given, words) => {
    expect(wordsFor(ourTask(given)!)).toEqual(words);
  });

  test.each([
    { type: 'shell', task: 'check' },
    { type: 'perpend', task: 'clean' },
    { ...CHECK, path: '--json' },
    { ...CHECK, path: 7 },
    { ...WRITE, paper: 'check' },
    { ...WRITE, paper: 'constructor' },
    { ...WRITE, file: '' },
    { ...WRITE, file: '-' },
    { ...WRITE, form: 'exe' },
    { ...WRITE, out: '--workspace=/' },
  ])('%o is none of ours', (given) => {
    expect(ourTask(given)).toBeUndefined();
  });

  test('is called by what it does', () => {
    expect(nameOf(ourTask(CHECK)!)).toBe('check all jobs');
    expect(nameOf(ourTask(WRITE)!)).toBe('write quote of a/job.perp');
  });
});

describe('where a task may run', () => {
  const node = '/usr/bin/node';
  const given = (definition: object) =>
    ({ definition, name: 'check all jobs', scope: workspace.workspaceFolders![0] }) as never;
  const provider = (trusted: boolean) => {
    forget();
    Object.assign(workspace, { isTrusted: trusted });
    const register = vi.spyOn(tasks, 'registerTaskProvider');
    registerTasks({ extensionUri: Uri.file('/ext'), subscriptions: [] } as never, node);
    const made = (register.mock.calls as unknown[][]).at(-1)![1];
    register.mockRestore();
    return made as { provideTasks(): unknown[]; resolveTask(task: never): unknown };
  };

  test('a folder that is trusted', () => {
    const tasks = provider(true);
    expect(tasks.provideTasks()).toHaveLength(1);
    expect(tasks.resolveTask(given(CHECK))).toBeDefined();
  });

  test('and no other: neither offered nor resolved', () => {
    const tasks = provider(false);
    expect(tasks.provideTasks()).toEqual([]);
    expect(tasks.resolveTask(given(CHECK))).toBeUndefined();
  });
});

describe('the problem matcher', () => {
  const manifest = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
  const [pattern] = manifest.contributes.problemPatterns;
  const match = (line: string) => {
    const found = new RegExp(pattern.regexp).exec(line);
    return (
      found &&
      [
        pattern.file,
        pattern.line,
        pattern.column,
        pattern.severity,
        pattern.code,
        pattern.message,
      ].map((n: number) => found[n])
    );
  };

  test.each([
    [
      'a/job.perp:12:3 error line-unknown: No line.',
      ['a/job.perp', '12', '3', 'error', 'line-unknown', 'No line.'],
    ],
    [
      'C:\\jobs\\b.perp:1:1 note caution-x: A: b: c',
      ['C:\\jobs\\b.perp', '1', '1', 'note', 'caution-x', 'A: b: c'],
    ],
    ['my wall.perp:1:10 hint x: y', ['my wall.perp', '1', '10', 'hint', 'x', 'y']],
  ])('%s', (line, parts) => {
    expect(match(line)).toEqual(parts);
  });

  test.each([
    '3 errors in 2 files',
    '    see a.perp:1:2: The line',
    'perpend: a.perp cannot be read',
  ])('is not misled by %s', (line) => {
    expect(match(line)).toBeNull();
  });
});
