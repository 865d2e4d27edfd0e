// VS Code's server and workbench on this machine's own address, for as long as a test or a reader needs it.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { remove } from './leave.mjs';
import { nodeProgram, serverEntry } from './places.mjs';
import { writeSettings } from './settings.mjs';

/** For a machine that is slow and busy: nothing here measures speed. */
const START_LIMIT_MS = 180_000;
const STOP_LIMIT_MS = 10_000;

/** Without the driver switch a built workbench ignores the extension and test paths in its address. */
function flags(config, { userFolder, extensionsFolder, development, trusting }) {
  const driver = development ? ['--vscode-option', 'enable-smoke-test-driver'] : [];
  return [
    // It takes a port that is free, and tells which: one that we had looked for could be another's by now.
    ...['--auth', 'none', '--bind-addr', '127.0.0.1:0', '--config', config],
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

const portTold = (text) =>
  Number(/server listening on http:\/\/127\.0\.0\.1:(\d+)/.exec(text)?.[1]);

/** @returns its port */
async function untilUp({ child, log }) {
  const limit = Date.now() + START_LIMIT_MS;
  for (;;) {
    const port = portTold(log());
    const status = port ? await answers(port) : 0;
    if (status === 200) return port;
    const over = hasEnded(child) || status >= 500 || Date.now() > limit;
    if (over) throw new Error(`the editor's server did not start (status ${status})\n${log()}`);
    await sleep(50);
  }
}

const hasEnded = ({ exitCode, signalCode }) => exitCode !== null || signalCode !== null;

/** To it and all that it has started. */
function signal(child, name) {
  try {
    process.kill(-child.pid, name);
  } catch {
    // All of them have ended.
  }
}

/** What does not end when it is asked to is ended: it must not keep the machine busy for the steps that follow. */
async function end(child) {
  const gone = new Promise((resolve) => child.once('exit', resolve));
  if (!hasEnded(child)) {
    signal(child, 'SIGTERM');
    await Promise.race([gone, sleep(STOP_LIMIT_MS, undefined, { ref: false })]);
  }
  signal(child, 'SIGKILL');
}

/** A server that does not come up is started once more: nothing has been tried in it yet. */
async function started(run) {
  try {
    return await run();
  } catch (error) {
    console.log(`perpend: ${error.message}\nperpend: the editor's server is started once more`);
    return run();
  }
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
  const more = { userFolder, extensionsFolder, development, trusting };
  return started(() => startOnce(settings, more));
}

async function startOnce(settings, { userFolder, extensionsFolder, ...more }) {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-host-'));
  const user = userFolder ?? path.join(folder, 'user');
  const extensions = extensionsFolder ?? path.join(folder, 'extensions');
  writeSettings(user, settings);
  mkdirSync(extensions, { recursive: true });
  const config = path.join(folder, 'config.yaml');
  writeFileSync(config, '');
  const where = { ...more, userFolder: user, extensionsFolder: extensions };
  const server = launch(flags(config, where), folder);
  const stop = async () => {
    await end(server.child);
    await remove(folder);
  };
  const port = await untilUp(server).catch(async (error) => {
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
