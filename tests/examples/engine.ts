/** Runs the engine on files as a reader has them: the examples on disk, or a text of the test's own. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { shippedLibraries } from '../../server/engine/shipped';
import { allFigures } from '../../server/engine/views/job-view';
import { showTerm } from '../../server/engine/views/show';
import type { Job } from '../../server/engine/workspace/job';
import { Workspace } from '../../server/engine/workspace/workspace';

const ROOT = path.resolve(import.meta.dirname, '../..');

const host = {
  resolve: (from: string, to: string) => path.resolve(path.dirname(from), to),
  read: (name: string) => (existsSync(name) ? readFileSync(name, 'utf8') : undefined),
};

function workspace(): Workspace {
  return new Workspace(
    host,
    shippedLibraries((file) => path.join(ROOT, 'server/library', file)),
  );
}

/** @param file counted from the repository's root */
export function jobOnDisk(file: string): Job {
  const job = workspace().job(path.join(ROOT, file));
  if (!job) throw new Error(`there is no ${file}`);
  return job;
}

/** A job that is written in the test itself; the edition line is put before it. */
export function jobOf(text: string): Job {
  const name = path.join(ROOT, 'examples/test.perp');
  const files = workspace();
  files.opened(name, `perpend 1\n\n${text}`);
  return files.job(name)!;
}

export interface Figure {
  readonly value: number;
  /** As a reader sees it. */
  readonly text: string;
}

export function figuresOf(job: Job): Map<string, Figure> {
  return new Map(
    allFigures(job).map(({ key, term }) => [
      key,
      {
        value: term.value.toNumber(),
        text: showTerm(term, job.env).replaceAll('\u00a0', ' '),
      },
    ]),
  );
}

/** One figure's exact value as a plain number. */
export function figure(job: Job, key: string): number {
  const found = figuresOf(job).get(key);
  if (!found) throw new Error(`there is no figure ${key}`);
  return found.value;
}

export function findingCodes(job: Job): string[] {
  return job.findings.map((f) => f.code);
}
