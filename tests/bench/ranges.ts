/** A keystroke to fresh totals with low and high, where the job holds ranges, beside the same job without any. */
import { shippedLibraries } from '../../server/engine/shipped';
import type { Job } from '../../server/engine/workspace/job';
import { Workspace } from '../../server/engine/workspace/workspace';
import { type Paired, paired, spent } from './stats';

const HEAD = `perpend 1
use uk
labour
  bricklayer £25 per h
  gang 1 bricklayer
`;
const NAME = 'bench/job.perp';

/** Twenty repairs of ten lines: two hundred lines, sixty ranges. */
function jobText(ranged: boolean): string {
  const amount = (low: number, high: number) =>
    ranged ? `${low}..${high}` : `${(low + high) / 2}`;
  const repairs = Array.from(
    { length: 20 },
    (_, i) => `repair r${i} "Part ${i}"
  brick     standard
  bond      flemish
  thick     1 brick
  rebuild   1.3 m x ${5 + (i % 4)} courses
  salvage   ${amount(50, 60 + 2 * i)}%
  cut-out   ${amount(1, 5 + 2 * (i % 3))} bricks
  repoint   ${amount(1, 2)} m2 raked 20 mm
  mix       general

`,
  );
  return HEAD + repairs.join('');
}

function opened(ranged: boolean): () => Job {
  const space = new Workspace(
    { resolve: () => undefined, read: () => undefined },
    shippedLibraries((f) => f),
  );
  const text = jobText(ranged);
  space.opened(NAME, text);
  const line = text.split('\n').findIndex((l) => l.startsWith('  repoint'));
  let key = 0;
  return () => {
    key += 1;
    const area = ranged ? `1..${2 + (key % 5)}` : `${1.5 + (key % 5) / 2}`;
    const fresh = `  repoint   ${area} m2 raked 20 mm`;
    space.edited(NAME, [
      { startLine: line, startColumn: 0, endLine: line, endColumn: 200, text: fresh },
    ]);
    return space.job(NAME)!;
  };
}

export async function rangesInAJob(rounds: number): Promise<Paired> {
  const [with60, without] = [opened(true), opened(false)];
  const totals = (key: () => Job) => () => {
    const job = key();
    return [job.price.total, job.spread];
  };
  const [a, b] = [totals(with60), totals(without)];
  if (!a()[1] || b()[1]) throw new Error('The one job has a spread, and the other has none.');
  for (let i = 0; i < 60; i++) for (const each of [a, b]) each();
  return paired(
    rounds,
    () => spent(a),
    () => spent(b),
  );
}
