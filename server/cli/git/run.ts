/**
 * Git, asked and never told: nothing here changes a repository. It is started without a shell, and what a repository’s
 * own configuration could make it start (a helper, a signature’s checker, a converter, a fetch) is switched off.
 */
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { FileTrouble } from '../exits';
import { MOST_BYTES } from '../files/read';

const QUIET = ['--no-pager', '-c', 'core.fsmonitor=false', '-c', 'protocol.allow=never'];

/** Set where git runs us from a hook or as its diff: they speak of another command than ours. */
const NOT_OURS: Readonly<Record<string, undefined>> = {
  GIT_DIR: undefined,
  GIT_WORK_TREE: undefined,
  GIT_INDEX_FILE: undefined,
  GIT_PREFIX: undefined,
  GIT_EXTERNAL_DIFF: undefined,
  GIT_DIFF_OPTS: undefined,
};

const OURS = {
  GIT_OPTIONAL_LOCKS: '0',
  GIT_NO_LAZY_FETCH: '1',
  GIT_TERMINAL_PROMPT: '0',
  GIT_LITERAL_PATHSPECS: '1',
  LC_ALL: 'C',
};

/** No command of ours takes long; a disk that does not answer may. */
const LONGEST_MS = 60_000;

/** What it printed; nothing where it says no. @throws FileTrouble where there is no git, or it does not come to an end */
export function git(folder: string, args: readonly string[]): Buffer | undefined {
  const done = spawnSync('git', ['-C', folder, ...QUIET, ...args], {
    // Not the job’s folder: on some systems a program that lies there would be started in git’s place.
    cwd: path.dirname(process.execPath),
    env: { ...process.env, ...NOT_OURS, ...OURS },
    stdio: ['ignore', 'pipe', 'ignore'],
    maxBuffer: MOST_BYTES + 1,
    timeout: LONGEST_MS,
    windowsHide: true,
  });
  if (done.error) throw new FileTrouble(`git cannot be asked: ${why(done.error)}.`);
  return done.status === 0 ? done.stdout : undefined;
}

function why(error: NodeJS.ErrnoException): string {
  if (error.code === 'ENOENT') return 'it is not installed, or not on the PATH';
  if (error.code === 'ETIMEDOUT') return 'it does not answer';
  return error.code === 'ENOBUFS' ? 'it answers more than can be taken' : String(error.code);
}
