/** What past jobs show, in the firm's file that is open in an editor. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { NAMES } from '../../server/lsp/node/names';
import { PastJobs } from '../../server/lsp/past-jobs';
import type { JobFiles } from '../../server/lsp/surroundings';
import { inRoot, ROOT, workspaceOf } from '../engine/world';
import { FIRM_FILE, firmJob } from '../harness/firm-jobs';
import { bundled, Peer } from './peer';

let server: string;
let peer: Peer;

beforeAll(async () => {
  server = await bundled();
});
beforeEach(() => {
  peer = new Peer(server);
});
afterEach(() => peer.stop());

const codes = async (uri: string) => (await peer.findings(uri)).map(({ code }) => code);

async function until(told: () => Promise<boolean>): Promise<void> {
  for (let i = 0; i < 1200 && !(await told()); i++) await new Promise((go) => setTimeout(go, 50));
}

test('a finding comes up in the firm’s file once its jobs are looked through, and follows them', async () => {
  const jobs = path.join(peer.folder, 'jobs');
  mkdirSync(jobs);
  const fileOf = (i: number) => path.join(jobs, `${i}.perp`);
  for (let i = 0; i < 30; i++) writeFileSync(fileOf(i), firmJob(i));
  writeFileSync(path.join(peer.folder, 'firm.perp'), FIRM_FILE);
  await peer.start({ folders: [peer.folder] });
  const uri = await peer.open('firm.perp', FIRM_FILE);
  await until(async () => (await codes(uri)).includes('output-measured'));
  expect(await codes(uri)).toContain('output-measured');
  for (let i = 0; i < 30; i++)
    writeFileSync(fileOf(i), firmJob(i).replaceAll('facework', 'coping'));
  await peer.connection.sendNotification('workspace/didChangeWatchedFiles', {
    changes: Array.from({ length: 30 }, (_, i) => ({
      uri: pathToFileURL(fileOf(i)).href,
      type: 2,
    })),
  });
  const gone = async () =>
    (await peer.findings(uri)).every(({ message }) => !/ of facework/.test(String(message)));
  await until(gone);
  expect(await gone()).toBe(true);
});

/** A folder in memory of so many jobs. */
function folder(count: number) {
  const files = new Map<string, string>([[inRoot('firm.perp'), FIRM_FILE]]);
  for (let i = 0; i < count; i++) files.set(inRoot(`jobs/${i}.perp`), firmJob(i));
  const read: string[] = [];
  const host: JobFiles = {
    list: (at) =>
      at === ROOT
        ? [{ name: 'jobs', is: 'folder' }]
        : Array.from({ length: count }, (_, i) => ({ name: `${i}.perp`, is: 'file' as const })),
    stamp: (file) => (files.has(file) ? { size: files.get(file)!.length, changed: 1 } : undefined),
    read: (file) => {
      read.push(file);
      return files.get(file);
    },
    join: (a, b) => `${a}/${b}`,
    bring: () => undefined,
    again: () => undefined,
  };
  return { files, read, host };
}

const ready = (past: PastJobs) =>
  new Promise<void>((done) => {
    past.ready = done;
  });

test('nothing is read before it is asked for; then all once; then what changed alone', async () => {
  const { files, read, host } = folder(200);
  const past = new PastJobs(workspaceOf({ 'firm.perp': FIRM_FILE }), host, NAMES);
  past.openFolders([ROOT]);
  past.changed([inRoot('jobs/1.perp')]);
  expect(read).toEqual([]);
  const first = ready(past);
  expect(past.of(inRoot('firm.perp'))).toEqual([]);
  // Not in the same turn: a key that waits is heard first.
  expect(read).toEqual([]);
  await first;
  const before = past.of(inRoot('firm.perp'))[0]!;
  expect([read.length, before.task]).toEqual([200, 'facework']);
  const [i, j] = [...Array(200).keys()].filter((n) => firmJob(n).includes('facework'));
  const [one, other] = [inRoot(`jobs/${i}.perp`), inRoot(`jobs/${j}.perp`)];
  files.set(one, firmJob(i!).replaceAll('facework', 'coping'));
  files.set(other, '');
  const second = ready(past);
  past.changed([one, other, inRoot('.git/x.perp')]);
  await second;
  expect(read.slice(200)).toEqual([one, other]);
  expect(past.of(inRoot('firm.perp')).map((m) => m.task)).toEqual(['coping', 'facework']);
  expect(past.reads).toBe(202);
});

test('a file of another firm is told nothing of them', async () => {
  const { host } = folder(30);
  const past = new PastJobs(
    workspaceOf({ 'firm.perp': FIRM_FILE, 'b.perp': FIRM_FILE }),
    host,
    NAMES,
  );
  past.openFolders([ROOT]);
  const first = ready(past);
  past.of(inRoot('b.perp'));
  past.of(inRoot('firm.perp'));
  await first;
  expect(past.of(inRoot('b.perp'))).toEqual([]);
  expect(past.of(inRoot('firm.perp')).length).toBe(1);
});
