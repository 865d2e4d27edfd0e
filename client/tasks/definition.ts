/** Tasks of ours as `tasks.json` writes them, and the command line that each is. */
import { l10n, type TaskDefinition } from 'vscode';

export const TASK = 'perpend';
export const MATCHER = '$perpend';

const PAPERS = ['quote', 'invoice', 'buying', 'site', 'changes', 'result'] as const;
const FORMS = ['pdf', 'html', 'md', 'csv', 'xlsx', 'xml'] as const;

export interface Check extends TaskDefinition {
  readonly task: 'check';
  /** A folder or a file; without it, the folder that is open. */
  readonly path?: string;
}

export interface Write extends TaskDefinition {
  readonly task: 'write';
  readonly paper: (typeof PAPERS)[number];
  readonly file: string;
  readonly form?: (typeof FORMS)[number];
  /** Where to; without it, beside the job. */
  readonly out?: string;
}

export type OurTask = Check | Write;

/** Nothing for what no task of ours is: anyone may have written the file. */
export function ourTask(given: TaskDefinition): OurTask | undefined {
  if (given.type !== TASK) return undefined;
  if (given.task === 'check') return isText(given.path, true) ? (given as Check) : undefined;
  const { paper, file, form, out } = given;
  const good =
    given.task === 'write' &&
    PAPERS.includes(paper) &&
    isText(file, false) &&
    (form === undefined || FORMS.includes(form)) &&
    isText(out, true);
  return good ? (given as Write) : undefined;
}

/** What begins with a dash is an option to the command line, and no file. */
function isText(said: unknown, mayLack: boolean): boolean {
  if (said === undefined) return mayLack;
  return typeof said === 'string' && said !== '' && !said.startsWith('-');
}

/** The words after the program’s name. */
export function wordsFor(task: OurTask): string[] {
  if (task.task === 'check') return ['check', '--lines', task.path ?? '.'];
  const { paper, file, form = 'pdf', out } = task;
  return [paper, file, '--as', form, '--out', out ?? besideOf(file, paper, form)];
}

function besideOf(file: string, paper: string, form: string): string {
  return `${file.replace(/\.perp$/i, '')}-${paper}.${form}`;
}

export function nameOf(task: OurTask): string {
  if (task.task === 'check')
    return task.path ? l10n.t('check {0}', task.path) : l10n.t('check all jobs');
  return l10n.t('write {0} of {1}', task.paper, task.file);
}
