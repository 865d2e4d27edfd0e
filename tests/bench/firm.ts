/** A folder of many jobs: indexed cold, looked at again, and after an edit; beside reading the bytes of all of its files. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { FOLDER_HOST } from '../../server/cli/files/jobs';
import { LIBRARIES } from '../../server/cli/libraries';
import { hostOf } from '../../server/cli/session';
import { DiskIndex, filesUnder } from '../../server/engine/firm/disk-index';
import { measuredOutputs } from '../../server/engine/firm/outputs';
import { overviewOf } from '../../server/engine/firm/overview';
import { readSaved, savedText } from '../../server/engine/firm/saved';
import { Settings } from '../../server/engine/firm/setting';
import { Workspace } from '../../server/engine/workspace/workspace';
import { FIRM_FILE, firmJob } from '../harness/firm-jobs';
import { type Paired, paired, timed } from './stats';

const DAY = '2026-03-31';
const ENOUGH = { days: 10, jobs: 3, sure: 0.8 };

export interface FirmTimes {
  readonly files: number;
  readonly cold: Paired;
  /** Stamps looked at, nothing read. */
  readonly warm: Paired;
  /** From a saved index, which is parsed. */
  readonly saved: Paired;
  /** What was read after one file was edited. */
  readonly reads: number;
  readonly overview: number;
}

/** Jobs in folders of a hundred, as by year and month. @throws Error when an answer is wrong */
export async function firmOf(count: number, rounds: number): Promise<FirmTimes> {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-firm-'));
  try {
    const names = written(folder, count);
    const bytes = () => timed(() => names.reduce((n, name) => n + readFileSync(name).length, 0));
    const index = new DiskIndex(FOLDER_HOST);
    look(index, folder);
    const text = savedText(index.entries, folder);
    const cold = await paired(
      rounds,
      () => timed(() => look(new DiskIndex(FOLDER_HOST), folder)),
      bytes,
    );
    const warm = await paired(rounds, () => timed(() => look(index, folder)), bytes);
    const saved = await paired(rounds, () => timed(() => fromSaved(text, folder)), bytes);
    const before = index.reads;
    writeFileSync(names[count >> 1]!, `${firmJob(count >> 1)}# seen again\n`);
    look(index, folder);
    const overview = await timed(() => overviewed(index, folder, count));
    return { files: count, cold, warm, saved, reads: index.reads - before, overview };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function written(folder: string, count: number): string[] {
  writeFileSync(path.join(folder, 'firm.perp'), FIRM_FILE);
  return Array.from({ length: count }, (_, i) => {
    const within = path.join(folder, String(Math.floor(i / 100)));
    if (i % 100 === 0) mkdirSync(within);
    const name = path.join(within, `job-${i}.perp`);
    writeFileSync(name, firmJob(i));
    return name;
  });
}

function look(index: DiskIndex, folder: string): void {
  const files = [...filesUnder(folder, FOLDER_HOST)];
  for (const file of files) index.look(file);
  index.only(files);
}

function fromSaved(text: string, folder: string): void {
  const found = readSaved(text, folder);
  if (typeof found === 'string') throw new Error(`The index ${found}.`);
  const index = new DiskIndex(FOLDER_HOST, found);
  look(index, folder);
  if (index.reads) throw new Error(`${index.reads} files were read though none had changed.`);
}

function overviewed(index: DiskIndex, folder: string, count: number): void {
  const settings = new Settings(new Workspace(hostOf(folder), LIBRARIES));
  const found = overviewOf(index.jobs, settings, DAY);
  if (found.jobs !== count) throw new Error(`${found.jobs} jobs, and not ${count}.`);
  if (!measuredOutputs(index.jobs, settings, ENOUGH).length) throw new Error('Nothing measured.');
}
