// VS Code's server and workbench on this machine's own address, for as long as a test or a reader needs it.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { nodeProgram, serverEntry } from './places.mjs';
import { writeSettings } from './settings.mjs';

const START_LIMIT_MS = 60_000;
const STOP_LIMIT_MS = 5_000;

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

/** Without the driver switch a built workbench ignores the extension and test paths in its address. */
function flags(port, config, { userFolder, extensionsFolder, development, trusting }) {
  const driver = development ? ['--vscode-option', 'enable-smoke-test-driver'] : [];
  return [
    ...['--auth', 'none', '--bind-addr', `127.0.0.1:${port}`, '--config', config],
    ...['--user-data-dir', userFolder, '--extensions-dir', extensionsFolder],
    ...['--disable-telemetry', '--disable-update-check'],
    ...(trusting ? ['--disable-workspace-trust'] : []),
    ...['--disable-getting-started-override', '--ignore-last-opened', ...driver],
  ];
}

function launch(args, folder) {
  const own = {
    XDG_RUNTIME_DIR: folder,
    XDG_CONFIG_HOME: folder,
    EXTENSIONS_GALLERY: '{"serviceUrl":""}',
  };
  const child = spawn(nodeProgram, [serverEntry, ...args], {
    env: { ...process.env, ...own },
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true, // a group of its own, so that stop() ends its children too
  });
  const log = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => log.push(part));
  return { child, log: () => Buffer.concat(log).toString() };
}

/** Asks for the page itself: `/healthz` is 200 even when the workbench cannot load. */
async function answers(port) {
  try {
    return (await fetch(`http://127.0.0.1:${port}/`)).status;
  } catch {
    return 0;
  }
}

async function untilUp(port, { child, log }) {
  const limit = Date.now() + START_LIMIT_MS;
  for (;;) {
    const status = await answers(port);
    if (status === 200) return;
    const over = child.exitCode !== null || status >= 500 || Date.now() > limit;
    if (over) throw new Error(`the editor's server did not start (status ${status})\n${log()}`);
    await sleep(50);
  }
}

async function end(child) {
  if (child.exitCode !== null || child.signalCode) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  process.kill(-child.pid, 'SIGTERM');
  await Promise.race([gone, sleep(STOP_LIMIT_MS, undefined, { ref: false })]);
}

/**
 * Starts the server.
 * @param userFolder, extensionsFolder kept by the caller; made here, and removed again, when absent
 * @param trusting whether every folder is trusted, and nobody is asked
 * @param development whether extensions can be run from their source folder
 * @returns its port, its log so far, and how to stop it
 */
export async function startServer({
  settings,
  userFolder,
  extensionsFolder,
  development = true,
  trusting = true,
} = {}) {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-host-'));
  const user = userFolder ?? path.join(folder, 'user');
  const extensions = extensionsFolder ?? path.join(folder, 'extensions');
  writeSettings(user, settings);
  mkdirSync(extensions, { recursive: true });
  const config = path.join(folder, 'config.yaml');
  writeFileSync(config, '');
  const port = await freePort();
  const where = { userFolder: user, extensionsFolder: extensions, development, trusting };
  const server = launch(flags(port, config, where), folder);
  const stop = async () => {
    await end(server.child);
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  };
  await untilUp(port, server).catch(async (error) => {
    await stop();
    throw error;
  });
  return { port, log: server.log, stop };
}

/** A file of this machine as a window of that server names it. */
export function remote(port, file) {
  return `vscode-remote://127.0.0.1:${port}${path.resolve(file)}`;
}

/** The address of a window on a folder; `payload` is a list of [name, value] for the workbench. */
export function address(port, folder, payload = []) {
  const url = new URL(`http://127.0.0.1:${port}/`);
  url.searchParams.set('folder', path.resolve(folder));
  if (payload.length > 0) url.searchParams.set('payload', JSON.stringify(payload));
  return url.href;
}
