/** Which revision or file a job is put beside. */
import { l10n, type TextDocument, type Uri, window, workspace } from 'vscode';
import { filesUnder } from '../files-under';
import { iconless } from '../iconless';
import { listedName } from '../target';
import type { Commit, Repository } from './git';
import { commitsOf, labelOf } from './past';

/** A job and the repository that holds it. */
export interface Found {
  readonly document: TextDocument;
  readonly repository: Repository;
}

export interface Revision {
  /** As git knows it. */
  readonly ref: string;
  readonly label: string;
}

export async function chooseRevision({
  document,
  repository,
}: Found): Promise<Revision | undefined> {
  const commits = await commitsOf(repository, document);
  const other = {
    label: l10n.t('Another Revision…'),
    description: l10n.t('a branch, a tag, a commit'),
  };
  const items = [...commits.map(itemOf), { ...other, commit: undefined }];
  const title = l10n.t('Compare with a Revision');
  const placeHolder = l10n.t('Revisions that changed this job, the newest first');
  const chosen = await window.showQuickPick(items, {
    title,
    placeHolder,
    matchOnDescription: true,
  });
  if (chosen?.commit) return { ref: chosen.commit.hash, label: labelOf(chosen.commit) };
  return chosen && askRevision(repository, title);
}

function itemOf(commit: Commit) {
  const [label = ''] = commit.message.split('\n');
  return { label: iconless(label), description: labelOf(commit), commit };
}

async function askRevision(repository: Repository, title: string): Promise<Revision | undefined> {
  const said = await window.showInputBox({
    title,
    prompt: l10n.t('A branch, a tag or a commit'),
    validateInput: (ref) => wrongRevision(repository, ref.trim()),
  });
  return said ? { ref: said.trim(), label: said.trim() } : undefined;
}

/** What begins with a dash is no name of a revision, and git would take it for an order. */
async function wrongRevision(repository: Repository, ref: string): Promise<string | undefined> {
  if (!ref) return l10n.t('Write the name of a revision.');
  try {
    if (!ref.startsWith('-')) await repository.getCommit(ref);
    else throw new Error(ref);
    return undefined;
  } catch {
    return l10n.t('The repository has no revision {0}.', ref);
  }
}

const MOST_FILES = 500;

export async function chooseFile({ uri }: TextDocument): Promise<Uri | undefined> {
  const folders = workspace.workspaceFolders ?? [];
  const found = await Promise.all(folders.map((folder) => filesUnder(folder.uri, MOST_FILES)));
  const files = found.flat().filter((each) => each.toString() !== uri.toString());
  const items = files.map((each) => ({ label: iconless(listedName(each)), uri: each }));
  const title = l10n.t('Compare with a File');
  const chosen = await window.showQuickPick(items, {
    title,
    placeHolder: l10n.t('What it is put beside, as what was before'),
  });
  return chosen?.uri;
}
