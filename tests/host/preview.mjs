// npm run test:preview: the preview in a window of the server host, driven as a reader would: open, follow, click, load again.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startBrowser } from './browser.mjs';
import { chooseHost, notRun } from './choose.mjs';
import { tell } from './counts.mjs';
import { installHost } from './install.mjs';
import { root } from './places.mjs';
import { address, remote, startServer } from './server.mjs';
import { openFile } from './workbench.mjs';

/** The first of everything waits for the extension and its server; nothing here measures speed. */
const WAIT_MS = 60_000;

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
    if (Date.now() > limit) throw new Error(`waited for ${what}; last: ${JSON.stringify(answer)}`);
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

  said = (selector) => this.preview.locator(selector).textContent({ timeout: 1000 });

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
      () => status.textContent({ timeout: 1000 }),
      (text) => wanted.test(text),
    );
  }

  /** The line that the text shows as its own, though the focus is elsewhere. */
  async shows(line) {
    const number = this.page.locator('.monaco-editor .active-line-number').first();
    const asked = () => number.textContent({ timeout: 1000 });
    await until(`line ${line}`, asked, (text) => text.trim() === String(line));
  }

  async focusText() {
    const editor = this.page.locator('.monaco-editor .view-line').first();
    await editor.click({ timeout: WAIT_MS, position: { x: 4, y: 4 } });
  }

  async goTo(line, column = 1) {
    await this.page.keyboard.press('Control+KeyG');
    const input = this.page.locator('.quick-input-widget input').first();
    await input.waitFor({ timeout: WAIT_MS });
    await input.fill(`:${line}:${column}`);
    await this.page.keyboard.press('Enter');
    await this.cursorIn(line);
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
  const box = await on.board.locator('text', { hasText: '1010' }).first().boundingBox();
  await on.page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await on.reads('.readout', new RegExp(`width, line ${lineOf('width   1010')}$`));
  await on.shows(lineOf('width   1010'));
  await on.board.focus();
  for (const key of ['Escape', 'ArrowUp']) await on.page.keyboard.press(key);
  await on.reads('.readout', new RegExp(`^course .*line ${lineOf('dpc')}$`));
  await on.page.keyboard.press('Enter');
  await on.cursorIn(lineOf('dpc'));
}

async function draws(on) {
  await on.focusText();
  const column = TEXT.split('\n')[lineOf('16 courses') - 1].indexOf('16') + 2;
  await on.goTo(lineOf('16 courses'), column);
  await on.page.keyboard.press('Delete');
  await on.page.keyboard.type('9');
  await on.reads('#described', /19 courses high/);
  await on.page.keyboard.press('Control+KeyS');
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

/** In a browser the editor writes what it keeps once a minute; what came after that it loses, whatever we do. */
const KEPT_AFTER_MS = 65_000;

async function comesBack(on, port, folder) {
  const size = await setUp(on);
  await on.page.waitForTimeout(KEPT_AFTER_MS);
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
  await check('what is typed is drawn', () => draws(on));
  await check('in a window loaded again it is as it was', () => comesBack(on, port, folder));
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
    if (results.failed)
      await browser.page.screenshot({ path: path.join(tmpdir(), 'perpend-preview.png') });
    await browser.stop();
    await server.stop();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  tell(results.passed, results.failed);
  process.exitCode = results.failed === 0 ? 0 : 1;
}

await main();
