#!/usr/bin/env node
// A stand-in for VS Code's program: takes test-electron's flags, and runs the same suite in VS Code's
// server with its window in a browser.
import { tmpdir } from 'node:os';
import path from 'node:path';
import { format } from 'node:util';
import { BEGINS, openSuite } from './begin.mjs';
import { startBrowser } from './browser.mjs';
import { address, remote, startServer } from './server.mjs';

/** Of the whole suite, on a machine that is slow and busy: reached only where it never ends. */
const LIMIT_MS = 1_800_000;
const TIMED_OUT = 124;
const NOISE =
  /Ignoring fetching|Creating a socket|connection token|AccountPolicyGate|AgentHost|authentication provider|reconnection-grace|Creation of workbench|\[Service Worker\]|additional builtin/;

/** `--name=value` flags by name; all else is the folder to open. */
function readArguments(args) {
  const flags = new Map();
  const rest = [];
  for (const arg of args) {
    const found = /^--([^=]+)(?:=(.*))?$/s.exec(arg);
    if (found) flags.set(found[1], found[2]);
    else rest.push(arg);
  }
  return { flags, folder: rest[0] ?? tmpdir() };
}

function windowAddress(port, { flags, folder }) {
  const names = ['extensionDevelopmentPath', 'extensionTestsPath'];
  const payload = names.map((name) => [name, remote(port, flags.get(name))]);
  return address(port, folder, payload);
}

/**
 * The workbench calls these two when it finds itself driven: what it logs, and the suite's exit code. Both stand before
 * the window is opened.
 * @returns whether the suite has begun, and what its exit code will be
 */
async function listen(page) {
  const heard = { begun: false, code: undefined };
  await page.exposeFunction('codeAutomationLog', (_type, args) => {
    const line = format(...args);
    if (line.includes(BEGINS)) heard.begun = true;
    else if (!NOISE.test(line)) console.log(line);
  });
  let exit;
  heard.code = new Promise((resolve) => {
    exit = resolve;
    setTimeout(resolve, LIMIT_MS, TIMED_OUT).unref();
  });
  await page.exposeFunction('codeAutomationExit', (code) => {
    heard.begun = true;
    exit(code);
  });
  return heard;
}

async function reportTimeout(page, server) {
  const picture = path.join(tmpdir(), 'perpend-host-timeout.png');
  await page.screenshot({ path: picture });
  console.error(`The suite did not end. Picture: ${picture}\n${server.log().slice(-3000)}`);
}

async function runIn(server, browser, wanted) {
  const heard = await listen(browser.page);
  await openSuite(browser.page, windowAddress(server.port, wanted), () => heard.begun);
  const code = await heard.code;
  if (code === TIMED_OUT) await reportTimeout(browser.page, server);
  return code;
}

async function main() {
  const wanted = readArguments(process.argv.slice(2));
  const userFolder = wanted.flags.get('user-data-dir');
  const server = await startServer({
    userFolder,
    extensionsFolder: wanted.flags.get('extensions-dir'),
  });
  let browser;
  const stop = async () => {
    await browser?.stop();
    await server.stop();
  };
  for (const signal of ['SIGINT', 'SIGTERM'])
    process.once(signal, () => void stop().then(() => process.exit(130)));
  try {
    browser = await startBrowser();
    return await runIn(server, browser, wanted);
  } finally {
    await stop();
  }
}

process.exit(await main());
