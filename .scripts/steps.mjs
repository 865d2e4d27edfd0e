// Running one command after another, with its output passed on as it comes.
import { spawn } from 'node:child_process';
import { root } from './bundles.mjs';

/**
 * Runs a command in the project's folder; its output goes straight to the terminal.
 * @returns its exit code; 128 when a signal ended it, 127 when it could not be started
 */
export function run(command, args, env = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
      shell: process.platform === 'win32' && command !== process.execPath,
    });
    child.once('error', (error) => {
      console.error(`${command}: ${error.message}`);
      resolve(127);
    });
    child.once('exit', (code) => resolve(code ?? 128));
  });
}

/** Runs a script of this project, or a package's script, with the Node that runs this one. */
export function node(script, args = [], env = {}) {
  return run(process.execPath, [script, ...args], env);
}

/** Runs one of package.json's scripts. */
export function npm(script, env = {}) {
  return run('npm', ['run', '--silent', script], env);
}

/** Like {@link node}, but ends this process with the same code when the command fails. */
export async function must(script, args = [], env = {}) {
  const code = await node(script, args, env);
  if (code !== 0) process.exit(code);
}
