/** Addresses of files that are on no disk (RFC 3986), and where a text stands among them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NAMES } from '../../server/lsp/node/names';
import { placed } from '../../server/lsp/placed';
import { type Address, addressOf, beside, URI_NAMES, written } from '../../server/lsp/uri-names';
import { base64, fromBase64 } from '../../shared/base64';

const name = (uri: string) => URI_NAMES.nameOf(uri);
const folder = (uri: string) => addressOf(uri) as Address;
const from = (uri: string, folders: string[] = []) => {
  const found = placed(uri, folders.map(folder));
  return found && written(found);
};

describe('one file has one name', () => {
  test.each([
    ['vscode-vfs://github/a/b.perp', 'vscode-vfs://github/a/b.perp'],
    ['VSCODE-VFS://github/a/b.perp', 'vscode-vfs://github/a/b.perp'],
    ['memfs:/a/b%20c.perp', 'memfs:///a/b%20c.perp'],
    ['memfs:/a/b c.perp', 'memfs:///a/b%20c.perp'],
    ['memfs:/a/%62.perp', 'memfs:///a/b.perp'],
    ['memfs:/m%C3%BCnchen.perp', 'memfs:///m%C3%BCnchen.perp'],
    ['memfs:/a.perp#L3', 'memfs:///a.perp'],
    ['x-y://h/a.perp?r=1', 'x-y://h/a.perp?r=1'],
  ])('%s', (uri, wanted) => expect(name(uri)).toBe(wanted));

  test.each(['untitled:Untitled-1', 'memfs:/a%2Fb.perp', 'memfs:/a%00b', 'memfs:/%zz', '', 'x'])(
    '%s has no place, and keeps its name',
    (uri) => expect([URI_NAMES.hasPlace(uri), name(uri)]).toEqual([false, uri]),
  );

  test('whatever comes, a name is named as it is', () => {
    fc.assert(
      fc.property(fc.oneof(fc.webUrl(), fc.string()), (uri) => {
        expect(name(name(uri))).toBe(name(uri));
      }),
    );
  });

  test('a path on disk is one, whatever its signs', () => {
    expect(NAMES.nameOf('file:///a/b%20c.perp')).toBe('/a/b c.perp');
    expect(NAMES.uriOf('/a/b c.perp')).toBe('file:///a/b%20c.perp');
    expect(NAMES.uriOf('memfs:///a')).toBe('memfs:///a');
  });
});

describe('what a line names', () => {
  const named = (to: string) => {
    const found = beside(folder('memfs:///a/b/job.perp'), to);
    return found && written(found);
  };
  test.each([
    ['firm.perp', 'memfs:///a/b/firm.perp'],
    ['../firm.perp', 'memfs:///a/firm.perp'],
    ['./x/../firm.perp', 'memfs:///a/b/firm.perp'],
    ['/firm.perp', 'memfs:///firm.perp'],
    ['a b.perp', 'memfs:///a/b/a%20b.perp'],
    ['../../../firm.perp', undefined],
    ['a\0b', undefined],
  ])('%s', (to, wanted) => expect(named(to)).toBe(wanted));
});

describe('where a text stands', () => {
  test.each([
    ['in its folder', 'memfs:/j/a.perp', ['memfs:/j'], 'memfs:///j/a.perp'],
    ['by itself', 'memfs:/j/a.perp', [], 'memfs:///j/a.perp'],
    [
      'new, in the folder that is open',
      'untitled:Untitled-1',
      ['memfs:/j/'],
      'memfs:///j/untitled.perp',
    ],
    ['new, with a path', 'untitled:/j/b/a.perp', ['memfs:/j'], 'memfs:///j/b/a.perp'],
    ['new, and nothing is open', 'untitled:Untitled-1', [], undefined],
    ['of another day', 'git:/j/a.perp?%7B%7D', ['file:///j'], 'file:///j/a.perp'],
    ['of another day, outside', 'git:/k/a.perp?%7B%7D', ['file:///j'], undefined],
    ['in a folder of a like name', 'untitled:/jobs/a.perp', ['file:///job'], undefined],
  ])('%s', (_, uri, folders, wanted) => expect(from(uri, folders)).toBe(wanted));
});

test('bytes come back from base 64 as they went (RFC 4648, section 10 for the texts)', () => {
  const text = (of: string) => base64(new TextEncoder().encode(of));
  expect(['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map(text)).toEqual([
    '',
    'Zg==',
    'Zm8=',
    'Zm9v',
    'Zm9vYg==',
    'Zm9vYmE=',
    'Zm9vYmFy',
  ]);
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      expect(fromBase64(base64(bytes))).toEqual(bytes);
    }),
  );
});
