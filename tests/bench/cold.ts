/** Cold start: from spawning the server to its first findings on 200 lines, beside a Node that does nothing. */
import { spawnSync } from 'node:child_process';
import { Peer } from './peer';
import { type Paired, paired, timed } from './stats';
import { jobText } from './texts';

const ROUNDS = 15;

function bareNode(): Promise<number> {
  return timed(() => spawnSync(process.execPath, ['-e', '0']));
}

export async function coldServer(server: string, args: readonly string[]): Promise<Paired> {
  const { text } = jobText(200);
  const answered = async () => {
    const peer = new Peer(server, args, 'file:///bench/job.perp');
    await peer.open('file:///bench', text);
    await peer.findings();
    return peer;
  };
  const start = async () => {
    let peer: Peer | undefined;
    const time = await timed(async () => {
      peer = await answered();
    });
    peer!.stop();
    return time;
  };
  await (await answered()).end();
  return paired(ROUNDS, start, bareNode);
}

/** The command line, whole process, on a job file. */
export async function coldCommand(command: string, file: string): Promise<Paired> {
  const run = () => timed(() => spawnSync(process.execPath, [command, 'price', file]));
  await run();
  return paired(ROUNDS, run, bareNode);
}
