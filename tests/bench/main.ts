/** Every speed claim of the project, as ratios taken side by side in this run. Prints a table; fails only when an answer is wrong. */
import { existsSync } from 'node:fs';
import { coldCommand, coldServer } from './cold';
import { nesting } from './cuts';
import { firmOf } from './firm';
import { keystroke } from './keystroke';
import { laying } from './laying';
import { fourTimes, type Levels, opened } from './openings';
import { previewing } from './preview';
import { rangesInAJob } from './ranges';
import { reading } from './reading';
import type { Paired } from './stats';
import { windowAmong, windowOf } from './window';

const SERVER = 'dist/server.cjs';
const COMMAND = 'dist/perpend.cjs';

/** `aim` is the most that the ratio should be; without one the row is for comparison. */
function row(what: string, pair: Paired, beside: string, aim?: number): void {
  const ms = (n: number) => `${n < 1 ? n.toFixed(3) : n.toFixed(1)} ms`;
  const spread = `${pair.least.toFixed(2)} to ${pair.most.toFixed(2)}`;
  console.log(
    `${what.padEnd(44)} ${ms(pair.a).padStart(10)} ${ms(pair.b).padStart(10)}  × ${pair.ratio.toFixed(3).padStart(8)}  (${spread})`,
  );
  const judged =
    aim === undefined ? '' : ` Aim: at most ${aim}: ${pair.ratio <= aim ? 'met' : 'MISSED'}.`;
  console.log(`${''.padEnd(44)} beside: ${beside}.${judged}`);
}

const LEVELS: Readonly<Record<Levels, string>> = { rows: 'in rows', own: 'each at its own level' };

/**
 * At most what it takes to write the place of each brick into an array, some 4 to 5 ms of two slow cores: the few
 * milliseconds that a million bricks with 400 openings are to take.
 */
const OF_WRITTEN = 1;

async function openings(levels: Levels): Promise<void> {
  const { counted, walked, written } = await opened(400, levels, 15);
  const what = `${counted.wholes + counted.halves} bricks, 400 openings ${LEVELS[levels]}`;
  row(what, walked, 'the same walked brick by brick, nothing kept');
  row(what, written, 'the place of each brick written into an array', OF_WRITTEN);
  row(
    `400 openings ${LEVELS[levels]}`,
    await fourTimes(levels, 15),
    '100 openings: 4 is as the openings, 16 as their square',
    levels === 'rows' ? 6 : 8,
  );
}

async function firm(): Promise<void> {
  const { files, cold, warm, saved, reads, overview } = await firmOf(10_000, 3);
  const beside = 'reading the bytes of all of its files';
  row(`indexing ${files} jobs, cold`, cold, `${beside}; the aim is seconds of our own`);
  row('looking at them again', warm, `${beside}; the aim is well under 1 s of our own`);
  row('the same from a saved index', saved, beside);
  console.log(
    `${''.padEnd(44)} read after one edit: ${reads}; overview: ${overview.toFixed(0)} ms`,
  );
}

async function preview(): Promise<void> {
  const found = await previewing(25);
  if (!found) return console.log('The preview: not measured, as there is no chromium here.');
  const { bricks, server, page, whole, edit, beside } = found;
  row(`an edit in the preview of ${bricks} bricks`, beside, 'an element for each brick, set anew');
  console.log(
    `${''.padEnd(44)} server ${server.toFixed(1)} ms, page to the next frame ${page.toFixed(1)} ms; told: ${edit} characters of ${whole}`,
  );
}

async function main(): Promise<void> {
  for (const file of [SERVER, COMMAND])
    if (!existsSync(file)) throw new Error(`${file} is not built: run npm run build first.`);
  const empty = process.argv[2]!;
  console.log(
    `Node ${process.version}. Ours, the other, ours divided by the other (median of pairs; least to most).\n`,
  );
  for (const lines of [200, 10_000]) {
    const pair = await keystroke(lines, SERVER, empty);
    if (!pair.fresh) throw new Error('The hints after two different keys were the same.');
    const aim = lines === 200 ? 3 : 2;
    row(`keystroke to fresh totals, ${lines} lines`, pair, 'an empty server on the same text', aim);
  }
  row('cold start to findings, 200 lines', await coldServer(SERVER, ['--stdio']), 'node -e 0', 2);
  row('empty server, cold', await coldServer(empty, []), 'node -e 0');
  row(
    'command line: price, cold',
    await coldCommand(COMMAND, 'examples/garden-wall/job.perp'),
    'node -e 0',
  );
  row(
    'a key to low and high price, 200 lines, 60 ranges',
    await rangesInAJob(60),
    'the same job with no ranges',
    2,
  );
  const read = await reading(10_000);
  row(
    `reading 10,000 lines (${read.perSecond} lines a second)`,
    read,
    'JSON.parse of the same words; a prototype took 4.5 µs a line',
  );
  await preview();
  await firm();
  const small = await laying(98_636, 15);
  row(
    `laying ${small.counted} bricks`,
    small.pair,
    'an object for each brick; a prototype’s runs took 0.0007 of it',
  );
  const large = await laying(10_000_000, 3);
  row(
    `laying ${large.counted} bricks`,
    large.pair,
    'an object for each brick; the aim is under 1 ms of our own',
  );
  const cuts = await nesting(500, 15);
  row(
    `nesting 500 cuts into ${cuts.bricks} bricks`,
    cuts.pair,
    `cutting them as they come, from ${cuts.inOrder} bricks; the aim is under 50 ms of our own`,
  );
  for (const levels of ['rows', 'own'] as const) await openings(levels);
  row(
    'drawing 4 m of 10 km of wall',
    await windowOf(15),
    'drawing the same 4 m of a wall of 20 m; the work is the same',
    2,
  );
  row(
    'drawing 4 m among 400 openings, set out before',
    await windowAmong(15),
    'drawing the same 4 m where only its own openings stand',
    2,
  );
}

main().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
