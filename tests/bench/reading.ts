/** Reading text: lines a second, beside JSON.parse of the same lines. */
import { cutBlocks } from '../../grammar/blocks';
import { read } from '../../grammar/read/read';
import { type Paired, paired, timed } from './stats';
import { jobText } from './texts';

export async function reading(lines: number): Promise<Paired & { perSecond: number }> {
  const all = jobText(lines).text.split('\n');
  const json = JSON.stringify(all.map((line) => line.trim().split(/\s+/)));
  const ours = () => timed(() => readAll(all));
  for (let i = 0; i < 5; i++) await ours();
  const result = await paired(15, ours, () => timed(() => JSON.parse(json)));
  return { ...result, perSecond: Math.round((all.length / result.a) * 1000) };
}

function readAll(lines: readonly string[]): number {
  const starts = cutBlocks(lines);
  let faults = 0;
  starts.forEach((start, i) => {
    faults += read(lines.slice(start, starts[i + 1] ?? lines.length)).faults.length;
  });
  return faults;
}
