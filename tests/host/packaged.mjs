// npm run test:vsix: installs the packaged extension into a plain window, and reads an example in it.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { nodeProgram, root, serverEntry } from './places.mjs';
import { startServer } from './server.mjs';
import {
  choose,
  hoverOnHeading,
  openFile,
  openProblems,
  runCommand,
  waitForDrawing,
  waitForHint,
} from './workbench.mjs';

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

/** The command line that comes with the package, in the Node that runs this: it needs nothing else beside it. */
function runPackaged(cwd, ...args) {
  const program = path.join(places.extensionsFolder, `perpend.perpend-${version}/dist/perpend.cjs`);
  return execFileSync(process.execPath, [program, ...args], { cwd, encoding: 'utf8' });
}

async function readAtTerminal() {
  const { folder: jobs, file } = copyExamples('terminal');
  await check('its command line prices a job', async () =>
    assertMatches(runPackaged(jobs, 'price', file), /£\d,\d{3}\.\d\d/),
  );
  await check('its command line writes a PDF', async () => {
    const pdf = path.join(folder, 'quote.pdf');
    runPackaged(jobs, 'quote', file, '--out', pdf);
    const text = execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' });
    return assertMatches(text, /Orchard boundary wall/);
  });
}

/** A copy of the examples for one window. @returns the job in it */
function copyExamples(name) {
  const jobs = path.join(folder, name);
  cpSync(path.join(root, 'examples'), jobs, { recursive: true });
  return { folder: jobs, file: path.join(jobs, 'garden-wall/job.perp') };
}

const money = (page) => async () => assertMatches(await waitForHint(page), /£\s?\d.*/);

/** No source folder and no driver switch: the window has what the package brought, and nothing else. */
async function readExample(page, port) {
  const opened = copyExamples('jobs');
  await openFile(page, port, opened);
  await check('shows money at the end of a heading', money(page));
  await check('shows a working on hover', async () =>
    assertMatches(await hoverOnHeading(page, 'wall'), /\d[^×\n]*×.*\d/),
  );
  await check('shows the parts of the job', async () => {
    await page.locator('.pane-header', { hasText: /^Job/ }).click();
    await page.locator('.monaco-list-row', { hasText: 'North boundary' }).first().waitFor();
  });
  await check('draws the job beside it', async () => {
    await page.locator('.view-line').first().click();
    await runCommand(page, 'Perpend: Open Preview to the Side');
    await waitForDrawing(page);
  });
  await check('writes the quote', () => writeQuote(page, opened.folder));
}

/** As a reader does: which paper, in which form, and the place that the window proposes. */
async function writeQuote(page, jobs) {
  await runCommand(page, 'Perpend: Save a Paper, Page or Drawing…');
  await choose(page, 'Quote');
  await choose(page, 'PDF');
  await page.locator('.quick-input-widget .monaco-button', { hasText: /^(OK|Save)$/ }).click();
  const file = path.join(jobs, 'garden-wall/Quote 26-041.pdf');
  await until(() => existsSync(file) && statSync(file).size > 0);
  const text = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' });
  return assertMatches(text, /Orchard boundary wall/);
}

async function until(holds) {
  for (let i = 0; i < 300; i++) {
    if (holds()) return;
    await sleep(100);
  }
  throw new Error(`waited for ${holds}`);
}

/** Trust is asked for by nobody here, so the window is restricted. */
const RESTRICTED = {
  'security.workspace.trust.enabled': true,
  'security.workspace.trust.startupPrompt': 'never',
  'security.workspace.trust.banner': 'always',
};

async function readUntrusted(page, port) {
  await openFile(page, port, copyExamples('untrusted'));
  await check('a folder that nobody trusts is opened as such', () =>
    page.locator('.part.banner', { hasText: 'Restricted Mode' }).waitFor(),
  );
  await check('hints show in it', money(page));
  await check('findings show in it', async () => {
    await openProblems(page);
    await page.locator('.markers-panel .monaco-list-row', { hasText: 'perpend' }).first().waitFor();
  });
  await check('no task is offered in it', async () => {
    await runCommand(page, 'Tasks: Run Task');
    // Before anything can be run, the window asks whether the folder is trusted.
    await page.locator('.monaco-dialog-box', { hasText: /trust/i }).waitFor();
  });
}

/** Opens a window of a server with the installed extension. */
async function inWindow(more, work) {
  const server = await startServer({ ...places, ...more, development: false });
  const browser = await startBrowser();
  try {
    await work(browser.page, server.port);
    if (results.failed > 0)
      await browser.page.screenshot({ path: path.join(tmpdir(), 'perpend-vsix.png') });
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
  if (results.failed === 0) {
    await readAtTerminal();
    await inWindow({}, readExample);
    const userFolder = path.join(folder, 'careful');
    await inWindow({ userFolder, settings: RESTRICTED, trusting: false }, readUntrusted);
  }
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
