// npm run test:web: the extension in a browser's workers, on a folder that is on no disk.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { BEGINS, openSuite } from '../begin.mjs';
import { startBrowser } from '../browser.mjs';
import { chooseHost, notRun } from '../choose.mjs';
import { tell } from '../counts.mjs';
import { installHost } from '../install.mjs';
import { remove } from '../leave.mjs';
import { address, remote, startServer } from '../server.mjs';
import { buildForWeb } from './build.mjs';

/** Of the whole suite, on a machine that is slow and busy: reached only where it never ends. */
const LIMIT_MS = 900_000;
const TIMED_OUT = 124;
/** What the suite says comes on another way than that it has ended. */
const LATE_MS = 60_000;

/** @returns what the suite said of itself, and where the window asked for anything */
async function watch(page) {
  const heard = { begun: false, results: undefined, pdf: undefined, asked: [], log: [] };
  page.on('console', (message) => {
    const text = message.text();
    if (text.includes(BEGINS)) heard.begun = true;
    const found = /PERPEND-(RESULTS|PDF) (.*)$/s.exec(text);
    if (found?.[1] === 'RESULTS') heard.results = JSON.parse(found[2]);
    else if (found) heard.pdf = Buffer.from(found[2], 'base64');
    else heard.log.push(text);
  });
  // Of the whole browser: of pages in pages, workers and service workers too.
  page.context().on('request', (request) => heard.asked.push(request.url()));
  let exit;
  const ended = new Promise((resolve) => {
    exit = (code) => {
      heard.begun = true;
      resolve(code);
    };
    setTimeout(resolve, LIMIT_MS, TIMED_OUT).unref();
  });
  await page.exposeFunction('codeAutomationExit', exit);
  await page.exposeFunction('codeAutomationLog', () => undefined);
  return { heard, ended };
}

function windowAddress(port, built) {
  const payload = [
    ['extensionDevelopmentPath', remote(port, built.extension)],
    ['extensionDevelopmentKind', 'web'],
    ['extensionTestsPath', remote(port, built.suite)],
  ];
  const url = new URL(address(port, '/', payload));
  url.searchParams.set('folder', 'memory:/jobs');
  return url.href;
}

/** What poppler reads in it; it must say whose quote it is, and for how much. */
function checkPdf(bytes, folder) {
  if (!bytes) throw new Error('no PDF was written');
  if (bytes.toString('latin1', 0, 5) !== '%PDF-') throw new Error('what was written is no PDF');
  const file = path.join(folder, 'quote.pdf');
  writeFileSync(file, bytes);
  const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
  for (const wanted of [/Orchard boundary wall/, /Quillbank/, /£\s?\d/])
    if (!wanted.test(text)) throw new Error(`the PDF does not say ${wanted}:\n${text}`);
}

/** What an editor calls files of an extension in a page of its own; its service worker answers, and nothing goes out. */
const IN_PAGE =
  /^https:\/\/[^/]+\.vscode-resource\.vscode-cdn\.net\/.*\/extension\/dist\/preview\/[a-z.]+$/;

/** A window asks the address it stands at, and nobody else. */
function checkAsked(asked, port) {
  const own = new RegExp(
    `^(https?|wss?)://(127\\.0\\.0\\.1|localhost):${port}/|^(data|blob|about):|${IN_PAGE.source}`,
  );
  const strange = [...new Set(asked.filter((url) => !own.test(url)))];
  if (!asked.length) throw new Error('nothing was seen of what the window asks for');
  if (strange.length) throw new Error(`the window asked elsewhere:\n${strange.join('\n')}`);
}

/** What may help to find out why a test failed. */
async function tellMore(page, { results, log }, code) {
  if (!results) console.error(`The suite left no results (${code}).`);
  console.error(log.filter((line) => !/ WARN |socket|gallery|Creation of/.test(line)).join('\n'));
  const told = await page.locator('.notification-list-item-message').allTextContents();
  console.error(['What the window tells:', ...told].join('\n'));
  const picture = path.join(tmpdir(), 'perpend-web.png');
  await page.screenshot({ path: picture });
  console.error(`Picture: ${picture}`);
}

function outcome(title, check) {
  try {
    check();
    return { title, state: 'passed' };
  } catch (error) {
    return { title, state: 'failed', error: error.stack };
  }
}

async function inWindow(folder) {
  const built = await buildForWeb(folder);
  const server = await startServer();
  const browser = await startBrowser();
  try {
    const { heard, ended } = await watch(browser.page);
    await openSuite(browser.page, windowAddress(server.port, built), () => heard.begun);
    const code = await ended;
    for (const limit = Date.now() + LATE_MS; !heard.results && Date.now() < limit; )
      await sleep(50);
    if (!heard.results?.every(({ state }) => state === 'passed'))
      await tellMore(browser.page, heard, code);
    // Without numbers: whoever runs this may see that nothing was tried. A suite that never ended is no such case.
    if (!heard.results && code !== TIMED_OUT) throw new Error('The suite left no results.');
    return [
      ...(heard.results ?? [{ title: 'the suite in the browser', state: 'failed' }]),
      outcome('the PDF of the browser is one, and says what it should', () =>
        checkPdf(heard.pdf, folder),
      ),
      outcome('nothing is asked of any other address', () => checkAsked(heard.asked, server.port)),
    ];
  } finally {
    await browser.stop();
    await server.stop();
  }
}

async function main() {
  const host = chooseHost({});
  if (host.kind === 'none') notRun(host.why, 'the suite in the browser');
  installHost();
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-web-'));
  const results = await inWindow(folder);
  await remove(folder);
  for (const { title, state, error } of results)
    console.log(state === 'passed' ? `  ok    ${title}` : `  FAIL  ${title}\n${error ?? ''}`);
  const failed = results.filter(({ state }) => state !== 'passed').length;
  tell(results.length - failed, failed);
  process.exitCode = failed === 0 ? 0 : 1;
}

await main();
process.exit();
