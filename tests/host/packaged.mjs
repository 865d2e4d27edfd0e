// npm run test:vsix: installs the packaged extension into a plain window, and reads an example in it.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { nodeProgram, root, serverEntry } from './places.mjs';
import { startServer } from './server.mjs';
import { hoverOnHeading, openFile, waitForHint } from './workbench.mjs';

const { version } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
const vsix = path.join(root, `out/perpend-${version}.vsix`);
const folder = mkdtempSync(path.join(tmpdir(), 'perpend-vsix-'));
const places = {
  userFolder: path.join(folder, 'user'),
  extensionsFolder: path.join(folder, 'ext'),
};
const results = { passed: 0, failed: 0 };

async function check(name, holds) {
  try {
    const seen = await holds();
    results.passed += 1;
    console.log(`  ok    ${name}${seen ? `: ${seen}` : ''}`);
  } catch (error) {
    results.failed += 1;
    console.error(`  FAIL  ${name}\n${error.stack}`);
  }
}

/** @returns the part that matched, to be shown */
function assertMatches(text, pattern) {
  const found = pattern.exec(text);
  if (!found) throw new Error(`expected ${pattern}, got ${JSON.stringify(text)}`);
  return found[0];
}

function install() {
  const where = ['--user-data-dir', places.userFolder, '--extensions-dir', places.extensionsFolder];
  const args = [serverEntry, '--install-extension', vsix, ...where];
  const env = { ...process.env, XDG_CONFIG_HOME: folder };
  return execFileSync(nodeProgram, args, { encoding: 'utf8', env });
}

/** No source folder and no driver switch: the window has what the package brought, and nothing else. */
async function readExample(page, port) {
  const jobs = path.join(folder, 'jobs');
  cpSync(path.join(root, 'examples'), jobs, { recursive: true });
  await openFile(page, port, { folder: jobs, file: path.join(jobs, 'garden-wall/job.perp') });
  await check('shows money at the end of a heading', async () =>
    assertMatches(await waitForHint(page), /£\s?\d.*/),
  );
  await check('shows a working on hover', async () =>
    assertMatches(await hoverOnHeading(page, 'wall'), /\d[^×\n]*×.*\d/),
  );
}

async function inWindow() {
  const server = await startServer({ ...places, development: false });
  const browser = await startBrowser();
  try {
    await readExample(browser.page, server.port);
  } finally {
    await browser.stop();
    await server.stop();
  }
}

async function main() {
  const host = chooseHost({});
  if (host.kind === 'none') notRun(host.why, 'the check of the packaged extension');
  installHost();
  await check('installs', async () => assertMatches(install(), /successfully installed/));
  if (results.failed === 0) await inWindow();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
