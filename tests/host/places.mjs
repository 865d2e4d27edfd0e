// Where the server host lives, which versions it has, and what it needs of the machine.
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '../..');

/** code-server 4.N brings VS Code 1.N and runs on Node 24 only, so that comes along, kept to this folder. */
export const versions = { node: '24.21.0', codeServer: '4.139.1' };

/** Kept outside the checkout: 0.8 GB that all checkouts share. */
export const hostFolder =
  process.env.PERPEND_HOST ??
  path.join(process.env.XDG_CACHE_HOME ?? path.join(homedir(), '.cache'), 'perpend-host');

const nodePackage = `node-linux-${process.arch}`;
export const nodeSpec = `${nodePackage}@${versions.node}`;
export const nodeFolder = path.join(hostFolder, 'node_modules', nodePackage);
export const nodeProgram = path.join(nodeFolder, 'bin/node');
export const codeServer = path.join(hostFolder, 'node_modules/code-server');
export const serverEntry = path.join(codeServer, 'out/node/entry.js');

/** Written last by the installer: what stands in the folder is complete, and of these versions. */
export const doneFile = path.join(hostFolder, '.done');
export const doneText = `${versions.node} ${versions.codeServer}`;

export function isInstalled() {
  return existsSync(doneFile) && readFileSync(doneFile, 'utf8').trim() === doneText;
}

function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The first of these programs that the PATH has, or undefined. */
export function findProgram(...names) {
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  const files = names.flatMap((name) => folders.map((folder) => path.join(folder, name)));
  return files.find(isProgram);
}

export function findBrowser() {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  return process.env.CHROMIUM ?? findProgram(...names);
}

/**
 * What this machine lacks to have the server host, in words; empty when it can.
 * @param browser whether a browser without a window is needed too
 */
export function missingForServer({ browser = true } = {}) {
  const fits = process.platform === 'linux' && ['x64', 'arm64'].includes(process.arch);
  if (!fits) return ['Linux on x64 or arm64'];
  const tools = isInstalled() ? [] : ['python3', 'make', 'g++', 'npm'];
  const missing = tools.filter((name) => !findProgram(name));
  if (browser && !findBrowser()) missing.push('chromium');
  return missing;
}
