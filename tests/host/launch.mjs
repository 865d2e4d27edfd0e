// npm run test:host: the suite inside an editor, on a copy of the examples, with its results read back.
import { cpSync, existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { runTests } from '@vscode/test-electron';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { remove } from './leave.mjs';
import { root } from './places.mjs';
import { writeSettings } from './settings.mjs';

/** test-electron 3 asks for Node 22; 2.5 is the newest that runs on Node 20. */
function editorFor(host) {
  if (host.kind === 'desktop') return { vscodeExecutablePath: host.executable };
  if (host.kind === 'download') return { version: host.version };
  installHost();
  return { vscodeExecutablePath: path.join(import.meta.dirname, 'stand-in.mjs') };
}

/** A folder for one run: the copied examples, a new user, no other extensions, the results. */
function prepare() {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-run-'));
  const within = (name) => path.join(folder, name);
  cpSync(path.join(root, 'examples'), within('jobs'), { recursive: true });
  writeSettings(within('user'));
  return {
    folder,
    jobs: within('jobs'),
    user: within('user'),
    extensions: within('extensions'),
    results: within('results.json'),
  };
}

/** @returns the editor's complaint, or undefined when it ended well */
async function runEditor(host, run) {
  const user = [`--user-data-dir=${run.user}`, `--extensions-dir=${run.extensions}`];
  try {
    await runTests({
      ...editorFor(host),
      extensionDevelopmentPath: root,
      extensionTestsPath: path.join(root, 'dist/test/suite.cjs'),
      launchArgs: [run.jobs, ...user, '--disable-extensions'],
      extensionTestsEnv: { PERPEND_RESULTS: run.results },
    });
    return undefined;
  } catch (error) {
    return String(error);
  }
}

/** The tests' outcomes; an editor that wrote none has failed, whatever it says of itself. */
function readResults(file) {
  if (!existsSync(file)) return [];
  return JSON.parse(readFileSync(file, 'utf8'));
}

/** @returns how many failed; an editor that ends badly although every test passed counts as one */
function countFailed(results, complaint) {
  const failed = results.filter(({ state }) => state !== 'passed').length;
  if (complaint && failed === 0) console.error(complaint);
  return failed || Number(Boolean(complaint));
}

/** Without numbers: whoever runs this may see that nothing was tried. A suite that never ended is no such case. */
function leftNothing(complaint) {
  console.error(`${complaint ?? ''}\nThe editor left no results.`);
  if (/\b124\b/.test(complaint ?? '')) tell(0, 1);
  process.exitCode = 1;
}

async function main() {
  const host = chooseHost();
  if (host.kind === 'none') notRun(host.why, 'the suite in the editor');
  const run = prepare();
  const complaint = await runEditor(host, run);
  const results = readResults(run.results);
  await remove(run.folder);
  if (results.length === 0) return leftNothing(complaint);
  for (const { title, error } of results.filter(({ state }) => state !== 'passed'))
    console.error(`FAILED ${title}\n${error ?? 'did not run'}`);
  const failed = countFailed(results, complaint);
  tell(results.filter(({ state }) => state === 'passed').length, failed);
  process.exitCode = failed === 0 ? 0 : 1;
}

await main();
process.exit();
