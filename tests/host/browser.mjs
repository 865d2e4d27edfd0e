// A browser without a window, and one page in it.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { findBrowser } from './places.mjs';

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

/** @returns the page, and how to close it all again */
export async function startBrowser() {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-browser-'));
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: findBrowser(),
    headless: true,
    permissions: ['clipboard-read', 'clipboard-write'],
    viewport: { width: 1400, height: 900 },
    args,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const stop = async () => {
    await context.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  };
  return { page, stop };
}
