/** What we use of the editor’s own git extension, and why it may not be there. */
import { extensions, l10n, type Uri } from 'vscode';

/** Version 1 of its interface, as far as we use it. */
export interface GitApi {
  readonly state: 'uninitialized' | 'initialized';
  readonly onDidChangeState: (told: () => void) => { dispose(): void };
  getRepository(uri: Uri): Repository | null;
}

export interface Repository {
  readonly rootUri: Uri;
  readonly state: { readonly indexChanges: readonly Change[] };
  log(options: { readonly maxEntries?: number; readonly path?: string }): Promise<Commit[]>;
  getCommit(ref: string): Promise<Commit>;
  /** A file as it stood in a commit, by its path on disk. */
  show(ref: string, path: string): Promise<string>;
}

/** Of a file that git was told to move, both names. */
export interface Change {
  readonly originalUri: Uri;
  readonly renameUri?: Uri;
}

export interface Commit {
  readonly hash: string;
  readonly message: string;
  readonly authorDate?: Date;
}

interface GitExtension {
  readonly enabled: boolean;
  getAPI(version: 1): GitApi;
}

/** So long the extension may take to look for repositories, in ms. */
const PATIENCE_MS = 10_000;

/** The repository that holds a file, or the reason why there is none. */
export async function repositoryOf(file: Uri): Promise<Repository | string> {
  const found = extensions.getExtension<GitExtension>('vscode.git');
  if (!found) return l10n.t('This editor has no git here: revisions cannot be looked at.');
  const git = await found.activate();
  if (!git.enabled)
    return l10n.t(
      'Git is switched off in the settings (git.enabled), so revisions cannot be looked at.',
    );
  if (file.scheme !== 'file')
    return l10n.t('This job stands in no repository of this machine. Save it in one first.');
  return ofApi(git.getAPI(1), file);
}

async function ofApi(api: GitApi, file: Uri): Promise<Repository | string> {
  await ready(api);
  const repository = api.getRepository(file);
  return (
    repository ?? l10n.t('The folder of this job is no git repository, so there are no revisions.')
  );
}

function ready(api: GitApi): Promise<void> {
  if (api.state === 'initialized') return Promise.resolve();
  return new Promise((resolve) => {
    const listening = api.onDidChangeState(() => done());
    const late = setTimeout(() => done(), PATIENCE_MS);
    const done = () => {
      clearTimeout(late);
      listening.dispose();
      resolve();
    };
  });
}
