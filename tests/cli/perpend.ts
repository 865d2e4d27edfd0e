/** The bundled command line as a child process, over folders of its own. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { makeBundle, shipped } from '../../.scripts/bundles.mjs';
import { makeFonts } from '../../.scripts/fonts.mjs';
import { root } from '../tree';
import { inside } from './inside';

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Where {
  readonly cwd?: string;
  /** What is piped in. */
  readonly input?: string | Buffer;
  readonly env?: Readonly<Record<string, string>>;
  /** Run as this user: only root can. */
  readonly uid?: number;
  /** Another copy of the bundle. */
  readonly script?: string;
}

const folders: string[] = [];
let bundled = '';

/** A new empty folder outside the checkout, with files in it; gone after the tests of the file. */
export function folderOf(files: Readonly<Record<string, string | Buffer>> = {}): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-cli-'));
  folders.push(folder);
  for (const [name, content] of Object.entries(files)) {
    const file = path.join(folder, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
  return folder;
}

/** Bundles the command line, and nothing else, once for a file of tests. */
export function useCommandLine(): void {
  beforeAll(async () => {
    const bundle = shipped.find((each) => each.out === 'dist/perpend.cjs')!;
    bundled = path.join(folderOf(), 'perpend.cjs');
    await makeBundle({ ...bundle, out: bundled }, { dev: true });
  });
  afterAll(() => {
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  });
}

/** What writes PDF and XLSX, and the fonts, beside the command line: for tests that ask for them. */
export function usePapers(): void {
  beforeAll(async () => {
    const bundle = shipped.find((each) => each.out === 'dist/papers.cjs')!;
    const folder = path.dirname(bundled);
    await makeBundle({ ...bundle, out: path.join(folder, 'papers.cjs') }, { dev: true });
    await makeFonts(path.join(folder, 'fonts'));
  });
}

/** The bundle's own file. */
export function bundle(): string {
  return bundled;
}

/**
 * One run. In the tests' own process where nothing is piped in and nothing of the process is asked for: there it takes
 * a tenth of the time. What hangs on the process or the bundle itself asks for {@link program}.
 */
export function perpend(args: readonly string[], where: Where = {}): Ran {
  const { cwd, ...more } = where;
  const plain = Object.values(more).every((each) => each === undefined) && !args.includes('-');
  return plain ? inside(args, { cwd: cwd ?? root }) : program(args, where);
}

/** One run of the bundled program, as a child process. */
export function program(args: readonly string[], where: Where = {}): Ran {
  const { PATH = '' } = process.env;
  const done = spawnSync(process.execPath, [where.script ?? bundled, ...args], {
    cwd: where.cwd ?? root,
    input: where.input ?? '',
    env: { PATH, ...where.env },
    uid: where.uid,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}
