// npm run screens [-- --theme light,dark --view job,bar --to FOLDER]: pictures of every view of ours, as a reader sees them, in
// each kind of theme. Without words: all of them, into out/screens. The views are in views/, a function for each.
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { startBrowser } from './browser.mjs';
import { installHost } from './install.mjs';
import { missingForServer, root } from './places.mjs';
import { startServer } from './server.mjs';
import { Stage } from './stage.mjs';
import { FOLLOWS, makeReady, THEMES } from './themes.mjs';
import { VIEWS } from './views.mjs';

const { values: wanted } = parseArgs({
  options: {
    theme: { type: 'string', default: Object.keys(THEMES).join() },
    view: { type: 'string', default: Object.keys(VIEWS).join() },
    to: { type: 'string', default: path.join(root, 'out/screens') },
    /** Another build than the one in dist/. */
    extension: { type: 'string', default: root },
  },
});

/** @throws for a name that is none, since it would take no picture and look as if it had */
function chosen(words, known, kind) {
  const names = words.split(',');
  const wrong = names.find((name) => !Object.hasOwn(known, name));
  if (wrong) throw new Error(`No ${kind} is called ${wrong}: ${Object.keys(known).join(', ')}.`);
  return names;
}

/** A view that cannot be taken is told, and the others still are. */
async function take(stage, name) {
  const began = Date.now();
  try {
    await VIEWS[name](stage);
    console.log(`${name} ${((Date.now() - began) / 1000).toFixed(1)} s`);
  } catch (error) {
    process.exitCode = 1;
    console.error(`${name}: ${error.message}`);
    await stage.look(`failed-${name}`);
    await stage.start('garden-wall/job.perp');
  }
}

async function takeAll(themes, views, jobs) {
  const server = await startServer({ settings: FOLLOWS });
  const browser = await startBrowser();
  await makeReady(browser.page);
  const places = { port: server.port, jobs, extension: wanted.extension };
  const stage = new Stage(browser.page, { ...places, target: wanted.to, themes });
  try {
    await stage.start('garden-wall/job.perp');
    for (const name of views) await take(stage, name);
  } finally {
    await browser.stop();
    await server.stop();
  }
}

const themes = chosen(wanted.theme, THEMES, 'theme');
const views = chosen(wanted.view, VIEWS, 'view');
const missing = missingForServer();
if (missing.length > 0) throw new Error(`pictures need the server host: ${missing.join(', ')}`);
installHost();
mkdirSync(wanted.to, { recursive: true });
const folder = mkdtempSync(path.join(tmpdir(), 'perpend-jobs-'));
const jobs = path.join(folder, 'examples');
cpSync(path.join(root, 'examples'), jobs, { recursive: true });
try {
  await takeAll(themes, views, jobs);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
