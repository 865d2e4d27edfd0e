// A browser without a window, and one page in it.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { chromium } from 'playwright-core';
import { remove } from './leave.mjs';
import { findBrowser } from './places.mjs';

/** For a machine that is slow and busy: nothing here measures speed. */
const LIMIT_MS = 180_000;
const STOP_LIMIT_MS = 20_000;

const args = [
  '--headless',
  '--no-sandbox', // the suite may run as root in a container
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A browser that does not come up is started once more: nothing has been tried in it yet. */
async function launched(folder) {
  try {
    return await launch(folder);
  } catch (error) {
    console.log(`perpend: ${error.message}\nperpend: the browser is started once more`);
    return launch(folder);
  }
}

function launch(folder) {
  return chromium.launchPersistentContext(folder, {
    executablePath: findBrowser(),
    headless: true,
    permissions: ['clipboard-read', 'clipboard-write'],
    viewport: { width: 1400, height: 900 },
    args,
    timeout: LIMIT_MS,
  });
}

/** @returns the page, and how to close it all again */
export async function startBrowser() {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-browser-'));
  const context = await launched(folder);
  context.setDefaultTimeout(LIMIT_MS);
  const page = context.pages()[0] ?? (await context.newPage());
  const stop = async () => {
    await Promise.race([context.close(), sleep(STOP_LIMIT_MS, undefined, { ref: false })]);
    await remove(folder);
  };
  return { page, stop };
}
