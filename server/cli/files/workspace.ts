/** Which folder a job belongs to: it may use files of that folder, and of no other. */

import { existsSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { FileTrouble } from '../exits';
import { whyNot } from './read';

const MARKS = ['.git', 'package.json'];

/**
 * The nearest folder at or above `folder` that holds a mark of a project; else the current folder where `folder`
 * lies under it, as whoever stands there has meant it to; else `folder` itself. Both are real names.
 */
export function workspaceAbove(folder: string, cwd: string): string {
  for (let at = folder; ; at = path.dirname(at)) {
    if (MARKS.some((mark) => existsSync(path.join(at, mark)))) return at;
    if (path.dirname(at) === at) return isWithin(cwd, folder) ? cwd : folder;
  }
}

/** A folder given on the command line, with its links followed. @throws FileTrouble when it is none */
export function givenFolder(given: string, cwd: string): string {
  try {
    const real = realpathSync(path.resolve(cwd, given));
    if (statSync(real).isDirectory()) return real;
  } catch (error) {
    throw new FileTrouble(phrase`The folder ${given} cannot be used: ${whyNot(error)}.`);
  }
  throw new FileTrouble(phrase`The folder ${given} cannot be used: it is a file.`);
}

export function isWithin(folder: string, name: string): boolean {
  const way = path.relative(folder, name);
  return way !== '..' && !way.startsWith(`..${path.sep}`) && !path.isAbsolute(way);
}

/**
 * The real name of a file that a job names, or nothing when it lies outside the workspace. Looked at as
 * written first, so that nothing outside is even asked for; then with links followed, so that none leads out.
 */
export function confined(root: string, from: string, to: string): string | undefined {
  const written = path.resolve(path.dirname(from), to);
  if (!isWithin(root, written)) return undefined;
  const real = realAsFar(written);
  return isWithin(root, real) ? real : undefined;
}

/** Links followed as far as the way exists; the rest of it as written. */
function realAsFar(name: string): string {
  const rest: string[] = [];
  for (let at = name; ; at = path.dirname(at)) {
    const real = realOrNothing(at);
    if (real !== undefined) return path.join(real, ...rest);
    if (path.dirname(at) === at) return name;
    rest.unshift(path.basename(at));
  }
}

function realOrNothing(name: string): string | undefined {
  try {
    return realpathSync(name);
  } catch {
    return undefined;
  }
}
