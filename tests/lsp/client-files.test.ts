/** Jobs in folders that are on no disk: what they use is read by the client. */

import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Diagnostic } from 'vscode-languageserver-protocol/node';
import { TOTALS, type Totals } from '../../shared/protocol';
import { FIRM_FILE, firmJob } from '../harness/firm-jobs';
import { FIRM } from '../ide/ask';
import { Far } from './far';
import { near } from './near';
import { EDITOR, Peer, type Started } from './peer';

let peer: Peer;
let far: Far;

beforeEach(() => {
  peer = new Peer(near());
  far = new Far().serve(peer);
});
afterEach(() => peer.stop());

const FOLDER = 'vscode-vfs://github/mason/jobs';
const at = (name: string) => `${FOLDER}/${name}`;
const JOB =
  'perpend 1\nuse "firm.perp"\nwall n\n  brick red\n  length 1790 mm\n  height 6 courses\n  stands held\n';
const codes = (list: readonly Diagnostic[]) =>
  list.map((d) => String(d.code)).filter((code) => !code.startsWith('caution-'));
const start = (more: Started = {}) =>
  peer.start({ folders: [FOLDER], options: { readsFiles: true }, ...more });
const changed = (uri: string) =>
  peer.tell('workspace/didChangeWatchedFiles', { changes: [{ uri, type: 2 }] });

describe('a used file on no disk', () => {
  test('is there in the first answer, and read once', async () => {
    far.files.set(at('firm.perp'), FIRM);
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toEqual([]);
    expect((await peer.ask<Totals>(TOTALS, { uri })).price).toMatch(/£/);
    expect(await peer.hints(uri)).not.toEqual([]);
    expect(far.asked).toEqual([{ uri: at('firm.perp'), within: FOLDER, most: expect.any(Number) }]);
  });

  test('no answer tells of it as missing while it is on its way', async () => {
    far.files.set(at('firm.perp'), FIRM);
    far.before = () => new Promise((go) => setTimeout(go, 120));
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    const answers = [peer.findings(uri), peer.findings(uri)];
    for (const found of await Promise.all(answers)) expect(codes(found)).toEqual([]);
  });

  test('that uses another has both read', async () => {
    far.files.set(at('firm.perp'), 'perpend 1\nuse "more/rates.perp"\n');
    far.files.set(at('more/rates.perp'), FIRM);
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toEqual([]);
    expect(far.uris).toEqual([at('firm.perp'), at('more/rates.perp')]);
  });

  test('that is not there is told of, and nobody asks again at each key', async () => {
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    for (const text of ['a', 'b', 'c']) {
      expect(codes(await peer.findings(uri))).toContain('use-missing');
      await peer.edit(uri, `# ${text}\n`, { line: 7, character: 0 });
    }
    expect(far.uris).toEqual([at('firm.perp')]);
  });

  test('that a job could use is told of in the first answer, and nobody asks again at each key', async () => {
    const alone = JOB.replace('"firm.perp"', 'uk').replace('red', 'standard');
    far.files.set(at('firm.perp'), FIRM);
    await start();
    const uri = await peer.open(at('job.perp'), alone);
    for (const text of ['a', 'b', 'c']) {
      expect(codes(await peer.findings(uri))).toContain('use-firm');
      await peer.edit(uri, `# ${text}\n`, { line: 7, character: 0 });
    }
    expect(far.uris).toEqual([at('firm.perp')]);
  });

  test('that a job could use and that is not there is asked for once', async () => {
    const alone = JOB.replace('"firm.perp"', 'uk').replace('red', 'standard');
    await start();
    const uri = await peer.open(at('job.perp'), alone);
    for (const text of ['a', 'b']) {
      expect(codes(await peer.findings(uri))).toContain('incomplete');
      expect(codes(await peer.findings(uri))).not.toContain('use-firm');
      await peer.edit(uri, `# ${text}\n`, { line: 7, character: 0 });
    }
    expect(far.uris).toEqual([at('firm.perp')]);
    far.files.set(at('firm.perp'), FIRM);
    await changed(at('firm.perp'));
    expect(codes(await peer.findings(uri))).toContain('use-firm');
  });

  test('that appears is found when the editor tells of it', async () => {
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toContain('use-missing');
    far.files.set(at('firm.perp'), FIRM);
    await changed(at('firm.perp'));
    expect(codes(await peer.findings(uri))).toEqual([]);
  });

  test('that changes is read again, and the editor is asked to ask again', async () => {
    far.files.set(at('firm.perp'), FIRM);
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    const before = await peer.ask<Totals>(TOTALS, { uri });
    far.files.set(at('firm.perp'), FIRM.replace(/£(\d+)/g, '£9$1'));
    peer.heard.length = 0;
    await changed(at('firm.perp'));
    await peer.hear('workspace/diagnostic/refresh');
    expect((await peer.ask<Totals>(TOTALS, { uri })).price).not.toBe(before.price);
  });

  test('that is open counts as the editor has it', async () => {
    far.files.set(at('firm.perp'), 'perpend 1\n');
    await start();
    await peer.open(at('firm.perp'), FIRM);
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toEqual([]);
    expect(far.asked).toEqual([]);
  });

  test('that comes too late is told of as missing, and then the editor is asked to ask again', async () => {
    peer.stop();
    peer = new Peer(near(100));
    far.serve(peer);
    let go: () => void = () => undefined;
    far.before = () => new Promise((done) => (go = done));
    far.files.set(at('firm.perp'), FIRM);
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toContain('use-missing');
    peer.heard.length = 0;
    go();
    await peer.hear('workspace/diagnostic/refresh');
    expect(codes(await peer.findings(uri))).toEqual([]);
  });

  test('an edit while it is on its way makes the answer stale', async () => {
    let go = () => {};
    const onItsWay = new Promise<void>((told) => {
      far.before = () => {
        told();
        return new Promise((come) => {
          go = come;
        });
      };
    });
    far.files.set(at('firm.perp'), FIRM);
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    const asked = peer.findings(uri).then(codes, (error) => error.code);
    await onItsWay;
    await peer.edit(uri, '# \n', { line: 7, character: 0 });
    go();
    expect(await asked).toBe(-32802);
    expect(codes(await peer.findings(uri))).toEqual([]);
  });

  test('a client that cannot ask is sent findings once it has come', async () => {
    far.files.set(at('firm.perp'), FIRM);
    far.before = () => new Promise((go) => setTimeout(go, 120));
    const { diagnostic, ...rest } = EDITOR.textDocument!;
    await start({ capabilities: { ...EDITOR, textDocument: rest } });
    await peer.open(at('job.perp'), JOB);
    const sent = (await peer.hear('textDocument/publishDiagnostics')) as { diagnostics: [] };
    expect([diagnostic !== undefined, codes(sent.diagnostics)]).toEqual([true, []]);
  });
});

describe('what may be asked for', () => {
  const asks = async (use: string, job = at('job.perp'), started: Started = {}) => {
    await start(started);
    const uri = await peer.open(job, JOB.replace('firm.perp', use));
    const found = codes(await peer.findings(uri)).filter((code) => code.startsWith('use-'));
    return [...found, ...far.uris];
  };

  test('a way up and out is refused', async () =>
    expect(await asks('../secret.perp')).toEqual(['use-outside']));
  test('one far above the top is refused', async () =>
    expect(await asks('../../../../../secret.perp')).toEqual(['use-outside']));
  test('a path from the top is refused', async () =>
    expect(await asks('/etc/secret.perp')).toEqual(['use-outside']));
  test('an address is read as a path, and nothing of another host is asked for', async () =>
    expect(await asks('https://elsewhere.invalid/x.perp')).toEqual([
      'use-missing',
      at('https%3A/elsewhere.invalid/x.perp'),
    ]));
  test('a folder of a like name is another one', async () =>
    expect(await asks('../jobs-of-others/x.perp')).toEqual(['use-outside']));
  test('a way up that stays in the folder is taken', async () =>
    expect(await asks('../x.perp', at('a/job.perp'))).toEqual(['use-missing', at('x.perp')]));
  test('what looks like an encoded way up is a name', async () =>
    expect(await asks('%2e%2e/%2e%2e/x.perp')).toEqual([
      'use-missing',
      at('%252e%252e/%252e%252e/x.perp'),
    ]));
  test('with no folder open, the file’s own folder counts', async () => {
    expect(await asks('firm.perp', at('job.perp'), { folders: [] })).toEqual([
      'use-missing',
      at('firm.perp'),
    ]);
    const uri = await peer.open(at('b.perp'), JOB.replace('firm.perp', '../up.perp'));
    expect(codes(await peer.findings(uri))).toContain('use-outside');
  });
  test('a client that does not say that it reads is asked for nothing', async () =>
    expect(await asks('firm.perp', at('job.perp'), { options: {} })).toEqual(['use-missing']));
  test('options of another shape do no harm', async () =>
    expect(await asks('firm.perp', at('job.perp'), { options: [3] })).toEqual(['use-missing']));
  test('one that is too large is told of', async () => {
    far.files.set(at('firm.perp'), new Uint8Array(13 * 1024 * 1024));
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toContain('use-too-large');
  });
  test('one of unknown bytes costs only itself', async () => {
    far.files.set(at('firm.perp'), Uint8Array.from([0xff, 0xfe, 0, 200, 10, 0x80]));
    await start();
    const uri = await peer.open(at('job.perp'), JOB);
    expect(codes(await peer.findings(uri))).toContain('name-unknown');
  });
});

describe('a text that is not saved', () => {
  test('stands in the folder that is open', async () => {
    far.files.set(at('firm.perp'), FIRM);
    await start();
    const uri = await peer.open('untitled:Untitled-1', JOB);
    expect(codes(await peer.findings(uri))).toEqual([]);
  });

  test('stands in an open folder on disk, too, and where its path says', async () => {
    writeFileSync(path.join(peer.folder, 'firm.perp'), FIRM);
    await peer.start();
    const uri = await peer.open('untitled:Untitled-1', JOB);
    expect(codes(await peer.findings(uri))).toEqual([]);
    const below = `untitled:${peer.folder}/new/job.perp`;
    const named = await peer.open(below, JOB.replace('firm.perp', '../firm.perp'));
    expect(codes(await peer.findings(named))).toEqual([]);
  });

  test('a revision of a file stands beside the files of today', async () => {
    writeFileSync(path.join(peer.folder, 'firm.perp'), FIRM);
    await peer.start();
    const uri = await peer.open(`git:${peer.folder}/job.perp?%7B%22ref%22%3A%22%22%7D`, JOB);
    expect(codes(await peer.findings(uri))).toEqual([]);
  });

  test('has no neighbours where no folder is open', async () => {
    await start({ folders: [] });
    const uri = await peer.open('untitled:Untitled-1', JOB);
    expect(codes(await peer.findings(uri))).toContain('use-missing');
    expect(far.asked).toEqual([]);
  });
});

test('the jobs of a firm on no disk are looked through for what they show', async () => {
  for (let i = 0; i < 30; i++) far.files.set(at(`jobs/${i}.perp`), firmJob(i));
  far.files.set(at('firm.perp'), FIRM_FILE);
  far.files.set(at('node_modules/x.perp'), firmJob(1));
  await start();
  const uri = await peer.open(at('firm.perp'), FIRM_FILE);
  for (let i = 0; i < 1200; i++) {
    if (codes(await peer.findings(uri)).includes('output-measured')) break;
    await new Promise((go) => setTimeout(go, 50));
  }
  expect(codes(await peer.findings(uri))).toContain('output-measured');
});
