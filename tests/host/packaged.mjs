// npm run test:vsix: installs the packaged extension into a plain window, and reads an example in it.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { remove } from './leave.mjs';
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
/** For a machine that is slow and busy: nothing here measures speed. */
const WAIT_MS = 120_000;
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
    const header = page.locator('.pane-header', { hasText: /^Job/ });
    if ((await header.getAttribute('aria-expanded')) !== 'true') await header.click();
    await page.locator('.monaco-list-row', { hasText: 'North boundary' }).first().waitFor();
  });
  await check('draws the job beside it', async () => {
    await page.keyboard.press('Escape'); // a hover may still lie over the text
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
  await takePlace(page);
  const file = path.join(jobs, 'garden-wall/Quote 26-041.pdf');
  return untilDone(() => {
    const text = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8', stdio: 'pipe' });
    return assertMatches(text, /Orchard boundary wall/);
  });
}

/** The question for the place goes once it is answered; while it looks at the place it may not hear a click. */
async function takePlace(page) {
  const question = page.locator('.quick-input-widget');
  for (let tries = 1; ; tries++) {
    await question.locator('.monaco-button', { hasText: /^(OK|Save)$/ }).click();
    const gone = question.waitFor({ state: 'hidden', timeout: WAIT_MS / 4 });
    if (tries === 4) return gone;
    const went = await gone.then(
      () => true,
      () => false,
    );
    if (went) return;
  }
}

/** What is not there yet, or not whole, is looked at again. */
async function untilDone(done) {
  const limit = Date.now() + WAIT_MS;
  for (;;)
    try {
      return done();
    } catch (error) {
      if (Date.now() > limit) throw error;
      await sleep(100);
    }
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
    const picture = path.join(tmpdir(), 'perpend-vsix.png');
    if (results.failed > 0) await browser.page.screenshot({ path: picture }).catch(() => undefined);
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
  await remove(folder);
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
process.exit();
