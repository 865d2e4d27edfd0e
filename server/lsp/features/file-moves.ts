/** Files and folders that are about to be given other names: lines that name them are mended first. */
import type { FileRename } from 'vscode-languageserver';
import type { TextEdit } from '../../../shared/finding';
import { type Moves, mendedUses } from '../../engine/ide/file-moves';
import type { Parts } from '../parts';
import type { Session } from '../session';
import type { Stretch } from '../stretch';
import * as to from '../to-proto';
import { wayFrom } from '../uri-names';

export function registerFileMoves({ connection, answers, client, session }: Parts): void {
  connection.workspace.onWillRenameFiles(
    answers.steady(async ({ files }, stretch) => {
      const moves = movesOf(session(), files);
      const edits = await mendedIn(session(), moves, stretch);
      return edits.length ? to.workspaceEdit(edits, session(), client().versionsEdits) : null;
    }),
  );
}

async function mendedIn(session: Session, moves: Moves, stretch: Stretch): Promise<TextEdit[]> {
  const { folder } = session;
  const edits: TextEdit[] = [];
  for (const file of await folder.list(stretch)) {
    const source = folder.glance(file)?.files.length ? folder.source(file) : undefined;
    if (source) edits.push(...mendedUses(source, moves));
    if (stretch.due) await stretch.rest();
  }
  return edits;
}

function movesOf(session: Session, renames: readonly FileRename[]): Moves {
  const { names, files, jobFiles } = session.lent;
  const known = renames.map(({ oldUri, newUri }) => ({
    from: names.nameOf(oldUri),
    to: names.nameOf(newUri),
  }));
  return {
    moved: (file) => {
      for (const { from, to } of known) {
        const way = names.wayTo(from, file)?.filter((part) => part !== '');
        if (way) return way.reduce((at, part) => jobFiles.join(at, part), to);
      }
      return file;
    },
    resolve: (from, path) => files.resolve(from, path),
    way: (from, to) => wayFrom(names.uriOf(from), names.uriOf(to)),
  };
}
