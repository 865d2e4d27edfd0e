import { writeFileSync } from 'node:fs';
import Mocha from 'mocha';
import { FIRST_WAIT_MS, WAIT_MS } from './wait';

/** By this the launcher sees that the window has come as far as this: see stand-in.mjs. */
const BEGINS = 'PERPEND-BEGINS';

interface Result {
  readonly title: string;
  readonly state: string;
  readonly error?: string;
}

function resultOf(test: Mocha.Test): Result {
  return { title: test.fullTitle(), state: test.state ?? 'not run', error: test.err?.stack };
}

function allTests(suite: Mocha.Suite): Mocha.Test[] {
  return [...suite.tests, ...suite.suites.flatMap(allTests)];
}

function runMocha(mocha: Mocha): Promise<number> {
  return new Promise((resolve) => mocha.run(resolve));
}

/** The test files define themselves through Mocha's globals, so those must stand before they load. */
async function load(mocha: Mocha): Promise<void> {
  mocha.suite.emit('pre-require', globalThis, '', mocha);
  await import('./start.test');
  await import('./findings.test');
  await import('./help.test');
  await import('./reading.test');
  await import('./names.test');
  await import('./writing.test');
  await import('./preview.test');
  await import('./job-view.test');
  await import('./commands.test');
  await import('./compare.test');
  await import('./tasks.test');
  await import('./tools.test');
}

/**
 * Called by the editor. The outcome of each test goes to the file that PERPEND_RESULTS names.
 * @throws when a test failed
 */
export async function run(): Promise<void> {
  console.log(BEGINS);
  const mocha = new Mocha({ ui: 'bdd', timeout: 2 * WAIT_MS + FIRST_WAIT_MS });
  await load(mocha);
  // While one thing is worked on: PERPEND_ONLY="comparing" npm run test:host
  const { PERPEND_ONLY: only } = process.env;
  if (only) mocha.grep(only);
  const failures = await runMocha(mocha);
  const wanted = allTests(mocha.suite).filter(({ state }) => !only || state);
  const results = wanted.map(resultOf);
  writeFileSync(process.env.PERPEND_RESULTS ?? '', JSON.stringify(results));
  if (failures > 0) throw new Error(`${failures} tests failed`);
}
