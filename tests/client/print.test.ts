import { beforeEach, expect, test, vi } from 'vitest';
import { printer } from '../../client/preview/print';
import { EXPORT, PAGES } from '../../shared/protocol/pages';
import { serverWith } from './server';
import { env, forget, seen, UIKind, Uri } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

const JOB = Uri.parse('file:///jobs/job.perp');
const ITEMS = [
  { kind: 'quote', forms: ['md', 'html', 'pdf'] },
  { kind: 'drawing', forms: ['svg', 'dxf'] },
  { kind: 'buying', forms: ['csv'] },
];
const MADE = { name: 'North.svg', base64: 'QQ==', asides: [] };

function printing(home = 'file:///home/print') {
  const stub = serverWith({ [PAGES]: ITEMS, [EXPORT]: MADE });
  const print = printer({ globalStorageUri: Uri.parse(home) } as never, stub.server);
  return {
    ...stub,
    print: (show: string, work?: string) => print({ uri: JOB as never, show, work }),
  };
}

test('on the reader’s own machine: a file that prints is written, and the machine opens it', async () => {
  const { print, asked } = printing();
  await print('plan', 'wall north');
  const options = { work: 'north', view: 'plan' };
  expect(asked.at(-1)!.params).toEqual({ uri: String(JOB), page: 'drawing', form: 'svg', options });
  expect([...seen.files.keys()]).toEqual(['file:///home/print/print/North.svg']);
  expect(seen.opened).toEqual(['outside file:///home/print/print/North.svg']);
});

test('a paper is printed in the form that prints best', async () => {
  const { print, asked } = printing();
  await print('quote', 'wall north');
  expect(asked.at(-1)!.params).toEqual({ uri: String(JOB), page: 'quote', form: 'pdf' });
});

test.each([
  ['in a browser', () => Object.assign(env, { uiKind: UIKind.Web })],
  ['on another machine', () => Object.assign(env, { remoteName: 'ssh' })],
])('%s it is saved where the reader says instead', async (_, set) => {
  set();
  await printing().print('quote');
  const given = { uri: JOB, page: 'quote', form: 'pdf' };
  expect(seen.ran).toEqual([{ command: 'perpend.save', given: [given] }]);
  expect([seen.opened, [...seen.files]]).toEqual([[], []]);
});

test.each(['buying', 'constructor', 'invoice'])(
  '%s: nothing prints, and that is told',
  async (show) => {
    await printing().print(show);
    expect(seen.messages).toEqual(['There is nothing to print.']);
  },
);
