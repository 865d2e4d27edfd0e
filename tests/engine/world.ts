/** Files in memory and the engine over them: what every test of the engine stands on. */
import path from 'node:path';
import { shippedLibraries } from '../../server/engine/shipped';
import type { Job } from '../../server/engine/workspace/job';
import { Workspace } from '../../server/engine/workspace/workspace';

export const LIBRARIES = shippedLibraries((file) => `library:${file}`);

/** The folder that all files of a test stand in; nothing outside it can be named. */
export const ROOT = '/jobs';

export type Files = Readonly<Record<string, string>>;

/** What the engine asked its host for, in order. */
export interface Asked {
  readonly resolved: string[];
  readonly read: string[];
}

/** A host of files in memory: a path counts from the file that names it, and stays in {@link ROOT}. */
export function hostOf(files: Files, asked: Asked = { resolved: [], read: [] }) {
  return {
    resolve(from: string, to: string): string | undefined {
      asked.resolved.push(to);
      const name = path.posix.resolve(path.posix.dirname(from), to);
      return name.startsWith(`${ROOT}/`) ? name : undefined;
    },
    read(name: string): string | undefined {
      asked.read.push(name);
      const key = name.slice(ROOT.length + 1);
      return Object.hasOwn(files, key) ? files[key] : undefined;
    },
  };
}

export function workspaceOf(files: Files, asked?: Asked): Workspace {
  return new Workspace(hostOf(files, asked), LIBRARIES);
}

/** The name a file of a test has in the engine. */
export function inRoot(name: string): string {
  return `${ROOT}/${name}`;
}

/** The job a text makes, with other files beside it. */
export function jobOf(text: string, files: Files = {}): Job {
  return workspaceOf({ ...files, 'job.perp': text }).job(inRoot('job.perp'))!;
}
