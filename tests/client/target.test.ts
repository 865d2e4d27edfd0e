/** Which job a command is about, whatever it was given. */
import { beforeEach, expect, test, vi } from 'vitest';
import { documentAt, documentOf } from '../../client/target';
import { forget, seen, Uri, workspace } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

const missing = () =>
  workspace.openTextDocument.mockImplementation(async () => {
    throw new Error('cannot open file:///x. Detail: Unable to read file');
  });

test.each([[{ uri: 'file:///jobs/gone.perp' }], [Uri.parse('file:///jobs/gone.perp')]])(
  'a file that is there no more is told plainly, and once',
  async (target) => {
    missing();
    expect(await documentOf(target)).toBeUndefined();
    expect(seen.messages).toEqual(['gone.perp cannot be opened.']);
  },
);

test('its name is no link', async () => {
  missing();
  await documentAt(Uri.parse('file:///jobs/[x](command:y).perp') as never);
  expect(seen.messages).toEqual(['[x] (command:y).perp cannot be opened.']);
});

test.each([undefined, null, 5, {}, { uri: 7 }])(
  'given %o, it is the job in front',
  async (target) => {
    expect(await documentOf(target)).toBeUndefined();
    expect(seen.messages).toEqual([expect.stringMatching(/^Open a job first/)]);
  },
);
