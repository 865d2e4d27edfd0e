/** Writing a file that is not there yet: whole or not at all, and never over another. */

import { existsSync, linkSync, lstatSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { FileTrouble, WrongUse } from '../exits';
import { writeWhole } from './write';

/**
 * @throws FileTrouble when there is such a file, also one that came while this was written. WrongUse for a name that is
 * no job’s
 */
export function writeNew(name: string, content: string, shown: string): void {
  assertFree(name, shown);
  const fresh = path.join(path.dirname(name), `.${path.basename(name)}.${process.pid}.fresh`);
  writeWhole(fresh, content, shown);
  try {
    place(fresh, name);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw there(shown);
    throw error;
  } finally {
    rmSync(fresh, { force: true });
  }
}

/** Before anything is worked out. */
export function assertFree(name: string, shown: string): void {
  if (!/\.perp$/i.test(name))
    throw new WrongUse(
      phrase`--out ${shown} is no file in the notation: its name ends with .perp.`,
    );
  // A link that leads nowhere is something too.
  if (lstatSync(name, { throwIfNoEntry: false })) throw there(shown);
}

function there(shown: string): FileTrouble {
  return new FileTrouble(
    phrase`${shown} is there already, and nothing is written over it. Give another name with --out.`,
  );
}

/** A link takes a name only where it is free. Some disks have none: there the name is looked at once more. */
function place(fresh: string, name: string): void {
  try {
    linkSync(fresh, name);
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK'].includes(code)) throw error;
    if (existsSync(name)) throw Object.assign(new Error(), { code: 'EEXIST' });
    renameSync(fresh, name);
  }
}
