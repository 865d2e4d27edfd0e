// What a reader does and sees in the window: open a file, wait for the hints, hover, open Problems.
import { address, remote } from './server.mjs';

/** The first of everything waits for the extension and its server; nothing here measures speed. */
const FIRST_WAIT_MS = 180_000;
const WAIT_MS = 120_000;
/** Before a key or a click that led to nothing is given again. */
const AGAIN_MS = 15_000;

const LINE = '.monaco-editor .view-line';
/** What a window shows of a file once the extension runs: a finding, or an amount of money. */
const FINDING = '.monaco-editor [class*="squiggly-"]';
const MONEY = /[£$€]/;

/**
 * Opens a window on a folder with one of its files open. An editor gives up its extensions, for good and without a word,
 * when they take more than a minute to start: such a window is opened once more, since nothing was tried in it yet.
 * @param development the extension's source folder; without it only installed extensions run
 */
export async function openFile(page, port, { folder, file, development }) {
  const payload = [['openFile', remote(port, file)]];
  if (development) payload.push(['extensionDevelopmentPath', remote(port, development)]);
  const open = async () => {
    await page.goto(address(port, folder, payload));
    await page.locator(LINE).first().waitFor({ timeout: FIRST_WAIT_MS });
  };
  await open();
  if (await isAlive(page)) return;
  console.log('perpend: no extension has started in the window, and it is opened once more');
  await open();
}

function isAlive(page) {
  const sign = page.locator(LINE, { hasText: MONEY }).or(page.locator(FINDING)).first();
  return sign.waitFor({ timeout: FIRST_WAIT_MS }).then(
    () => true,
    () => false,
  );
}

/** @returns the text of the first line with an amount of money behind it */
export async function waitForHint(page) {
  const line = page.locator(LINE, { hasText: MONEY }).first();
  await line.waitFor({ timeout: FIRST_WAIT_MS });
  return (await line.textContent()).replaceAll('\u00a0', ' ');
}

/**
 * Rests the pointer on the word that opens a block: the first one of this kind.
 * @returns what the hover says
 */
export async function hoverOnHeading(page, kind) {
  // The editor draws spaces as no-break spaces, and so `\s`.
  const line = page.locator(LINE, { hasText: new RegExp(`^${kind}\\s`) }).first();
  const rows = page.locator('.monaco-hover:not(.hidden) .hover-row');
  const hover = rows.filter({ hasNotText: /^Loading/ }).first();
  // A hover that comes late may find that the window has moved on: the pointer rests there again.
  await again(page, 'a hover', async () => {
    await page.mouse.move(0, 0);
    await line.hover({ position: { x: 8, y: 8 }, timeout: AGAIN_MS });
    await hover.waitFor({ timeout: AGAIN_MS });
  });
  return hover.textContent();
}

const PICK = '.quick-input-widget';
const ROW = `${PICK} .quick-input-list .monaco-list-row`;

/** Chooses a row of the list that is open in the window. */
export async function choose(page, words, timeout = WAIT_MS) {
  await page.locator(ROW, { hasText: words }).first().click({ timeout });
}

/** The list over the window, opened by a key. A window that is busy may not hear the key, or close the list again. */
export async function openList(page, key, words) {
  const input = page.locator(`${PICK} input`).first();
  await again(page, `a list by ${key}`, async () => {
    await page.keyboard.press(key);
    await input.waitFor({ timeout: AGAIN_MS });
    await input.fill(words, { timeout: AGAIN_MS });
  });
}

/** Runs a command by its title, as the palette has it. */
export async function runCommand(page, title) {
  await again(page, title, async () => {
    await openList(page, 'F1', `>${title}`);
    await choose(page, title, AGAIN_MS);
  });
}

/** Does what a busy window may not have heard until it is done; what it left open over the window is closed before. */
export async function again(page, what, done) {
  const limit = Date.now() + WAIT_MS;
  for (;;)
    try {
      return await done();
    } catch (error) {
      if (Date.now() > limit) throw error;
      console.log(`  again ${what}`);
      await page.keyboard.press('Escape');
    }
}

/** Waits for the first drawing of a preview: a page in a frame in a frame. */
export async function waitForDrawing(page) {
  const preview = page.frameLocator('iframe.webview').frameLocator('#active-frame');
  await preview.locator('.board svg > g path').first().waitFor({ timeout: FIRST_WAIT_MS });
}

/** Opens the list of findings, and waits until it has settled on some rows or its empty message. */
export async function openProblems(page) {
  await page.keyboard.press('Control+Shift+KeyM');
  const panel = page.locator('.markers-panel');
  await panel.waitFor({ timeout: WAIT_MS });
  const settled = panel
    .locator('.monaco-list-row, .message-box-container')
    .filter({ visible: true });
  await settled.first().waitFor({ timeout: WAIT_MS });
}
