import { afterAll, afterEach, expect, test } from 'vitest';
import type {
  DocumentDiagnosticReport,
  Hover,
  MarkupContent,
} from 'vscode-languageserver-protocol/node';
import { speak } from '../../shared/phrase';
import { readJson } from '../tree';
import { near } from './near';
import { Peer } from './peer';

let peer: Peer;
afterEach(() => peer.stop());
afterAll(() => speak(undefined));

/** What the server says of a block that it does not know. */
async function said(words?: unknown): Promise<string[]> {
  peer = new Peer(near());
  await peer.start({ options: { words } as never });
  const uri = await peer.open('job.perp', 'perpend 1\nuse uk\nwal north\n');
  const report = await peer.about<DocumentDiagnosticReport>('diagnostic', uri);
  return report.kind === 'full' ? report.items.map(({ message }) => String(message)) : [];
}

const ENGLISH =
  '“{0}” opens no block that is known, so this line and those under it are left out.{1}';

test('the server speaks the words that the editor gives it', async () => {
  expect(await said({ [ENGLISH]: '„{0}“ ist kein Block.{1}' })).toEqual([
    expect.stringMatching(/^„wal“ ist kein Block\./),
  ]);
});

test.each([[undefined], [null], ['de'], [[1]], [{ [ENGLISH]: 5 }]])(
  'and English with %j',
  async (words) => {
    expect(await said(words)).toEqual([
      expect.stringMatching(/^“wal” opens no block that is known/),
    ]);
  },
);

test('what an editor in German is told is German', async () => {
  peer = new Peer(near());
  await peer.start({ options: { words: readJson('client/l10n/server.de.json') } as never });
  const job = 'perpend 1\nuse de\nwall nord\n  length 7.4 m\n  height 12 courses\n';
  const uri = await peer.open('job.perp', job);
  const report = await peer.about<DocumentDiagnosticReport>('diagnostic', uri);
  const codes = report.kind === 'full' ? report.items.map((item) => item.message) : [];
  expect(codes.join('\n')).toMatch(
    /Der Preis ist nicht vollständig: für Zement ist kein Preis angegeben/,
  );
  const { contents } = await peer.about<Hover>('hover', uri, {
    position: { line: 4, character: 3 },
  });
  expect((contents as MarkupContent).value).toMatch(/Höhe in Schichten, oder als Länge/);
});
