// npm run host: installs VS Code's server and workbench (code-server) from npm into the cache.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import * as places from './places.mjs';

const quiet = ['--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];

/** Everything after the first step runs under the host's own Node, npm too. */
function environment() {
  const search = `${path.join(places.nodeFolder, 'bin')}${path.delimiter}${process.env.PATH}`;
  return { ...process.env, PATH: search, npm_config_nodedir: places.nodeFolder };
}

/** Once more where it fails: a registry may be out of reach for a moment. */
function npm(folder, args, env = process.env) {
  const done = () => spawnSync('npm', args, { cwd: folder, env, stdio: ['ignore', 2, 2] }).status;
  const first = done();
  if (first === 0) return;
  console.log(`npm ${args.join(' ')} failed (${first}) in ${folder}, and is run again`);
  const status = done();
  if (status !== 0) throw new Error(`npm ${args.join(' ')} failed (${status}) in ${folder}`);
}

/**
 * The package's own install script compiles everything and wants Kerberos headers. Without it, two small
 * addons are left to build. `npm ci` fails on the inner lock files, so the inner parts float.
 */
function installParts() {
  npm(places.hostFolder, ['install', ...quiet, places.nodeSpec]);
  const env = environment();
  npm(places.hostFolder, ['install', ...quiet, `code-server@${places.versions.codeServer}`], env);
  const inner = path.join(places.codeServer, 'lib/vscode');
  npm(inner, ['install', '--omit=dev', ...quiet], env);
  npm(path.join(inner, 'extensions'), ['install', '--omit=dev', ...quiet], env);
  const addons = ['@vscode/spdlog', '@vscode/native-watchdog'];
  npm(inner, ['rebuild', '--loglevel=error', ...addons], env);
}

/**
 * Installs the server host when it is not there yet.
 * @throws when the machine lacks something, or an npm step fails
 */
export function installHost() {
  if (places.isInstalled()) return;
  const missing = places.missingForServer({ browser: false });
  if (missing.length > 0) throw new Error(`the server host needs: ${missing.join(', ')}`);
  console.log(`Installing the editor host into ${places.hostFolder}: some minutes, about 0.8 GB.`);
  rmSync(places.hostFolder, { recursive: true, force: true });
  mkdirSync(places.hostFolder, { recursive: true });
  writeFileSync(path.join(places.hostFolder, 'package.json'), '{"private":true}\n');
  installParts();
  writeFileSync(places.doneFile, `${places.doneText}\n`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  installHost();
  console.log(`The editor host is in ${places.hostFolder}.`);
}
