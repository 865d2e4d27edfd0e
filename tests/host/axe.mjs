// npm run test:axe: the page of the preview in a real window, in every theme and with everything it can show, looked through by axe.
import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { remove } from './leave.mjs';
import { root } from './places.mjs';
import { startServer } from './server.mjs';
import { Stage } from './stage.mjs';
import { FOLLOWS, makeReady, putOn, THEMES } from './themes.mjs';

const WAIT_MS = 180_000;
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

/** Each of them has a title of its own, which its page shows once it is there. */
async function turnTo(frame, kind) {
  if ((await frame.locator('#show').inputValue()) === kind) return;
  const title = frame.locator('#title');
  const before = await title.textContent();
  await frame.locator('#show').selectOption(kind);
  await until(
    frame,
    async () => (await title.textContent()) !== before,
    () => `${kind} is not shown`,
  );
  await painted(frame);
}

async function until(frame, holds, complaint) {
  const limit = Date.now() + WAIT_MS;
  while (!(await holds())) {
    if (Date.now() > limit) throw new Error(complaint());
    await frame.waitForTimeout(20);
  }
}

const painted = (frame) =>
  frame.evaluate('new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50)))');

/** The window has the theme on; its pages hear of it a little later. */
async function dressed(frame, theme) {
  const { page } = THEMES[theme];
  await until(
    frame,
    async () => (await frame.evaluate('document.body.dataset.vscodeThemeKind')) === page,
    () => `the page is not told of ${theme}`,
  );
  await painted(frame);
}

/** Papers can be shown as they are printed, in any theme. */
async function asPaper(frame) {
  const look = frame.getByRole('button', { name: 'Show as a sheet of paper' });
  await turnTo(frame, 'quote');
  await look.click();
  const faults = await axe(frame);
  await look.click();
  return faults.map((fault) => `quote as a sheet of paper: ${fault}`);
}

async function inTheme(frame, theme, kinds) {
  await dressed(frame, theme);
  const faults = [];
  for (const kind of kinds) {
    await turnTo(frame, kind);
    faults.push(...(await axe(frame)).map((fault) => `${kind}: ${fault}`));
  }
  return [...faults, ...(await asPaper(frame))];
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
    await check(`${theme}: ${kinds.length} pages`, () => inTheme(frame, theme, kinds));
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
    await remove(folder);
  }
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
process.exit();
