/** The commands of the manifest. */
import { commands, type Disposable, Uri } from 'vscode';
import * as compare from './compare/commands';
import type { Sides } from './compare/sides';
import { checkAll, showJobs } from './deeds/jobs';
import { newJob } from './deeds/new';
import { next } from './deeds/next';
import { record } from './deeds/record';
import { share } from './deeds/share';
import { take } from './deeds/take';
import type { Row } from './job-view/parts';
import type { MarkdownPages } from './markdown-pages';
import { save } from './papers/save';
import { SHOWN, showPage, showWork } from './papers/show';
import type { Server } from './server';
import type { WorkingPage } from './working';

export interface Workbench {
  readonly server: Server;
  readonly working: WorkingPage;
  readonly pages: MarkdownPages;
  readonly sides: Sides;
}

export function registerCommands(bench: Workbench): Disposable[] {
  const all = { ...ofServer(bench), ...ofPapers(bench), ...ofDeeds(bench), ...ofCompare(bench) };
  return Object.entries(all).map(([name, run]) => commands.registerCommand(`perpend.${name}`, run));
}

type Commands = Readonly<Record<string, (...given: never[]) => unknown>>;

function ofServer({ server, working }: Workbench): Commands {
  return {
    restart: () => server.restart(),
    log: () => server.log.show(),
    working: (target?: unknown) => working.choose(target),
    // A key may call them with no row.
    'part.working': (row?: Row) =>
      row?.part.figure && working.show(Uri.parse(row.uri, true), row.part.figure),
    'part.drawing': (row?: Row) => row?.part.draws && showWork(row.uri, row.part.at?.line),
  };
}

function ofPapers({ server }: Workbench): Commands {
  const shown = SHOWN.map((kind) => [kind, (target?: unknown) => showPage(kind, target)] as const);
  return {
    ...Object.fromEntries(shown),
    recordPage: (target?: unknown) => showPage('record', target),
    drawing: (target?: unknown) => showPage('front', target),
    save: (given?: Parameters<typeof save>[1]) => save(server, given),
  };
}

function ofDeeds({ server, pages }: Workbench): Commands {
  return {
    record: (given?: Parameters<typeof record>[1]) => record(server, given),
    next: (given?: Parameters<typeof next>[1]) => next(server, given),
    new: (given?: Parameters<typeof newJob>[1]) => newJob(server, given),
    share: (given?: Parameters<typeof share>[1]) => share(server, given),
    take: (given?: Parameters<typeof take>[1]) => take(server, given),
    jobs: (folder?: unknown) => showJobs(server, pages, folder),
    checkAll: () => checkAll(server, pages),
  };
}

function ofCompare(bench: Workbench): Commands {
  return {
    'compare.commit': (target?: unknown) => compare.withLastCommit(bench, target),
    'compare.revision': (target?: unknown) => compare.withAnother(bench, target),
    'compare.sent': (target?: unknown) => compare.withSent(bench, target),
    'compare.file': (target?: unknown) => compare.withFile(bench, target),
    'compare.page': (side?: unknown) => bench.sides.showPage(side),
  };
}
