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
  await line.hover({ position: { x: 8, y: 8 }, timeout: WAIT_MS });
  const hover = page.locator('.monaco-hover:not(.hidden) .hover-row').first();
  await hover.waitFor({ timeout: WAIT_MS });
  return hover.textContent();
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
