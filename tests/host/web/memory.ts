/**
 * The entry of the extension under test: what ships, and beside it the examples as a folder that is on no disk,
 * `memory:/jobs`. An editor in a browser runs one extension from its folder, so both are one.
 */

import { activate as activateShipped } from 'shipped';
import * as vscode from 'vscode';

/** Put in by the launcher: the texts of the examples by their paths. */
declare const EXAMPLES: Readonly<Record<string, string>>;

type Entry = Map<string, Entry> | Uint8Array;

class Memory implements vscode.FileSystemProvider {
  private readonly changed = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
  readonly onDidChangeFile = this.changed.event;
  private readonly top: Map<string, Entry> = new Map();

  watch(): vscode.Disposable {
    return new vscode.Disposable(() => undefined);
  }

  private at(uri: vscode.Uri): Entry {
    let found: Entry | undefined = this.top;
    for (const part of uri.path.split('/').filter(Boolean))
      found = found instanceof Map ? found.get(part) : undefined;
    if (!found) throw vscode.FileSystemError.FileNotFound(uri);
    return found;
  }

  stat(uri: vscode.Uri): vscode.FileStat {
    const found = this.at(uri);
    const file = found instanceof Uint8Array;
    const kind = file ? vscode.FileType.File : vscode.FileType.Directory;
    // As an editor tells of a link: what it leads to is read through it.
    const type = /\/link-[^/]*$/.test(uri.path) ? kind | vscode.FileType.SymbolicLink : kind;
    return { type, ctime: 0, mtime: Date.now(), size: file ? found.length : 0 };
  }

  readDirectory(uri: vscode.Uri): [string, vscode.FileType][] {
    const found = this.at(uri);
    if (!(found instanceof Map)) throw vscode.FileSystemError.FileNotADirectory(uri);
    return [...found].map(([name, entry]) => [
      name,
      entry instanceof Map ? vscode.FileType.Directory : vscode.FileType.File,
    ]);
  }

  createDirectory(uri: vscode.Uri): void {
    let folder = this.top;
    for (const part of uri.path.split('/').filter(Boolean)) {
      const next = folder.get(part) ?? new Map<string, Entry>();
      if (!(next instanceof Map)) throw vscode.FileSystemError.FileNotADirectory(uri);
      folder.set(part, next);
      folder = next;
    }
  }

  readFile(uri: vscode.Uri): Uint8Array {
    const found = this.at(uri);
    if (found instanceof Map) throw vscode.FileSystemError.FileIsADirectory(uri);
    return found;
  }

  writeFile(uri: vscode.Uri, bytes: Uint8Array): void {
    const folder = vscode.Uri.joinPath(uri, '..');
    this.createDirectory(folder);
    (this.at(folder) as Map<string, Entry>).set(uri.path.split('/').at(-1) ?? '', bytes);
    this.changed.fire([{ type: vscode.FileChangeType.Changed, uri }]);
  }

  delete(): void {
    throw vscode.FileSystemError.NoPermissions();
  }

  rename(): void {
    throw vscode.FileSystemError.NoPermissions();
  }
}

export function activate(context: vscode.ExtensionContext): Promise<void> {
  const memory = new Memory();
  for (const [name, text] of Object.entries(EXAMPLES))
    memory.writeFile(vscode.Uri.parse(`memory:/jobs/${name}`), new TextEncoder().encode(text));
  context.subscriptions.push(vscode.workspace.registerFileSystemProvider('memory', memory));
  return activateShipped(context);
}
