/** Which files a change outside concerns, of which an editor tells by a folder alone. */

import { expect, test } from 'vitest';
import { FileChangeType } from 'vscode-languageserver';
import { concerned } from '../../server/lsp/outside';

const FILES = ['/jobs/firm.perp', '/jobs/old/a.perp', '/jobs/old/deep/b.perp', 'C:\\j\\x\\c.perp'];
const known = {
  files: () => FILES,
  nameOf: (uri: string) => decodeURIComponent(uri.replace('file://', '')),
  uriOf: (name: string) => `file://${name}`,
};

const { Created: NEW, Changed: OTHER, Deleted: GONE } = FileChangeType;

test.each<[title: string, uri: string, type: FileChangeType, wanted: string[]]>([
  ['a file of ours that is gone', '/jobs/firm.perp', GONE, ['/jobs/firm.perp']],
  ['one that nobody has read', '/jobs/z.perp', NEW, ['/jobs/z.perp']],
  ['a picture', '/jobs/logo.PNG', GONE, ['/jobs/logo.PNG']],
  ['whatever has changed, as the client chose to tell', '/jobs/x.txt', OTHER, ['/jobs/x.txt']],
  [
    'a folder, with all that is in it',
    '/jobs/old',
    GONE,
    ['/jobs/old/a.perp', '/jobs/old/deep/b.perp'],
  ],
  ['one within it', '/jobs/old/deep', GONE, ['/jobs/old/deep/b.perp']],
  ['a name that only begins so', '/jobs/ol', GONE, []],
  ['a folder of another system', 'C:\\j\\x', GONE, ['C:\\j\\x\\c.perp']],
  ['a folder that comes, which may hold what was missed', '/jobs/new', NEW, ['/jobs/new']],
  ['one that is called by a number', '/jobs/26.041 Orchard', NEW, ['/jobs/26.041 Orchard']],
  ['one that is called by a year', '/jobs/done.2026', NEW, ['/jobs/done.2026']],
  ['files of others', '/jobs/a.txt', NEW, []],
  ['the same, gone', '/jobs/a.txt', GONE, []],
  ['what stands where nobody looks', '/jobs/.git/refs/heads/main', NEW, []],
  ['packages', '/jobs/node_modules/x', NEW, []],
])('%s', (_, name, type, wanted) => {
  const found = concerned([{ uri: `file://${name}`, type }], known);
  expect(found).toEqual(wanted.map((each) => `file://${each}`));
});
