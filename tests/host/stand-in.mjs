#!/usr/bin/env node
// A stand-in for VS Code's program: takes test-electron's flags, and runs the same suite in VS Code's
// server with its window in a browser.
import { tmpdir } from 'node:os';
import path from 'node:path';
import { format } from 'node:util';
import { startBrowser } from './browser.mjs';
import { address, remote, startServer } from './server.mjs';

const LIMIT_MS = 600_000;
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

/** The workbench calls these two when it finds itself driven: what it logs, and the suite's exit code. */
async function listen(page) {
  await page.exposeFunction('codeAutomationLog', (_type, args) => {
    const line = format(...args);
    if (!NOISE.test(line)) console.log(line);
  });
  return new Promise((resolve) => {
    page.exposeFunction('codeAutomationExit', resolve);
    setTimeout(resolve, LIMIT_MS, TIMED_OUT).unref();
  });
}

async function reportTimeout(page, server) {
  const picture = path.join(tmpdir(), 'perpend-host-timeout.png');
  await page.screenshot({ path: picture });
  console.error(`The suite did not end. Picture: ${picture}\n${server.log().slice(-3000)}`);
}

async function runIn(server, browser, wanted) {
  const ended = listen(browser.page);
  await browser.page.goto(windowAddress(server.port, wanted));
  const code = await ended;
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
