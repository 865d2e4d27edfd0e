// npm run open: the examples in an editor with this extension: an installed `code`, or a browser window.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { installHost } from './install.mjs';
import { findProgram, missingForServer, root } from './places.mjs';
import { address, startServer } from './server.mjs';

const examples = path.join(root, 'examples');

function openDesktop(program) {
  const args = [`--extensionDevelopmentPath=${root}`, '--new-window', examples];
  spawn(program, args, { stdio: 'inherit' }).once('exit', (code) => {
    process.exitCode = code ?? 1;
  });
}

/** Installed, and not run from its source: a window that is driven for tests shows no messages. */
async function serve() {
  const extensionsFolder = mkdtempSync(path.join(tmpdir(), 'perpend-open-'));
  symlinkSync(root, path.join(extensionsFolder, 'perpend.perpend'), 'junction');
  const server = await startServer({ extensionsFolder, development: false });
  const stop = async () => {
    await server.stop();
    rmSync(extensionsFolder, { recursive: true, force: true });
  };
  return { port: server.port, stop };
}

async function openServer() {
  const missing = missingForServer({ browser: false });
  if (missing.length > 0) {
    console.error(`No \`code\` on the PATH, and the server host needs: ${missing.join(', ')}.`);
    process.exit(1);
  }
  installHost();
  const server = await serve();
  console.log(`Open this address in a browser on this machine; Ctrl-C ends it.\n`);
  console.log(address(server.port, examples));
  for (const signal of ['SIGINT', 'SIGTERM'])
    process.once(signal, () => void server.stop().then(() => process.exit(0)));
}

const code = findProgram('code');
if (code) openDesktop(code);
else await openServer();
