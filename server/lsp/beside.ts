/** Jobs that no editor holds: of a text of another day, of a file that is to be, of a file that is not open. */
import type { FileStore } from '../engine/resolve/uses';
import { Job } from '../engine/workspace/job';
import { SourceFile } from '../engine/workspace/source';
import type { Session } from './session';

/**
 * The job that a text would make under this name. Files that it uses are as they are now, but for those that are given.
 * @param files texts by the engine’s names of their files
 */
export function jobOfText(
  session: Session,
  name: string,
  text: string,
  files: ReadonlyMap<string, string> = new Map(),
): Job {
  const store = files.size ? over(session, files) : session.store;
  const job = new Job(new SourceFile(name, text), store);
  job.refresh();
  return job;
}

/** The files of a session, some of them with other texts. */
function over(session: Session, files: ReadonlyMap<string, string>): FileStore {
  const { store } = session;
  const sources = new Map([...files].map(([name, text]) => [name, new SourceFile(name, text)]));
  return {
    generation: store.generation,
    libraries: store.libraries,
    library: (name) => store.library(name),
    find(from, to) {
      const name = session.lent.files.resolve(from.name, to);
      const given = name === undefined ? undefined : sources.get(name);
      return given ?? store.find(from, to);
    },
  };
}

/** The job of a file by its address, open or not; nothing where there is no such file that may be read. */
export function jobAt(session: Session, uri: string): Job | undefined {
  const open = session.file(uri);
  if (open) return session.job(open);
  const { names } = session.lent;
  const name = names.nameOf(uri);
  const known = session.jobOnDisk(name);
  if (known) return known;
  const text = readBeside(session, name, uri);
  return text === undefined ? undefined : jobOfText(session, name, text);
}

/** A file outside the open folders, as a job beside it would reach it. */
function readBeside({ lent }: Session, name: string, uri: string): string | undefined {
  const last = lastOf(uri);
  const reached = last === undefined ? undefined : lent.files.resolve(name, last);
  return reached === name ? lent.files.read(name) : undefined;
}

/** The last part of an address, as it reads. */
export function lastOf(uri: string): string | undefined {
  try {
    return (
      decodeURIComponent(
        uri
          .replace(/[?#].*$/, '')
          .split('/')
          .at(-1) ?? '',
      ) || undefined
    );
  } catch {
    return undefined;
  }
}
