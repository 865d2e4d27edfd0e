/** The files of a workspace for questions about names: who uses whom, found from what each shows at a glance. */
import type { FileStore } from '../resolve/uses';
import type { SourceFile } from '../workspace/source';
import type { Glance } from './glance';
import { sightOf, type World } from './sight';

/** What the outside lends. */
export interface Around {
  readonly store: FileStore;
  glance(file: string): Glance | undefined;
  text(file: string): string | undefined;
  source(file: string): SourceFile | undefined;
  /** The file that another names; nothing where that lies outside. */
  resolve(from: string, path: string): string | undefined;
}

/** `files`: all that may use one another. Yields after each. */
export function* worldOf(files: readonly string[], around: Around): Generator<void, World> {
  const users = new Map<string, string[]>();
  const used = new Map<string, readonly string[]>();
  for (const file of files) {
    const named = namedIn(file, around);
    used.set(file, named);
    for (const each of named) addTo(users, each, file);
    yield;
  }
  return {
    usersOf: (file) => users.get(file) ?? [],
    usedBy: (file) => allFrom(file, used),
    fileNamed: (from, path) => around.resolve(from, path),
    speaks: (file, word) => around.text(file)?.includes(word) ?? false,
    sight: (file) => {
      const source = around.source(file);
      return source && sightOf(source, around.store);
    },
  };
}

function namedIn(file: string, { glance, resolve }: Around): readonly string[] {
  const paths = glance(file)?.files ?? [];
  return [...new Set(paths.flatMap((path) => resolve(file, path) ?? []))];
}

function addTo(users: Map<string, string[]>, file: string, user: string): void {
  const list = users.get(file);
  if (list) list.push(user);
  else users.set(file, [user]);
}

/** All that is reached from a file; not itself, unless it is come back to. */
function allFrom(file: string, used: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const found = new Set<string>();
  const waiting = [...(used.get(file) ?? [])];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    waiting.push(...(used.get(next) ?? []));
  }
  return found;
}
