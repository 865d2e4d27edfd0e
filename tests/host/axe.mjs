// npm run test:axe: the page of the preview in a real window, in every theme and with everything it can show, looked through by axe.
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { root } from './places.mjs';
import { startServer } from './server.mjs';
import { Stage } from './stage.mjs';
import { FOLLOWS, makeReady, putOn, THEMES } from './themes.mjs';

const WAIT_MS = 60_000;
/** It has nothing to measure, so it has nothing to say of it; everything else it shows something of. */
const JOB = 'whole-life/10-invoiced.perp';
const axeText = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const results = { passed: 0, failed: 0 };

async function check(name, faultsOf) {
  const faults = await faultsOf().catch((error) => [error.stack]);
  if (faults.length === 0) results.passed += 1;
  else results.failed += 1;
  console[faults.length ? 'error' : 'log'](`  ${faults.length ? 'FAIL' : 'ok  '}  ${name}`);
  for (const fault of faults) console.error(`        ${fault}`);
}

/** The page itself, and not what the editor puts round it. */
async function frameOf({ page }) {
  const inner = page.frameLocator('iframe.webview').locator('#active-frame');
  return (await inner.elementHandle({ timeout: WAIT_MS })).contentFrame();
}

/** Drawings are hidden from whoever hears a page, and so from axe: what is said of them is tested beside, in tests/preview. */
async function axe(frame) {
  if (!(await frame.evaluate('typeof axe !== "undefined"'))) await frame.evaluate(axeText);
  const found = await frame.evaluate(
    'axe.run({ exclude: [["svg"]] }, { resultTypes: ["violations"] })',
  );
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.html.slice(0, 120)} ${node.failureSummary}`),
  );
}

/** Each of them has a title of its own, which the window shows once it is there. */
async function turnTo(stage, frame, kind) {
  if ((await frame.locator('#show').inputValue()) === kind) return;
  const tab = stage.page.locator('.tab.active .label-name').last();
  const before = await tab.textContent();
  await frame.locator('#show').selectOption(kind);
  const limit = Date.now() + WAIT_MS;
  while ((await tab.textContent()) === before) {
    if (Date.now() > limit) throw new Error(`${kind} is not shown`);
    await stage.page.waitForTimeout(20);
  }
  await frame.evaluate('new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50)))');
}

/** Papers can be shown as they are printed, in any theme. */
async function asPaper(stage, frame) {
  const look = frame.getByRole('button', { name: 'Show as a sheet of paper' });
  await turnTo(stage, frame, 'quote');
  await look.click();
  const faults = await axe(frame);
  await look.click();
  return faults.map((fault) => `quote as a sheet of paper: ${fault}`);
}

async function inTheme(stage, frame, kinds) {
  const faults = [];
  for (const kind of kinds) {
    await turnTo(stage, frame, kind);
    faults.push(...(await axe(frame)).map((fault) => `${kind}: ${fault}`));
  }
  return [...faults, ...(await asPaper(stage, frame))];
}

/** A check that finds nothing proves something only if it would have. */
async function findsFaults(frame) {
  await frame.evaluate(`
    const faint = document.createElement('p');
    faint.textContent = 'Nobody can read this.';
    faint.style.cssText = 'color: #777; background: #888';
    const nameless = document.createElement('button');
    document.querySelector('main').append(faint, nameless);`);
  const found = (await axe(frame)).map((fault) => fault.split(':')[0]);
  return ['color-contrast', 'button-name'].filter((id) => !found.includes(id));
}

async function drive(stage) {
  await stage.start(JOB);
  await stage.show('front');
  const frame = await frameOf(stage);
  const kinds = await frame.evaluate(
    `[...document.querySelectorAll('#show option')].map(({ value }) => value)`,
  );
  console.log(`  shown: ${kinds.join(' ')}`);
  for (const theme of Object.keys(THEMES)) {
    await putOn(stage, theme);
    await check(`${theme}: ${kinds.length} pages`, () => inTheme(stage, frame, kinds));
  }
  await check('a page with faults is not let through', () => findsFaults(frame));
}

async function main() {
  const host = chooseHost({});
  if (host.kind === 'none') notRun(host.why, 'axe in an editor');
  installHost();
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-axe-'));
  const jobs = path.join(folder, 'jobs');
  cpSync(path.join(root, 'examples'), jobs, { recursive: true });
  const server = await startServer({ settings: FOLLOWS });
  const browser = await startBrowser();
  await makeReady(browser.page);
  const extension = process.argv[2] ?? root;
  try {
    await drive(new Stage(browser.page, { port: server.port, jobs, extension }));
  } finally {
    await browser.stop();
    await server.stop();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
