// npm run test:preview: the preview in a window of the server host, driven as a reader would: open, follow, click, load again.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { remove } from './leave.mjs';
import { root } from './places.mjs';
import { address, remote, startServer } from './server.mjs';
import { again, openFile, openList, runCommand } from './workbench.mjs';

/** The first of everything waits for the extension and its server; nothing here measures speed. */
const WAIT_MS = 180_000;
/** So long a question to the window may take before it is asked again. */
const ASKED_MS = 5000;

const TEXT = `perpend 1
use uk

wall north "North wall"
  brick     standard
  bond      flemish
  thick     1 brick
  length    5.39 m
  height    16 courses
  dpc       engineering 2 courses

  opening gate "Garden gate"
    from    left 1347.5 mm
    width   1010 mm

pier lone "Lone pier"
  size      2 x 2 bricks
  height    12 courses
`;
/** Counted from 1, as an editor shows them. */
const lineOf = (words) => TEXT.split('\n').findIndex((line) => line.includes(words)) + 1;

const results = { passed: 0, failed: 0 };

async function check(name, holds) {
  try {
    await holds();
    results.passed += 1;
    console.log(`  ok    ${name}`);
  } catch (error) {
    results.failed += 1;
    console.error(`  FAIL  ${name}\n${error.stack}`);
  }
}

/** Asks again and again until it is so. */
async function until(what, asked, wanted) {
  const limit = Date.now() + WAIT_MS;
  for (;;) {
    const answer = await asked().catch((error) => error.message);
    if (wanted(answer)) return answer;
    if (Date.now() > limit)
      throw new Error(`waited for ${what}; last: ${JSON.stringify(answer)?.slice(-3000)}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** What a reader sees of a window and of the preview in it: a frame in a frame. */
class Window {
  constructor(page) {
    this.page = page;
    this.preview = page.frameLocator('iframe.webview').frameLocator('#active-frame');
    this.board = this.preview.locator('.board');
  }

  said = (selector) => this.preview.locator(selector).textContent({ timeout: ASKED_MS });

  async reads(selector, wanted) {
    return until(
      `${selector} ${wanted}`,
      () => this.said(selector),
      (text) => wanted.test(text),
    );
  }

  async drawn() {
    await this.board.locator('svg > g path').first().waitFor({ timeout: WAIT_MS });
  }

  /** The cursor of the text, as the status bar has it. */
  async cursorIn(line) {
    const status = this.page.locator('#status\\.editor\\.selection');
    const wanted = new RegExp(`Ln ${line},`);
    await until(
      `line ${line}`,
      () => status.textContent({ timeout: ASKED_MS }),
      (text) => wanted.test(text),
    );
  }

  /** The line that the text shows as its own, though the focus is elsewhere. */
  async shows(line) {
    const number = this.page.locator('.monaco-editor .active-line-number').first();
    const asked = () => number.textContent({ timeout: ASKED_MS });
    await until(`line ${line}`, asked, (text) => text.trim() === String(line));
  }

  async focusText() {
    const editor = this.page.locator('.monaco-editor .view-line').first();
    await editor.click({ timeout: WAIT_MS, position: { x: 4, y: 4 } });
  }

  async goTo(line, column = 1) {
    await again(this.page, `line ${line}`, async () => {
      await openList(this.page, 'Control+KeyG', `:${line}:${column}`);
      await this.page.keyboard.press('Enter');
      await this.page
        .locator('.quick-input-widget')
        .waitFor({ state: 'hidden', timeout: ASKED_MS });
    });
    await this.cursorIn(line);
  }

  /** Where something is, once it has stopped moving: a drawing that follows the cursor glides there. */
  async placeOf(what) {
    let last;
    await until(
      'something that stands still',
      async () => {
        const now = JSON.stringify(await what.boundingBox({ timeout: ASKED_MS }));
        const still = now === last && now !== 'null';
        last = now;
        return still;
      },
      (still) => still === true,
    );
    return JSON.parse(last);
  }
}

async function opens(on) {
  const icon = on.page.locator('.editor-actions a[aria-label*="Preview to the Side"]').first();
  await icon.click({ timeout: WAIT_MS });
  await on.drawn();
  await on.reads('#title', /^North wall$/);
}

async function follows(on) {
  await on.focusText();
  await on.goTo(lineOf('width   1010'));
  await until(
    'a mark',
    () => on.board.locator('.over .marked').count(),
    (count) => count === 1,
  );
  await on.goTo(lineOf('12 courses'));
  await on.reads('#title', /^Lone pier$/);
  await on.goTo(lineOf('5.39 m'));
  await on.reads('#title', /^North wall$/);
}

async function leads(on) {
  const box = await on.placeOf(on.board.locator('text', { hasText: '1010' }).first());
  await on.page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await on.reads('.readout', new RegExp(`width, line ${lineOf('width   1010')}$`));
  await on.shows(lineOf('width   1010'));
  await on.board.focus();
  for (const key of ['Escape', 'ArrowUp']) await on.page.keyboard.press(key);
  await on.reads('.readout', new RegExp(`^course .*line ${lineOf('dpc')}$`));
  await on.page.keyboard.press('Enter');
  await on.cursorIn(lineOf('dpc'));
}

async function draws(on, file) {
  await on.focusText();
  const column = TEXT.split('\n')[lineOf('16 courses') - 1].indexOf('16') + 2;
  await on.goTo(lineOf('16 courses'), column);
  await on.page.keyboard.press('Delete');
  await on.page.keyboard.type('9');
  await on.reads('#described', /19 courses high/);
  await on.page.keyboard.press('Control+KeyS');
  await until(
    'the file on the disk',
    async () => readFileSync(file, 'utf8'),
    (text) => text.includes('19 courses'),
  );
}

/** Where in the drawing its reader is. */
function placeIn(on) {
  return on.board.evaluate((board) => `${board.scrollLeft} ${board.scrollTop}`, undefined, {
    timeout: ASKED_MS,
  });
}

/** Larger, and elsewhere in it: what nobody would see by themselves. */
async function moveAbout(on) {
  for (const _ of [1, 2, 3]) await on.preview.getByRole('button', { name: 'Zoom in' }).click();
  await on.board.evaluate((board) => board.scrollTo({ left: 30, top: 60, behavior: 'instant' }));
  await until(
    'another place',
    () => placeIn(on),
    (place) => place === '30 60',
  );
  // What has moved is kept once it rests.
  const size = await on.said('.size');
  await isWritten(on, { size, left: 30, top: 60 });
  return size;
}

async function isAsBefore(on, size) {
  await on.drawn();
  await on.reads('#title', /plan$/);
  await on.reads('.size', new RegExp(`^${size}$`));
  await until(
    'the place in the drawing',
    () => placeIn(on),
    (place) => place === '30 60',
  );
}

/** The page of a preview that nobody sees is gone: it is made again, as it was. */
async function staysOverHiding(on) {
  await setUp(on);
  const size = await moveAbout(on);
  await on.preview.locator('#title').click();
  await runCommand(on.page, 'New Untitled Text File');
  await until(
    'the preview to be hidden',
    () => on.page.locator('iframe.webview').filter({ visible: true }).count(),
    (count) => count === 0,
  );
  await runCommand(on.page, 'View: Close Editor');
  await isAsBefore(on, size);
}

async function staysOverMoving(on) {
  const size = await on.said('.size');
  for (const group of ['First', 'Next']) {
    await on.preview.locator('#title').click();
    await runCommand(on.page, `View: Move Editor into ${group} Group`);
    await isAsBefore(on, size);
  }
}

/** While its text is in a tab it can be saved again; then nothing of it is left to draw until the file is back. */
async function goesAndComesBack(on, file) {
  await on.drawn();
  rmSync(file);
  const tab = on.page.locator('.tab', { hasText: 'job.perp' }).first();
  await tab.click({ timeout: WAIT_MS });
  await runCommand(on.page, 'View: Close Editor');
  await on.reads('.nothing', /^job\.perp is not there any more/);
  writeFileSync(file, TEXT);
  await on.drawn();
  await on.reads('#title', /^North wall/);
}

/** Another drawing and another size, which nobody would see by themselves. @returns the size */
async function setUp(on) {
  await on.preview.locator('#show').selectOption('plan');
  await on.reads('#title', /plan$/);
  const before = await on.said('.size');
  await on.preview.getByRole('button', { name: 'Zoom in' }).click();
  return until(
    'another size',
    () => on.said('.size'),
    (text) => text !== before,
  );
}

/**
 * What the editor has written into the browser’s own store, as one text. It does so when another window is turned to, and
 * once a minute; what comes after that it loses, whatever we do.
 */
const WRITTEN = `(async () => {
  const looksAway = Object.defineProperty(document, 'hasFocus', { value: () => false, configurable: true });
  looksAway.dispatchEvent(new Event('visibilitychange'));
  delete document.hasFocus;
  document.dispatchEvent(new Event('visibilitychange'));
  const done = (asked) => new Promise((resolve, reject) => {
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
  const texts = [];
  for (const { name } of await indexedDB.databases()) {
    if (!name.startsWith('vscode-web-state-db-')) continue;
    const store = await done(indexedDB.open(name));
    const names = [...store.objectStoreNames];
    for (const each of names) texts.push(...await done(store.transaction(each).objectStore(each).getAll()));
    store.close();
  }
  return texts.filter((text) => typeof text === 'string').join('\\n').replaceAll('\\\\', '');
})()`;

/** The page keeps what is shown, how large, and where in it; the editor writes that down. */
async function isWritten(on, { size, ...place }) {
  const wanted = { ...place, size: Number.parseInt(size, 10) };
  const isIt = (kept) => {
    const found = (name) => Number(new RegExp(`"${name}":([\\d.]+)`).exec(kept)?.[1]);
    const is = { size: Math.round(found('zoom') * 100), left: found('left'), top: found('top') };
    return Object.entries(wanted).every(([name, value]) => is[name] === value);
  };
  await until(
    'it to be written by the editor',
    () => on.page.evaluate(WRITTEN),
    (text) => (text.match(/\{[^{}]*"show":"plan"[^{}]*\}/g) ?? []).some(isIt),
  );
}

async function comesBack(on, port, folder) {
  const size = await setUp(on);
  await isWritten(on, { size });
  await on.page.goto(address(port, folder, [['extensionDevelopmentPath', remote(port, root)]]));
  await on.drawn();
  await on.reads('#title', /plan$/);
  await on.reads('.size', new RegExp(`^${size}$`));
}

async function drive(page, port, folder) {
  const file = path.join(folder, 'job.perp');
  writeFileSync(file, TEXT);
  await openFile(page, port, { folder, file, development: root });
  const on = new Window(page);
  await check('the icon of the editor opens it, drawn', () => opens(on));
  await check('it follows the cursor', () => follows(on));
  await check('a click and Enter lead to the line', () => leads(on));
  await check('what is typed is drawn', () => draws(on, file));
  await check('hidden behind another tab it stays as it was', () => staysOverHiding(on));
  await check('moved to another group it stays as it was', () => staysOverMoving(on));
  await check('in a window loaded again it is as it was', () => comesBack(on, port, folder));
  await check('of a file that is deleted it says so, and is back with it', () =>
    goesAndComesBack(on, file),
  );
}

async function main() {
  const host = chooseHost({});
  if (host.kind === 'none') notRun(host.why, 'the preview in an editor');
  installHost();
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-preview-'));
  const server = await startServer();
  const browser = await startBrowser();
  try {
    await drive(browser.page, server.port, folder);
  } finally {
    const picture = path.join(tmpdir(), 'perpend-preview.png');
    if (results.failed) await browser.page.screenshot({ path: picture }).catch(() => undefined);
    await browser.stop();
    await server.stop();
    await remove(folder);
  }
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
process.exit();
