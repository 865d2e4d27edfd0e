/** Keystroke to fresh totals, over standard input and output, beside the empty server on the same text. */
import { Peer } from './peer';
import { type Paired, paired, timed } from './stats';
import { jobText } from './texts';

const ROUNDS = 200;
const WARM = 60;

export async function keystroke(
  lines: number,
  server: string,
  empty: string,
): Promise<Paired & { fresh: boolean }> {
  const { text, edit } = jobText(lines);
  const uri = 'file:///bench/job.perp';
  const ours = new Peer(server, ['--stdio'], uri);
  const bare = new Peer(empty, [], uri);
  try {
    for (const peer of [ours, bare]) {
      await peer.open('file:///bench', text);
      await peer.findings();
    }
    let digit = 0;
    const key = (peer: Peer) => timed(() => peer.key(edit.line, edit.column, String(digit % 10)));
    for (; digit < WARM; digit++) {
      await key(ours);
      await key(bare);
    }
    const result = await paired(
      ROUNDS,
      () => {
        digit += 1;
        return key(ours);
      },
      () => key(bare),
    );
    return { ...result, fresh: await isFresh(ours, edit) };
  } finally {
    ours.stop();
    bare.stop();
  }
}

/** Two different digits must give two different hints: what is measured is an answer, not a stale one. */
async function isFresh(peer: Peer, edit: { line: number; column: number }): Promise<boolean> {
  const first = JSON.stringify(await peer.key(edit.line, edit.column, '1'));
  const second = JSON.stringify(await peer.key(edit.line, edit.column, '7'));
  return first !== second && first.length > 50;
}
