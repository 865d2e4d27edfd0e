// What a reader does and sees in the window: open a file, wait for the hints, hover, open Problems.
import { address, remote } from './server.mjs';

/** The first of everything waits for the extension and its server; nothing here measures speed. */
const FIRST_WAIT_MS = 60_000;
const WAIT_MS = 30_000;

const LINE = '.monaco-editor .view-line';

/**
 * Opens a window on a folder with one of its files open.
 * @param development the extension's source folder; without it only installed extensions run
 */
export async function openFile(page, port, { folder, file, development }) {
  const payload = [['openFile', remote(port, file)]];
  if (development) payload.push(['extensionDevelopmentPath', remote(port, development)]);
  await page.goto(address(port, folder, payload));
  await page.locator(LINE).first().waitFor({ timeout: FIRST_WAIT_MS });
}

/** @returns the text of the first line with an amount of money behind it */
export async function waitForHint(page) {
  const line = page.locator(LINE, { hasText: /[£$€]/ }).first();
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
  for (let tries = 1; ; tries++) {
    await line.hover({ position: { x: 8, y: 8 }, timeout: WAIT_MS });
    const seen = await hover.waitFor({ timeout: WAIT_MS / 2 }).then(
      () => true,
      () => tries > 3,
    );
    if (seen) break;
    await page.mouse.move(0, 0);
  }
  return hover.textContent();
}

/** Chooses a row of the list that is open in the window. */
export async function choose(page, words) {
  const row = page.locator('.quick-input-list .monaco-list-row', { hasText: words }).first();
  await row.click({ timeout: WAIT_MS });
}

/** Runs a command by its title, as the palette has it. */
export async function runCommand(page, title) {
  await page.keyboard.press('F1');
  const input = page.locator('.quick-input-widget input').first();
  await input.waitFor({ timeout: WAIT_MS });
  await input.fill(`>${title}`);
  await choose(page, title);
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
