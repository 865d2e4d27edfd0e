/** “See it drawn” of the first steps is done when a preview is there, whoever opened it. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Previews, SEEN } from '../../client/preview';
import { root } from '../tree';
import { EventEmitter, forget, seen, Uri, window } from './vscode';

vi.mock('vscode', () => import('./vscode'));

const JOB = 'file:///jobs/job.perp';
type Restores = { deserializeWebviewPanel(panel: unknown, state: unknown): Promise<void> };
let restores: Restores;
let previews: Previews;

const panel = () => ({
  webview: {
    onDidReceiveMessage: new EventEmitter<unknown>().event,
    postMessage: () => undefined,
    cspSource: 'page:',
    asWebviewUri: (uri: Uri) => uri,
  },
  visible: true,
  onDidChangeViewState: new EventEmitter<unknown>().event,
  onDidDispose: new EventEmitter<unknown>().event,
  dispose: () => undefined,
});

beforeEach(() => {
  forget();
  Object.assign(window, {
    createWebviewPanel: panel,
    registerWebviewPanelSerializer: (_: string, given: Restores) => {
      restores = given;
      return { dispose: () => undefined };
    },
  });
  const server = { uri: String, onChanged: new EventEmitter<unknown>().event };
  const context = { extensionUri: Uri.parse('file:///extension') };
  previews = new Previews(context as never, server as never, async () => undefined);
});
afterEach(() => {
  previews.dispose();
  for (const each of ['createWebviewPanel', 'registerWebviewPanelSerializer'])
    Reflect.deleteProperty(window, each);
});

const told = () => seen.ran.filter(({ command }) => command === 'setContext');
const IS_SEEN = { command: 'setContext', given: [SEEN, true] };

describe('a preview counts as seen', () => {
  test('opened by another command than its own, such as one for a paper', () => {
    expect(told()).toEqual([]);
    previews.open({ uri: JOB, show: 'quote' });
    expect(told()).toEqual([IS_SEEN]);
  });

  test('brought back with the window', async () => {
    await restores.deserializeWebviewPanel(panel(), { uri: JOB, show: 'front', pinned: false });
    expect(told()).toEqual([IS_SEEN]);
  });

  test('but not where none could be opened', async () => {
    previews.open();
    await restores.deserializeWebviewPanel(panel(), { uri: 7 });
    expect(told()).toEqual([]);
  });
});

test('the first steps look for it, and each step is ended by a command there is or by what we say', () => {
  const { contributes } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
  const commands = contributes.commands.map((each: { command: string }) => each.command);
  const [{ steps }] = contributes.walkthroughs;
  const ends: string[] = steps.flatMap((s: { completionEvents: string[] }) => s.completionEvents);
  expect(ends).toContain(`onContext:${SEEN}`);
  const known = [SEEN, ...commands];
  expect(ends.filter((end) => !known.includes(end.replace(/^on(Command|Context):/, '')))).toEqual(
    [],
  );
});
