/** What in a text leads out of it. */
import { type Link, linksOf } from '../../engine/ide/links';
import type { Parts } from '../parts';
import type { OpenFile, Session } from '../session';
import * as to from '../to-proto';

export function registerLinks({ connection, answers, session }: Parts): void {
  connection.onDocumentLinks(
    answers.quick((_, file) =>
      linksOf(session().source(file))
        .filter((link) => mayLead(session(), file, link))
        .map((link) => to.documentLink(link, file.uri)),
    ),
  );
  connection.onDocumentLinkResolve((link) => {
    const target = answers.safely(() => targetOf(session(), link.data));
    return target ? { ...link, target } : link;
  });
}

/** Nothing outside the open folders is opened. */
function mayLead(session: Session, file: OpenFile, { to: { path, library } }: Link): boolean {
  if (library !== undefined) return session.store.library(library) !== undefined;
  return path === undefined || session.lent.files.resolve(file.name, path) !== undefined;
}

function targetOf(session: Session, data: unknown): string | undefined {
  const { uri, path, library } = (data ?? {}) as Record<string, unknown>;
  if (typeof library === 'string') return uriOf(session, session.store.library(library)?.name);
  if (typeof path !== 'string' || typeof uri !== 'string') return undefined;
  return uriOf(session, session.lent.files.resolve(session.lent.names.nameOf(uri), path));
}

function uriOf(session: Session, name: string | undefined): string | undefined {
  return name === undefined ? undefined : session.uriOf(name);
}
