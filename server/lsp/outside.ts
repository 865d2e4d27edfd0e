/** What the editor tells of the disk, as files: of a folder that is deleted or moved it tells by itself, not of what is in it. */
import { FileChangeType, type FileEvent, WatchKind } from 'vscode-languageserver';

/** Files of ours, and whatever may be a folder that holds some. */
export const WATCHED = [
  { globPattern: '**/*.perp' },
  { globPattern: '**/*', kind: WatchKind.Create | WatchKind.Delete },
];

/** What a line may name. */
export const OURS = /\.(perp|png|jpe?g)$/i;

export interface Known {
  /** Files that have been read or listed, by the engine’s names. */
  readonly files: () => Iterable<string>;
  readonly nameOf: (uri: string) => string;
  readonly uriOf: (name: string) => string;
}

/** Addresses of what may be another one now. */
export function concerned(changes: readonly FileEvent[], known: Known): string[] {
  let within: Map<string, string[]> | undefined;
  return changes.flatMap(({ uri, type }) => {
    if (type === FileChangeType.Changed || OURS.test(uri)) return [uri];
    within ??= byFolder(known.files());
    const inIt = within.get(known.nameOf(uri))?.map(known.uriOf) ?? [];
    return type === FileChangeType.Created && mayBeFolder(uri) ? [uri, ...inIt] : inIt;
  });
}

/**
 * As far as its name tells, and not where nobody looks. A file of such a name costs a look. What looks like an ending
 * makes a file of it, but not a number of a job or a year: `26.041 Orchard`.
 */
function mayBeFolder(uri: string): boolean {
  return !/\/(\.|node_modules(\/|$))|\.[a-z][a-z0-9]{0,7}$/i.test(uri);
}

/** All files in each folder, at whatever depth. */
function byFolder(files: Iterable<string>): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const file of files)
    for (let at = lastSeparator(file, file.length); at > 0; at = lastSeparator(file, at - 1)) {
      const folder = file.slice(0, at);
      const list = found.get(folder);
      if (list) list.push(file);
      else found.set(folder, [file]);
    }
  return found;
}

function lastSeparator(name: string, before: number): number {
  return Math.max(name.lastIndexOf('/', before), name.lastIndexOf('\\', before));
}
