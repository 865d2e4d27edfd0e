/** Runs the command line that comes with the extension, by the editor’s own Node. Only where there is one, and a disk. */
import {
  type ExtensionContext,
  ProcessExecution,
  Task,
  TaskGroup,
  TaskRevealKind,
  tasks,
  Uri,
  type WorkspaceFolder,
  workspace,
} from 'vscode';
import { inFront } from '../status-bar';
import { MATCHER, nameOf, type OurTask, ourTask, TASK, wordsFor } from './definition';

/** @param node the program that runs the command line */
export function registerTasks(context: ExtensionContext, node: string): void {
  const cli = Uri.joinPath(context.extensionUri, 'dist/perpend.cjs').fsPath;
  const provider = {
    provideTasks: () => offered().map(([task, folder]) => taskOf(task, folder, { node, cli })),
    resolveTask(given: Task) {
      const task = ourTask(given.definition);
      const folder = folderOf(given);
      return task && folder && taskOf(task, folder, { node, cli }, given);
    },
  };
  context.subscriptions.push(tasks.registerTaskProvider(TASK, provider));
}

interface Program {
  readonly node: string;
  readonly cli: string;
}

/** None in a folder that the reader has not said he trusts: a task runs a program there. */
function onDisk(): readonly WorkspaceFolder[] {
  if (!workspace.isTrusted) return [];
  return (workspace.workspaceFolders ?? []).filter(({ uri }) => uri.scheme === 'file');
}

/** Checks each folder; writes the quote of the job in front. */
function offered(): (readonly [OurTask, WorkspaceFolder])[] {
  const checks = onDisk().map((folder) => [{ type: TASK, task: 'check' }, folder] as const);
  const job = inFront()?.uri;
  const folder = job && workspace.getWorkspaceFolder(job);
  if (!job || folder?.uri.scheme !== 'file' || !checks.length) return checks;
  const file = workspace.asRelativePath(job, false);
  const papers = (['quote', 'site'] as const).map(
    (paper) => [{ type: TASK, task: 'write', paper, file }, folder] as const,
  );
  return [...checks, ...papers];
}

function folderOf({ scope }: Task): WorkspaceFolder | undefined {
  const folders = onDisk();
  const said = typeof scope === 'object' ? scope : folders[0];
  return folders.find(
    (folder) => folder === said || folder.uri.toString() === said?.uri.toString(),
  );
}

/** A task of `tasks.json` keeps the definition that it was written with: by it the editor knows it again. */
function taskOf(
  task: OurTask,
  folder: WorkspaceFolder,
  { node, cli }: Program,
  given?: Task,
): Task {
  const words = wordsFor(task);
  const run = new ProcessExecution(node, [cli, ...words], {
    cwd: folder.uri.fsPath,
    // The desktop editor’s program is Node only when it is told so.
    env: { ELECTRON_RUN_AS_NODE: '1', NO_COLOR: '1' },
  });
  const matchers = task.task === 'check' ? [MATCHER] : [];
  const definition = given?.definition ?? task;
  const made = new Task(definition, folder, given?.name ?? nameOf(task), TASK, run, matchers);
  if (task.task === 'check') made.group = TaskGroup.Build;
  made.presentationOptions = { reveal: TaskRevealKind.Silent };
  return made;
}
