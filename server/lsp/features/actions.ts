/** Ways out of what is told, all of them at once, and changes that mend nothing. */

import type { CodeAction, CodeActionParams } from 'vscode-languageserver';
import { actionsFor, fixAllOf, type Named, refactoringsFor } from '../../engine/ide/actions';
import type * as ide from '../../engine/ide/types';
import type { Job } from '../../engine/workspace/job';
import { modified } from '../answers';
import * as from from '../from-proto';
import type { Parts } from '../parts';
import type { OpenFile } from '../session';
import * as to from '../to-proto';

export function registerActions(parts: Parts): void {
  const { connection, answers, client, session } = parts;
  connection.onCodeAction(
    answers.quick((params, file) => {
      const job = session().job(file);
      return wanted(params, job, client().fillsEdits)
        .map((action) => ({ action, nth: nthOf(action, job) }))
        .map((each) => to.codeAction(each, params, file, session(), client()))
        .filter(doesSomething);
    }),
  );
  const resolved = answers.quick(({ data, action }: Resolve, file) =>
    file.version === data.version ? resolvedIn(parts, file, data, action) : (modified() as never),
  );
  connection.onCodeActionResolve(async (action, token) => {
    const { data } = action as { data?: to.ActionData };
    if (!data) return action;
    const { uri } = data;
    return (await resolved({ textDocument: { uri }, data, action }, token)) ?? action;
  });
}

function nthOf({ finding }: ide.Action, { findings }: Job): number | undefined {
  return finding && findings.filter(({ code }) => code === finding.code).indexOf(finding);
}

/** What is tried only as it is taken may find nothing to do; told with its edits, it is not offered then. */
function doesSomething({ edit }: CodeAction): boolean {
  return (
    !edit || [edit.changes, edit.documentChanges].some((all) => all && Object.keys(all).length)
  );
}

interface Resolve {
  readonly textDocument: { readonly uri: string };
  readonly data: to.ActionData;
  readonly action: CodeAction;
}

/** Kinds are asked for by their first words: `refactor` means all of them that begin so. */
function asks(only: readonly string[] | undefined, kind: ide.ActionKind): boolean {
  return only?.some((each) => kind === each || kind.startsWith(`${each}.`) || each === '') ?? false;
}

function wanted(params: CodeActionParams, job: Job, fills: boolean): ide.Action[] {
  const { only, diagnostics } = params.context;
  const range = from.actionRange(params.range);
  const any = only === undefined;
  const of = (kind: ide.ActionKind) => asks(only, kind);
  return [
    ...(any || of('quickfix') ? actionsFor(job, range, diagnostics.flatMap(named)) : []),
    // Never unasked: it is about the whole of the file.
    ...(of('source.fixAll.perpend') ? fixAllOf(job) : []),
    ...(any || of('refactor.rewrite') || of('refactor.extract')
      ? refactoringsFor(job, range, fills)
      : []),
  ].filter((action) => (any || of(action.kind)) && (fills || !action.fills));
}

/** What we gave with a diagnostic, or nothing if it is none of ours. */
function named({ source, data }: CodeActionParams['context']['diagnostics'][number]): Named[] {
  const { code, nth } = (data ?? {}) as Partial<Named>;
  return source === to.SOURCE && typeof code === 'string' && typeof nth === 'number'
    ? [{ code, nth }]
    : [];
}

function resolvedIn(
  { client, session }: Parts,
  file: OpenFile,
  { params }: to.ActionData,
  action: CodeAction,
): CodeAction {
  const found = wanted(params, session().job(file), client().fillsEdits).find(
    (each) => each.title === action.title && each.kind === action.kind,
  );
  const edit = found ? to.actionEdit(found, file, session(), client()) : { changes: {} };
  return { ...action, edit };
}
