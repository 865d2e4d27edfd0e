/** The jobs of the open folders together. */
import type { WorkDoneProgressReporter } from 'vscode-languageserver';
import { phrase } from '../../../shared/phrase';
import { JOBS, type JobItem, type JobsMade, type JobsParams } from '../../../shared/protocol/jobs';
import { showMoney } from '../../../shared/show';
import { VERSION } from '../../../shared/version';
import { languageOf } from '../../documents/letterhead';
import { jobsPage } from '../../documents/pages/jobs';
import { wordsFor } from '../../documents/words';
import { dayOf } from '../../documents/words/dates';
import { DiskIndex } from '../../engine/firm/disk-index';
import { overviewOf } from '../../engine/firm/overview';
import { summaryOf } from '../../engine/firm/read';
import { Settings } from '../../engine/firm/setting';
import type { JobState } from '../../engine/firm/state';
import type { FiledJob } from '../../engine/firm/summary';
import { taxesIn } from '../../engine/firm/taxes';
import { lastOf } from '../beside';
import type { Parts } from '../parts';
import type { Session } from '../session';
import type { Stretch } from '../stretch';
import { onMany } from './asked';
import { pageOfPaper } from './pages';

export function registerJobs(parts: Parts): void {
  const { connection, session } = parts;
  let index: { readonly of: Session; readonly files: DiskIndex } | undefined;
  onMany<JobsParams, JobsMade>(parts, JOBS, async (params, stretch) => {
    const own = session();
    if (index?.of !== own) index = { of: own, files: new DiskIndex(own.lent.jobFiles) };
    const told = await progress(connection, params.workDoneToken, phrase`Looking through jobs`);
    try {
      const jobs = await filed(own, index.files, params.folder, stretch, told);
      return overview(own, jobs, params);
    } finally {
      told?.done();
    }
  });
}

/** Told under the client’s token; nothing where it gave none. */
export async function progress(
  { window }: Parts['connection'],
  token: string | number | undefined,
  title: string,
): Promise<WorkDoneProgressReporter | undefined> {
  if (token === undefined) return undefined;
  const told = window.attachWorkDoneProgress(token);
  told.begin(title, 0, undefined, true);
  return told;
}

/** So often a reader is told how far it is. */
const EACH = 50;

async function filed(
  session: Session,
  index: DiskIndex,
  folder: string | undefined,
  stretch: Stretch,
  told: WorkDoneProgressReporter | undefined,
): Promise<FiledJob[]> {
  const names = await within(session, folder, stretch);
  const open = new Map(session.files.map((file) => [file.name, file]));
  const jobs: FiledJob[] = [];
  for (const [i, file] of names.entries()) {
    const held = open.get(file);
    if (held) jobs.push({ file, summary: summaryOf(session.source(held).text) });
    else index.look(file);
    if (i % EACH === 0) told?.report((i / names.length) * 100, `${i} / ${names.length}`);
    if (stretch.due) await stretch.rest();
  }
  const wanted = new Set(names);
  return [...jobs, ...index.jobs.filter(({ file }) => wanted.has(file) && !open.has(file))];
}

/** Files in the notation of a folder, or of all that are open. */
export async function within(
  session: Session,
  folder: string | undefined,
  stretch: Stretch,
): Promise<readonly string[]> {
  const all = await session.folder.list(stretch);
  if (folder === undefined) return all;
  const { names } = session.lent;
  const root = names.nameOf(folder);
  return all.filter((file) => names.wayTo(root, file));
}

function overview(session: Session, jobs: readonly FiledJob[], { day, all, folder }: JobsParams) {
  const { names } = session.lent;
  const settings = new Settings(session.store);
  const taxesOf = ({ file }: JobState) => {
    const job = session.jobOnDisk(file);
    return job && taxesIn(job);
  };
  const as = dayOf(day) ? day : '';
  const found = overviewOf(jobs, settings, as, taxesOf);
  const root = folder === undefined ? undefined : names.nameOf(folder);
  const named = (file: string) =>
    (root && names.wayTo(root, file)?.join('/')) || (lastOf(session.uriOf(file)) ?? file);
  const lang = langOf(session, jobs);
  const words = wordsFor(lang).pages.jobs;
  const page = jobsPage(found, { lang, version: VERSION, all: all ?? false, named });
  const items = found.currencies.flatMap(({ money, style, jobs: states }) => {
    const text = (value: JobState['owed']) => showMoney(value, money.sign, money.digits, style);
    return states.map(
      (job): JobItem => ({
        uri: session.uriOf(job.file),
        ref: job.summary.ref,
        title: job.summary.title,
        client: job.summary.client,
        state: job.state,
        standing: words.states[job.state],
        since: job.since,
        price: job.price && text(job.price),
        owed: text(job.owed),
      }),
    );
  });
  return { page: pageOfPaper(page), jobs: items };
}

/** As the first of them has it on its papers. */
function langOf(session: Session, [first]: readonly FiledJob[]): string {
  const job = first && session.jobOnDisk(first.file);
  return job ? languageOf(job) : 'en-GB';
}
