/** perpend jobs: a firm's jobs together, from a folder of them. */

import { statSync } from 'node:fs';
import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import { type MeasuredOutput, measuredOutputs } from '../../engine/firm/outputs';
import { overviewOf } from '../../engine/firm/overview';
import { enoughIn } from '../../engine/firm/rates';
import { Settings } from '../../engine/firm/setting';
import type { FiledJob } from '../../engine/firm/summary';
import { taxesBy } from '../../engine/firm/taxes';
import type { TaxesOf } from '../../engine/firm/turnover';
import { Workspace } from '../../engine/workspace/workspace';
import type { Given, Option } from '../args';
import { CLEAN, WrongUse } from '../exits';
import { indexOf } from '../files/jobs';
import { givenFolder, isWithin, workspaceAbove } from '../files/workspace';
import type { Io } from '../io';
import { jobsDocument } from '../json/jobs';
import { outputsDocument } from '../json/outputs';
import { LIBRARIES } from '../libraries';
import { hostOf } from '../session';
import { jobsReport } from '../show/jobs';
import { outputsReport } from '../show/outputs';
import { dayGiven } from '../today';
import { type Command, JSON_OPTION, WORKSPACE } from './command';
import { writeOutputs } from './jobs-write';

const DATE: Option = {
  name: '--date',
  value: 'DATE',
  about: later`as it stood on that day, 2026-03-02; without it, today`,
};
const ALL: Option = { name: '--all', about: later`list every job, and not the first few of each` };
const RATES: Option = {
  name: '--rates',
  about: later`what the gang does in an hour, from past jobs`,
};
const WRITE: Option = {
  name: '--write',
  value: 'FILE',
  about: later`with --rates: write what is offered into this firm’s file`,
};
const INDEX: Option = {
  name: '--index',
  value: 'FILE',
  about: later`keep what was read in this file; read only what changed`,
};

export const jobsCommand: Command = {
  name: 'jobs',
  takes: 'FOLDER',
  about: later`look over a folder of jobs: out, won, owed, turnover`,
  more: [
    later`From the records of all jobs under FOLDER. Turnover and tax are told by quarter,
once by the day of the invoice and once by the day of payment; what clients kept
back as the firm’s tax counts as paid. Currencies are never added together.

--rates shows what the days of past jobs come to: an amount an hour of those who
lay, on how many days of how many jobs it rests, and between what it lies. Of a
job where some day of a task has no amount nothing is taken. With --write only
jobs that use that firm’s file count. Hidden folders, node_modules and links are
passed by. Nothing is written without --write or --index.`,
  ],
  options: [DATE, ALL, RATES, WRITE, INDEX, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [shown, more] = given.words;
    if (shown === undefined) throw new WrongUse(phrase`perpend jobs needs a folder.`);
    if (more !== undefined) throw new WrongUse(phrase`perpend jobs takes one folder.`);
    if (given.has(WRITE.name) && !given.has(RATES.name))
      throw new WrongUse(phrase`--write stands only with --rates.`);
    const day = dayGiven(given.value(DATE.name));
    const folder = givenFolder(shown, io.cwd);
    const firm = new Firm(folder, given, io);
    if (given.has(RATES.name)) rates(firm, shown, given, io);
    else overview(firm, shown, day, given, io);
    return CLEAN;
  },
};

/** The jobs, and how each is taken. */
class Firm {
  readonly jobs: readonly FiledJob[];
  readonly workspace: Workspace;
  readonly settings: Settings;
  /** Of jobs with several rates, each priced alone. */
  readonly taxesOf: TaxesOf;

  constructor(
    readonly folder: string,
    given: Given,
    io: Io,
  ) {
    const root = rootOf(folder, given.value(WORKSPACE.name), io);
    this.workspace = new Workspace(hostOf(root), LIBRARIES);
    // Another workspace: what is opened and closed there leaves the settings as they are.
    this.taxesOf = taxesBy(new Workspace(hostOf(root), LIBRARIES));
    this.settings = new Settings(this.workspace);
    this.jobs = indexOf(folder, given.value(INDEX.name), io).jobs;
  }

  /** With a file, of the jobs that use it. */
  measured(using?: string): readonly MeasuredOutput[] {
    const own = this.jobs.filter(({ summary }) => summary.isJob);
    const jobs = using ? own.filter((job) => this.settings.of(job).files.has(using)) : own;
    const [first] = jobs;
    const enough = first && enoughIn(this.settings.of(first).env);
    return enough ? measuredOutputs(jobs, this.settings, enough) : [];
  }
}

/** The folder of which jobs may use files: a firm's file often stands above its jobs. */
function rootOf(folder: string, given: string | undefined, io: Io): string {
  if (given === undefined) return workspaceAbove(folder, givenFolder('.', io.cwd));
  const root = givenFolder(given, io.cwd);
  if (!isWithin(root, folder) && root !== folder)
    throw new WrongUse(phrase`The folder of the jobs does not lie in ${given}.`);
  return root;
}

function overview(firm: Firm, shown: string, day: string, given: Given, io: Io): void {
  const found = overviewOf(firm.jobs, firm.settings, day, firm.taxesOf);
  const named = (file: string) => path.relative(firm.folder, file).replaceAll(path.sep, '/');
  if (given.has(JSON_OPTION.name)) io.raw(jobsDocument(found, shown, named));
  else io.out(`${jobsReport(found, shown, named, given.has(ALL.name), io).join('\n')}\n`);
}

/** What is reckoned with now is looked up for so many ways that jobs are set up: a firm has one or two. */
const MOST_ENVS = 64;

function rates(firm: Firm, shown: string, given: Given, io: Io): void {
  const into = given.value(WRITE.name);
  const name = into === undefined ? undefined : fileNamed(into, io);
  const measured = firm.measured(name);
  const settings = firm.jobs.flatMap((job) => (job.summary.isJob ? firm.settings.of(job) : []));
  const envs = [...new Set(settings)].slice(0, MOST_ENVS).map((setting) => setting.env);
  if (given.has(JSON_OPTION.name)) io.raw(outputsDocument(measured, envs, shown));
  else io.out(`${outputsReport(measured, envs, shown, io).join('\n')}\n`);
  if (name !== undefined) writeOutputs(name, into!, measured, firm.workspace, io);
}

function fileNamed(file: string, io: Io): string {
  const name = path.resolve(io.cwd, file);
  if (!statSync(name, { throwIfNoEntry: false })?.isFile())
    throw new WrongUse(phrase`--write ${file}: there is no such file.`);
  return path.join(givenFolder(path.dirname(name), io.cwd), path.basename(name));
}
