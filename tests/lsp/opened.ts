/** One server for a file of tests, a firm beside, and the same job opened anew before each. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, beforeEach } from 'vitest';
import { FIRM, JOB } from '../cli/jobs';
import { near } from './near';
import { Peer } from './peer';

export interface Opened {
  peer: Peer;
  /** Of the job. */
  uri: string;
}

/** @param before what stands in the folder besides */
export function openedJob(before: (folder: string) => void = () => undefined): Opened {
  const opened = {} as Opened;
  beforeAll(async () => {
    opened.peer = new Peer(near());
    writeFileSync(path.join(opened.peer.folder, 'firm.perp'), FIRM);
    before(opened.peer.folder);
    await opened.peer.start();
  });
  beforeEach(async () => {
    opened.uri = await opened.peer.open('job.perp', JOB);
  });
  afterAll(() => opened.peer.stop());
  return opened;
}
