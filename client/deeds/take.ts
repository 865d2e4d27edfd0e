/** Takes into a job what a partner’s copy says otherwise: from which file, which blocks, with which rates. */
import { l10n, type TextDocument, type Uri, window, workspace } from 'vscode';
import { TAKE, type TakeEdits } from '../../shared/protocol/partners';
import { deed, sayAsides } from '../asking';
import { filesUnder } from '../files-under';
import { iconless } from '../iconless';
import type { Server } from '../server';
import { documentAt, documentOf, listedName, uriIn } from '../target';
import { applied } from './put';
import { choose, runSteps, type Step } from './steps';

/** What `perpend.take` may be given; with all of it nothing is asked for. */
export interface TakeRequest {
  readonly uri?: string;
  readonly theirs?: string;
  readonly names?: readonly string[];
  readonly rates?: boolean;
}

interface Wishes {
  readonly theirs?: Uri;
  readonly found?: TakeEdits;
  readonly names?: readonly string[];
  readonly rates?: boolean;
}

const MOST_FILES = 500;

export async function take(server: Server, request?: TakeRequest): Promise<void> {
  const document = await documentOf(request);
  const wishes = document && (await wishesFor(server, document, request));
  if (!document || !wishes?.theirs) return;
  const { theirs, names, rates } = wishes;
  const text = await textOf(theirs);
  if (text === undefined) return;
  const params = { uri: server.uri(document.uri), theirs: text, names, rates };
  const made = await deed(server, TAKE, params);
  if (made && (await applied(document, made.edit))) sayAsides(toldOf(made));
}

/** As it stands in an editor, saved or not: the server is handed the text, wherever the file came from. */
async function textOf(file: Uri): Promise<string | undefined> {
  return (await documentAt(file))?.getText();
}

async function wishesFor(
  server: Server,
  document: TextDocument,
  request: TakeRequest | undefined,
): Promise<Wishes | undefined> {
  const theirs = uriIn({ uri: request?.theirs });
  if (theirs && request?.rates !== undefined)
    return { theirs, names: request.names, rates: request.rates };
  const files = theirs ? [] : await candidates(document);
  const steps = [fromStep(server, document, files), namesStep, ratesStep];
  return runSteps<Wishes>(l10n.t('Take In a Partner’s Copy'), {}, () => steps);
}

async function candidates({ uri }: TextDocument): Promise<Uri[]> {
  const folders = workspace.workspaceFolders ?? [];
  const found = await Promise.all(folders.map((folder) => filesUnder(folder.uri, MOST_FILES)));
  return found.flat().filter((each) => each.toString() !== uri.toString());
}

function fromStep(server: Server, ours: TextDocument, files: readonly Uri[]): Step<Wishes> {
  const other = { label: l10n.t('Another File…'), uri: undefined };
  const items = [...files.map((uri) => ({ label: iconless(listedName(uri)), uri })), other];
  return async (state, at) => {
    const placeholder = l10n.t('Which file came back?');
    const chosen = await choose({ ...at, items, placeholder });
    if (typeof chosen !== 'object') return chosen;
    const theirs = chosen[0]!.uri ?? (await elsewhere());
    if (!theirs) return undefined;
    const text = await textOf(theirs);
    if (text === undefined) return undefined;
    const found = await deed(server, TAKE, { uri: server.uri(ours.uri), theirs: text });
    return found && { ...state, theirs, found };
  };
}

async function elsewhere(): Promise<Uri | undefined> {
  const filters = { Perpend: ['perp'] };
  return (await window.showOpenDialog({ filters, title: l10n.t('Which file came back?') }))?.[0];
}

const namesStep: Step<Wishes> = async (state, at) => {
  const items = (state.found?.offered ?? []).map((label) => ({ label }));
  const placeholder = l10n.t('Which blocks are taken?');
  const chosen = await choose({ ...at, items, many: true, picked: items, placeholder });
  return typeof chosen === 'object'
    ? { ...state, names: chosen.map(({ label }) => label) }
    : chosen;
};

const ratesStep: Step<Wishes> = async (state, at) => {
  const items = [
    {
      label: l10n.t('Without their rates'),
      detail: l10n.t('Prices, labour, outputs, travel and costs stay ours.'),
      rates: false,
    },
    {
      label: l10n.t('With their rates'),
      detail: l10n.t('Their prices, labour, outputs, travel and costs are taken too.'),
      rates: true,
    },
  ];
  const chosen = await choose({ ...at, items, placeholder: l10n.t('Whose rates hold?') });
  return typeof chosen === 'object' ? { ...state, rates: chosen[0]!.rates } : chosen;
};

function takenLines(lines: number): string {
  if (!lines) return l10n.t('Nothing was taken.');
  return lines === 1
    ? l10n.t('Taken: one line. Undo takes it out again.')
    : l10n.t('Taken: {0} lines. Undo takes them out again.', lines);
}

function toldOf({ taken, refused, ours }: TakeEdits): string[] {
  return [
    takenLines(taken.length),
    ...(refused ? [l10n.t('Not taken: {0} of theirs.', refused)] : []),
    ...(ours.length ? [l10n.t('Only in ours, and kept: {0}.', ours.length)] : []),
  ];
}
