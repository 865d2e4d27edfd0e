// npm run screens [-- FOLDER [FILE...]]: pictures of examples as a reader sees them, light, dark and with high contrast.
// FILE is relative to examples/. Each picture set: the file with its hints, a hover, the Problems panel, and the job view and the
// commands (job-pictures.mjs).
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { withPalette } from '../../.scripts/png.mjs';
import { startBrowser } from './browser.mjs';
import { installHost } from './install.mjs';
import { photographJob } from './job-pictures.mjs';
import { missingForServer, root } from './places.mjs';
import { startServer } from './server.mjs';
import { hoverOnHeading, openFile, openProblems, waitForHint } from './workbench.mjs';

/** Enough for a window, whose letters are drawn in many greys. */
const COLOURS = 128;
const themes = {
  light: 'Default Light Modern',
  dark: 'Default Dark Modern',
  contrast: 'Default High Contrast',
  'contrast-light': 'Default High Contrast Light',
};
const [target = path.join(root, 'out/screens'), ...named] = process.argv.slice(2);
const files = named.length > 0 ? named : ['garden-wall/job.perp'];

async function photograph(page, port, jobs, file, name) {
  const shot = async (part) =>
    writeFileSync(
      path.join(target, `${name}-${part}.png`),
      withPalette(await page.screenshot(), COLOURS),
    );
  await openFile(page, port, { folder: jobs, file: path.join(jobs, file), development: root });
  await waitForHint(page);
  await shot('hints');
  await hoverOnHeading(page, 'wall');
  await shot('hover');
  await page.keyboard.press('Escape');
  await page.mouse.move(0, 0);
  await openProblems(page);
  await shot('problems');
  await page.keyboard.press('Control+KeyJ');
  await photographJob(page, shot);
}

async function inTheme(theme, jobs) {
  const settings = { 'workbench.colorTheme': themes[theme] };
  const server = await startServer({ settings });
  const browser = await startBrowser();
  try {
    for (const file of files) {
      const name = `${file.replace(/\W+/g, '-')}-${theme}`;
      await photograph(browser.page, server.port, jobs, file, name);
      console.log(path.join(target, `${name}-*.png`));
    }
  } finally {
    await browser.stop();
    await server.stop();
  }
}

const missing = missingForServer();
if (missing.length > 0) throw new Error(`pictures need the server host: ${missing.join(', ')}`);
installHost();
mkdirSync(target, { recursive: true });
const folder = mkdtempSync(path.join(tmpdir(), 'perpend-jobs-'));
const jobs = path.join(folder, 'examples');
cpSync(path.join(root, 'examples'), jobs, { recursive: true });
try {
  for (const theme of Object.keys(themes)) await inTheme(theme, jobs);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
