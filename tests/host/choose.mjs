// Which editor the suite runs in: the one you name, one to download, or the server host.
import { missingForServer } from './places.mjs';

const WAYS = `Any of these makes it run:
  VSCODE_EXECUTABLE=<path of VS Code's program>   an installed desktop VS Code
  VSCODE_VERSION=stable                           downloads a desktop VS Code
  Linux with chromium, python3, make, g++         VS Code's server from npm, in a browser without a window`;

/**
 * @returns `{ kind: 'desktop', executable }`, `{ kind: 'download', version }`, `{ kind: 'server' }`,
 *   or `{ kind: 'none', why }` when no editor can be had
 */
export function chooseHost(env = process.env) {
  if (env.VSCODE_EXECUTABLE) return { kind: 'desktop', executable: env.VSCODE_EXECUTABLE };
  if (env.VSCODE_VERSION) return { kind: 'download', version: env.VSCODE_VERSION };
  const missing = missingForServer();
  if (missing.length === 0) return { kind: 'server' };
  return { kind: 'none', why: `This machine lacks: ${missing.join(', ')}.\n${WAYS}` };
}

/** Says that nothing ran. Where a machine decides (CI), that is a failure; at a desk it is a sentence. */
export function notRun(why, what) {
  console.log(`\n${why}\n\nperpend: ${what} was NOT run`);
  process.exit(process.env.CI === 'true' ? 1 : 0);
}
