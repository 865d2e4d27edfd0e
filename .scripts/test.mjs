// npm test: the check, the build, the unit tests, the suite in an editor, the packaged extension.
// Every step runs, whatever the one before it did; the last line adds up their numbers.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chooseHost } from '../tests/host/choose.mjs';
import { findBrowser } from '../tests/host/places.mjs';
import { node, npm } from './steps.mjs';

const folder = mkdtempSync(path.join(tmpdir(), 'perpend-test-'));
const report = path.join(folder, 'unit.json');
const counts = path.join(folder, 'counts.json');

function title(text) {
  console.log(`\n== ${text}`);
}

function readJson(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
}

/** A step that failed with nothing counted as failed (it crashed, say) counts as one failure. */
function settle(code, { passed = 0, failed = 0 } = {}) {
  return { passed, failed: code !== 0 && failed === 0 ? 1 : failed };
}

/** A step without numbers of its own: nothing when it went well, one failure when not. */
async function plain(name, step) {
  title(name);
  return settle(await step());
}

/** The unit tests. A skipped test counts as failed: nobody has seen it pass. */
async function unit(name = 'unit tests', config = 'tests/vitest.config.ts') {
  title(name);
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const vitest = 'node_modules/vitest/vitest.mjs';
  const code = await node(vitest, ['run', '--config', config, ...reporters]);
  const found = readJson(report);
  if (!found) return { passed: 0, failed: 1 };
  const passed = found.numPassedTests;
  return settle(code, { passed, failed: found.numTotalTests - passed });
}

/** The page of the preview, driven in a browser without a window. */
function pages() {
  if (findBrowser()) return unit('pages in a browser', 'tests/host/page/vitest.config.ts');
  const why = 'There is no chromium on the PATH (or in CHROMIUM): pages in a browser were NOT run';
  console.log(`\nperpend: ${why}`);
  return { passed: 0, failed: process.env.CI === 'true' ? 1 : 0 };
}

/**
 * A step that leaves its numbers in a file; none and a good exit means that it did not run, and said so. None and a bad
 * exit means that it ended before anything was tried (no server, no browser, no window): it is run once more, and that
 * is said. What was tried and failed has failed.
 */
async function counted(name, script) {
  title(name);
  const first = await once(script);
  if (first.code === 0 || first.found) return settle(first.code, first.found);
  console.log(`\nperpend: it ended with ${first.code} before anything was tried, and is run again`);
  title(`${name}, again`);
  const { code, found } = await once(script);
  return settle(code, found);
}

async function once(script) {
  rmSync(counts, { force: true });
  const code = await node(script, [], { PERPEND_COUNTS: counts });
  return { code, found: readJson(counts) };
}

async function packaged() {
  const made = await plain('package', () => node('.scripts/package.mjs', ['--built']));
  if (made.failed > 0) return [made];
  if (['desktop', 'download'].includes(chooseHost().kind)) {
    console.log(
      '\nperpend: the packaged extension is tried in the server host only, and was NOT run',
    );
    return [made];
  }
  return [made, await counted('packaged extension', 'tests/host/packaged.mjs')];
}

async function main() {
  const check = await plain('types and style', () => npm('check'));
  const build = await plain('build', () => node('.scripts/build.mjs'));
  const units = await unit();
  const browser = await pages();
  const built = build.failed === 0;
  const host = built ? [await counted('suite in an editor', 'tests/host/launch.mjs')] : [];
  const preview = built ? [await counted('preview in an editor', 'tests/host/preview.mjs')] : [];
  const looked = built ? [await counted('pages looked through by axe', 'tests/host/axe.mjs')] : [];
  const web = built ? [await counted('suite in a browser', 'tests/host/web/launch.mjs')] : [];
  const last = built ? await packaged() : [];
  const all = [check, build, units, browser, ...host, ...preview, ...looked, ...web, ...last];
  const sum = (key) => all.reduce((total, step) => total + step[key], 0);
  rmSync(folder, { recursive: true, force: true });
  process.exitCode = sum('failed') === 0 ? 0 : 1;
  console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`);
}

await main();
