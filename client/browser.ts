/** The extension in a browser, with no machine behind it. The language server is a worker. */
import type { ExtensionContext, Uri } from 'vscode';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from 'vscode-languageclient/browser';
import { begin, type Seen } from './extension';
import { LANGUAGE } from './language';
import { partBytes } from './parts';

/** The server asks for the engine by `require`, as it would be asked for in Node; nothing else is asked for so. */
async function scriptOf(extension: Uri): Promise<Blob> {
  const parts = ['engine.cjs', 'web/server.js'].map((name) => partBytes(extension, name));
  const [engine, server] = await Promise.all(parts);
  const before = 'const engine={exports:{}};(function(module,exports){';
  const between = '\n})(engine,engine.exports);(function(require,module,exports){';
  const after = '\n})(()=>engine.exports,{exports:{}},{});';
  return new Blob([before, bytesOf(engine!), between, bytesOf(server!), after], {
    type: 'text/javascript',
  });
}

/** A view of memory that is shared with nobody, as a blob wants it. */
function bytesOf(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  return new Uint8Array(bytes);
}

/** From its text and not by its address: an extension may stand where no worker can be loaded from. */
async function startWorker(extension: Uri): Promise<MessageTransports> {
  const address = URL.createObjectURL(await scriptOf(extension));
  const worker = new Worker(address, { name: 'perpend' });
  // An editor may put a class of its own in the place of the browser's, which the library does not know.
  return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
}

export function activate(context: ExtensionContext): Seen {
  const server = () => startWorker(context.extensionUri);
  return begin(context, (options) => new LanguageClient(LANGUAGE, 'Perpend', server, options));
}

export { deactivate } from './extension';
