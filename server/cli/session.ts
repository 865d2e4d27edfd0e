/** The jobs of one run: each file read once, each in the workspace of the folder it belongs to. */

import { readFileSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { phrase } from '../../shared/phrase';
import type { Host } from '../engine/resolve/uses';
import type { Job } from '../engine/workspace/job';
import { Workspace } from '../engine/workspace/workspace';
import { FileTrouble } from './exits';
import { MOST_BYTES, readText, whyNot } from './files/read';
import { confined, givenFolder, isWithin, workspaceAbove } from './files/workspace';
import { LIBRARIES } from './libraries';

/** What stands for the text that is piped in. */
export const STDIN = '-';
const STDIN_SHOWN = '<stdin>';

/** A job, and the file as the caller named it. */
export interface Opened {
  readonly job: Job;
  readonly shown: string;
}

export class Session {
  private readonly workspaces = new Map<string, Workspace>();
  private readonly given = new Map<string, string>();
  private readonly root: string | undefined;

  /** `folder`: the workspace of every file, instead of the one found above each. @throws FileTrouble */
  constructor(
    private readonly cwd: string,
    folder: string | undefined,
  ) {
    this.root = folder === undefined ? undefined : givenFolder(folder, cwd);
  }

  /** @throws FileTrouble when the file cannot be read */
  open(file: string): Opened {
    const shown = file === STDIN ? STDIN_SHOWN : file;
    const name = this.realName(file, shown);
    const text = readText(file === STDIN ? 0 : name, shown);
    this.given.set(name, shown);
    const workspace = this.workspaceOf(this.rootOf(name));
    workspace.opened(name, text);
    return { job: workspace.job(name)!, shown };
  }

  /** The job that a text makes in a file that is not there yet. @throws FileTrouble when its folder is not there */
  draft(file: string, text: string): Opened {
    const name = this.nameOfNew(file);
    this.given.set(name, file);
    const workspace = this.workspaceOf(this.rootOf(name));
    workspace.opened(name, text);
    return { job: workspace.job(name)!, shown: file };
  }

  /** Its real name, as far as it has one. @throws FileTrouble when its folder is not there */
  nameOfNew(file: string): string {
    const whole = path.resolve(this.cwd, file);
    try {
      return path.join(realpathSync(path.dirname(whole)), path.basename(whole));
    } catch {
      throw new FileTrouble(phrase`${file} cannot be written: the folder is not there.`);
    }
  }

  /** A file's name for a reader: as it was given, else as it is reached from the current folder. */
  shown(name: string): string {
    const given = this.given.get(name);
    if (given !== undefined || !path.isAbsolute(name)) return given ?? name;
    return path.relative(this.cwd, name).replaceAll(path.sep, '/');
  }

  /** The folder of which a job in this file may use files. */
  rootOf(name: string): string {
    return this.root ?? workspaceAbove(path.dirname(name), this.realCwd());
  }

  /** A file that another names, with its links followed; nothing where it lies outside the workspace. */
  used(from: string, to: string): string | undefined {
    return confined(this.rootOf(from), from, to);
  }

  private realName(file: string, shown: string): string {
    try {
      if (file === STDIN) return path.join(realpathSync(this.cwd), STDIN_SHOWN);
      return realpathSync(path.resolve(this.cwd, file));
    } catch (error) {
      throw new FileTrouble(phrase`${shown} cannot be read: ${whyNot(error)}.`);
    }
  }

  private realCwd(): string {
    try {
      return realpathSync(this.cwd);
    } catch {
      return this.cwd; // gone since: no file lies under it
    }
  }

  private workspaceOf(root: string): Workspace {
    let known = this.workspaces.get(root);
    if (!known) {
      known = new Workspace(hostOf(root), LIBRARIES);
      this.workspaces.set(root, known);
    }
    return known;
  }
}

/** Files on disk, of one folder and no other. */
export function hostOf(root: string): Host {
  return {
    resolve: (from, to) => confined(root, from, to),
    read: (name) => (isWithin(root, name) ? usedText(name) : undefined),
  };
}

/** A file that a job uses: an ordinary one, of a size that a job has. Anything else is as good as missing. */
function usedText(name: string): string | undefined {
  try {
    const found = statSync(name);
    if (!found.isFile() || found.size > MOST_BYTES) return undefined;
    return readFileSync(name, 'utf8');
  } catch {
    return undefined;
  }
}
