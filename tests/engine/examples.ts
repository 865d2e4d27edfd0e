/** The jobs of the examples, with the files they use. */
import { files, read } from '../tree';
import { inRoot, workspaceOf } from './world';

const perps = files().filter((file) => /^examples\/.*\.perp$/.test(file));

/** Every file of the examples, by its path under `examples`. */
export const EXAMPLES: Readonly<Record<string, string>> = Object.fromEntries(
  perps.map((file) => [file.slice('examples/'.length), read(file)]),
);

/** A job that is told day by day: each day says what the one before it said, and the last says all. */
const EARLIER_DAY = /^whole-life\/(?!11-)/;

/** Those that are jobs, and not a firm's file. */
export const JOBS: readonly string[] = Object.keys(EXAMPLES).filter(
  (name) => /^(wall|pier|repair) /m.test(EXAMPLES[name]!) && !EARLIER_DAY.test(name),
);

/** @param changed files with another text than the example's */
export function exampleJob(name: string, changed: Readonly<Record<string, string>> = {}) {
  return workspaceOf({ ...EXAMPLES, ...changed }).job(inRoot(name))!;
}
