import { mkdirSync, renameSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  type Diagnostic,
  LSPErrorCodes,
} from 'vscode-languageserver-protocol/node';
import { CHANGED, TOTALS, type Totals } from '../../shared/protocol';
import { FIRM } from '../ide/ask';
import { bundled, EDITOR, Peer } from './peer';

let server: string;
let peer: Peer;

beforeAll(async () => {
  server = await bundled();
});
beforeEach(() => {
  peer = new Peer(server);
});
afterEach(() => peer.stop());

const JOB =
  'perpend 1\nuse "firm.perp"\nwall n\n  brick red\n  length 1790 mm\n  height 6 courses\n  stands held\n';
const codes = (list: readonly Diagnostic[]) =>
  list.map((d) => String(d.code)).filter((c) => !c.startsWith('caution-'));
const put = (name: string, text: string) => writeFileSync(path.join(peer.folder, name), text);

describe('whatever comes', () => {
  test('a file of unknown bytes is answered like any other', async () => {
    await peer.start();
    const noise = Array.from({ length: 3000 }, (_, i) => String.fromCharCode((i * 7919) % 0xd7ff));
    const uri = await peer.open('noise.perp', noise.join(''));
    expect(Array.isArray(await peer.findings(uri))).toBe(true);
    expect(Array.isArray(await peer.hints(uri))).toBe(true);
    for (const method of ['documentSymbol', 'foldingRange', 'semanticTokens/full'])
      expect(await peer.about(method, uri)).toBeTruthy();
    expect(await peer.about('hover', uri, { position: { line: 0, character: 5 } })).toBeNull();
  });

  test('a used file of unknown bytes costs only itself', async () => {
    writeFileSync(path.join(peer.folder, 'firm.perp'), Buffer.from([0xff, 0xfe, 0, 200, 10, 0x80]));
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    expect(codes(await peer.findings(uri))).toContain('name-unknown');
  });

  test('places beyond the text are taken for its end', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', 'perpend 1');
    await peer.edit(uri, '\njob', { line: 90, character: 7 }, { line: 99, character: 9 });
    await peer.edit(uri, ' "A"', { line: 1, character: 99 });
    const symbols = await peer.about<{ detail: string }[]>('documentSymbol', uri);
    expect(symbols.map((s) => s.detail)).toEqual(['A']);
  });

  test('a file that is not open is answered with nothing', async () => {
    await peer.start();
    put('firm.perp', FIRM);
    const uri = peer.uri('firm.perp');
    expect(await peer.findings(uri)).toEqual([]);
    expect(await peer.hints(uri)).toBeNull();
    expect(await peer.ask(TOTALS, { uri })).toBeNull();
    await peer.edit(uri, 'x');
    expect(await peer.about('documentSymbol', uri)).toBeNull();
  });

  test('a file on no disk is priced, and what it uses is not found', async () => {
    await peer.start();
    const uri = await peer.open('untitled:Untitled-1', JOB);
    expect(codes(await peer.findings(uri))).toContain('use-missing');
    const own = await peer.open(
      'vscode-vfs://github/a/b.perp',
      JOB.replace('use "firm.perp"', 'use uk'),
    );
    expect(await peer.ask<Totals>(TOTALS, { uri: own })).toMatchObject({
      missing: expect.any(Array),
    });
  });

  test('a cancelled request ends as cancelled', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    const source = new CancellationTokenSource();
    const asked = peer.connection.sendRequest(
      'textDocument/diagnostic',
      { textDocument: { uri } },
      source.token,
    );
    source.cancel();
    await expect(asked).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
    expect(Array.isArray(await peer.findings(uri))).toBe(true);
  });

  test('an edit on the heels of a request makes its answer stale', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    await peer.findings(uri);
    const asked = peer.about('diagnostic', uri);
    const edited = peer.edit(uri, '1', { line: 4, character: 9 });
    // Findings are asked for once more: whoever shows them must not be left with none.
    await expect(asked).rejects.toMatchObject({
      code: LSPErrorCodes.ServerCancelled,
      data: { retriggerRequest: true },
    });
    await edited;
  });

  test('a closed file is forgotten, and opens again as new', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    await peer.findings(uri);
    await peer.tell('textDocument/didClose', { textDocument: { uri } });
    expect(await peer.findings(uri)).toEqual([]);
    await peer.open('job.perp', 'perpend 1\nzaun\n');
    expect(codes(await peer.findings(uri))).toContain('heading-unknown');
  });

  test('an unknown request is refused, and the next is answered', async () => {
    await peer.start();
    await expect(peer.ask('perpend/nothing', {})).rejects.toMatchObject({ code: -32601 });
    const uri = await peer.open('job.perp', JOB);
    expect(Array.isArray(await peer.findings(uri))).toBe(true);
  });
});

describe('files that a job uses', () => {
  test('a change in an open one is seen at once, before it is saved', async () => {
    put('firm.perp', FIRM);
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    const before = await peer.ask<Totals>(TOTALS, { uri });
    const firm = await peer.open('firm.perp', FIRM.replace('£1 each', '£5 each'));
    expect((await peer.ask<Totals>(TOTALS, { uri })).price).not.toBe(before.price);
    await peer.edit(firm, FIRM);
    expect(await peer.ask<Totals>(TOTALS, { uri })).toEqual(before);
  });

  test('a change on disk is seen when the editor tells of it, and the editor is asked to ask again', async () => {
    put('firm.perp', FIRM);
    await peer.start();
    expect(await peer.hear('client/registerCapability')).toMatchObject({
      registrations: [
        {
          registerOptions: {
            watchers: [{ globPattern: '**/*.perp' }, { globPattern: '**/*', kind: 5 }],
          },
        },
      ],
    });
    const uri = await peer.open('job.perp', JOB);
    const before = await peer.ask<Totals>(TOTALS, { uri });
    put('firm.perp', FIRM.replace('£1 each', '£5 each'));
    peer.heard.length = 0;
    await peer.tell('workspace/didChangeWatchedFiles', {
      changes: [{ uri: peer.uri('firm.perp'), type: 2 }],
    });
    for (const method of ['workspace/diagnostic/refresh', 'workspace/inlayHint/refresh', CHANGED])
      await peer.hear(method);
    expect((await peer.ask<Totals>(TOTALS, { uri })).price).not.toBe(before.price);
  });

  test('one that appears is found', async () => {
    await peer.start();
    const uri = await peer.open('job.perp', JOB);
    expect(codes(await peer.findings(uri))).toContain('use-missing');
    put('firm.perp', FIRM);
    await peer.tell('workspace/didChangeWatchedFiles', {
      changes: [{ uri: peer.uri('firm.perp'), type: 1 }],
    });
    expect(codes(await peer.findings(uri))).not.toContain('use-missing');
  });

  test('of a folder that goes the editor tells alone: what was in it is gone too, and comes back with it', async () => {
    mkdirSync(path.join(peer.folder, 'the office'));
    put('the office/firm.perp', FIRM);
    await peer.start();
    const uri = await peer.open('job.perp', JOB.replace('firm.perp', 'the office/firm.perp'));
    expect(codes(await peer.findings(uri))).not.toContain('use-missing');
    const [from, to] = ['the office', 'away'].map((name) => path.join(peer.folder, name));
    const told = (type: number) =>
      peer.tell('workspace/didChangeWatchedFiles', {
        changes: [
          { uri: peer.uri('node_modules/x.js'), type },
          { uri: peer.uri('the office'), type },
        ],
      });
    renameSync(from!, to!);
    await told(3);
    expect(codes(await peer.findings(uri))).toContain('use-missing');
    await peer.hear('workspace/diagnostic/refresh');
    renameSync(to!, from!);
    await told(1);
    expect(codes(await peer.findings(uri))).not.toContain('use-missing');
  });

  test('a client that cannot ask is sent findings, and none when the file is closed', async () => {
    await peer.start({ capabilities: {} });
    const uri = await peer.open('job.perp', 'perpend 1\nzaun\n');
    const sent = (await peer.hear('textDocument/publishDiagnostics')) as {
      diagnostics: Diagnostic[];
    };
    expect(codes(sent.diagnostics)).toContain('heading-unknown');
    peer.heard.length = 0;
    await peer.tell('textDocument/didClose', { textDocument: { uri } });
    expect(await peer.hear('textDocument/publishDiagnostics')).toEqual({ uri, diagnostics: [] });
  });

  describe('stay inside the folder', () => {
    const uses = (file: string) => JOB.replace('firm.perp', file);
    const told = async (file: string) =>
      codes(await peer.findings(await peer.open('a/job.perp', uses(file))));

    test.each([
      ['a way up and out', '../../outside.perp'],
      ['a path from the top', '/etc/hostname'],
      ['one with a zero in it', 'firm\\0.perp'],
    ])('%s is refused', async (_, file) => {
      await peer.start();
      const found = await told(file);
      expect(found.some((c) => ['use-outside', 'use-missing'].includes(c))).toBe(true);
      expect(found).toContain('name-unknown');
    });

    test('a way up that stays in it is taken', async () => {
      put('firm.perp', FIRM);
      await peer.start();
      expect(await told('../firm.perp')).toEqual([]);
    });

    test('a link that leads out is refused, file or folder', async () => {
      const outside = peer.newFolder();
      writeFileSync(path.join(outside, 'firm.perp'), FIRM);
      mkdirSync(path.join(peer.folder, 'a'));
      symlinkSync(path.join(outside, 'firm.perp'), path.join(peer.folder, 'a/firm.perp'));
      symlinkSync(outside, path.join(peer.folder, 'a/linked'));
      await peer.start();
      expect(await told('firm.perp')).toContain('use-outside');
      const second = await peer.open('a/two.perp', uses('linked/firm.perp'));
      expect(codes(await peer.findings(second))).toContain('use-outside');
    });

    test('a folder or a device is no file', async () => {
      mkdirSync(path.join(peer.folder, 'a/firm.perp'), { recursive: true });
      symlinkSync('/dev/zero', path.join(peer.folder, 'a/zero.perp'));
      await peer.start();
      expect(await told('firm.perp')).toContain('use-missing');
      const second = await peer.open('a/two.perp', uses('zero.perp'));
      expect(codes(await peer.findings(second))).toContain('use-outside');
    });

    test('one that is too large is told of, and not read whole', async () => {
      put('firm.perp', '#'.repeat(13 * 1024 * 1024));
      await peer.start();
      const uri = await peer.open('job.perp', JOB);
      expect(codes(await peer.findings(uri))).toContain('use-too-large');
    });

    test('with no folder open, the file’s own folder counts', async () => {
      put('firm.perp', FIRM);
      await peer.start({ folders: [], capabilities: EDITOR });
      const uri = await peer.open('job.perp', JOB);
      expect(codes(await peer.findings(uri))).toEqual([]);
      expect(await told('../firm.perp')).toContain('use-outside');
    });
  });
});
