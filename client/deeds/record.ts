/** Writes what has happened into a job: which, on what day, and the words of the line. */
import { l10n, type QuickPickItem, type TextDocument } from 'vscode';
import type { Refused } from '../../shared/protocol/pages';
import {
  RECORD,
  RECORD_KINDS,
  type RecordKind,
  type RecordParams,
} from '../../shared/protocol/record';
import { deed, sayAsides } from '../asking';
import { iconless } from '../iconless';
import type { Server } from '../server';
import { documentOf } from '../target';
import { applied, showLine } from './put';
import { today, wordsOf, wrongDay } from './said';
import { ask, BACK, choose, runSteps, type Step } from './steps';

interface Happened {
  readonly kind?: RecordKind;
  readonly date?: string;
  readonly words?: readonly string[];
}

/** What `perpend.record` may be given: what is said is not asked for. */
export interface RecordRequest extends Partial<Omit<RecordParams, 'uri'>> {
  readonly uri?: string;
}

export async function record(server: Server, request?: RecordRequest): Promise<void> {
  const document = await documentOf(request);
  if (!document) return;
  const params = await paramsFor(server, document, request);
  const made = params && (await deed(server, RECORD, params));
  if (!made || !(await applied(document, made.edit))) return;
  await showLine(document, made.line);
  sayAsides(made.asides);
}

async function paramsFor(
  server: Server,
  document: TextDocument,
  request: RecordRequest | undefined,
): Promise<RecordParams | undefined> {
  const uri = server.uri(document.uri);
  const { what, date, words } = request ?? {};
  if (what && date) return { uri, what, date, words };
  const kinds = await deed(server, RECORD_KINDS, { uri });
  if (!kinds) return undefined;
  const wrong = (said: RecordParams) => wrongWith(server, said);
  const steps = [whatStep(kinds), dateStep, wordsStep(uri, wrong)];
  const told = await runSteps<Happened>(l10n.t('Write into the Record'), {}, () => steps);
  return told && toParams(uri, told);
}

function toParams(uri: string, { kind, date, words }: Happened): RecordParams {
  return { uri, what: kind!.what, date: date!, words };
}

function whatStep(kinds: readonly RecordKind[]): Step<Happened> {
  // A row of a list has a `kind` of its own.
  const items = kinds.map((each) => ({
    label: each.what,
    detail: each.about.replaceAll('`', ''),
    each,
  }));
  return async (state, at) => {
    const placeholder = l10n.t('What has happened?');
    const chosen = await choose({ ...at, items, placeholder });
    return typeof chosen === 'object' ? { ...state, kind: chosen[0]!.each } : chosen;
  };
}

const dateStep: Step<Happened> = async (state, at) => {
  const prompt = l10n.t('On what day?');
  const value = state.date ?? today();
  const date = await ask({ ...at, prompt, value, wrong: wrongDay });
  return typeof date === 'string' ? { ...state, date: date.trim() } : date;
};

type Wrong = (said: RecordParams) => Promise<string | undefined>;

function wordsStep(uri: string, wrong: Wrong): Step<Happened> {
  return (state, at) => {
    const kind = state.kind!;
    if (kind.options.length) return optionsStep(kind, state, at);
    const toldOf = (said: string) => toParams(uri, { ...state, words: wordsOf(said) });
    return askWords(kind, state, { ...at, wrong: (said) => wrong(toldOf(said)) });
  };
}

type Asked = Parameters<typeof ask>[0];

async function askWords(
  kind: RecordKind,
  state: Happened,
  at: Pick<Asked, 'title' | 'step' | 'totalSteps' | 'wrong'>,
) {
  const prompt = kind.alone
    ? l10n.t(
        'Leave it empty for the price that the job comes to, or write as here: {0}',
        kind.example,
      )
    : l10n.t('Write as here: {0}', kind.example);
  const said = await ask({ ...at, prompt, placeholder: kind.example });
  return typeof said === 'string' ? { ...state, words: wordsOf(said) } : said;
}

const optionsStep = async (
  kind: RecordKind,
  state: Happened,
  at: Parameters<Step<Happened>>[1],
) => {
  const items = kind.options.map(
    ({ name, title }): QuickPickItem => ({ label: name, description: iconless(title) }),
  );
  const placeholder = l10n.t('Which options are taken? None is the job as it stands.');
  const chosen = await choose({ ...at, items, many: true, placeholder });
  if (chosen === BACK || chosen === undefined) return chosen;
  return { ...state, words: chosen.map(({ label }) => label) };
};

/** Asked of the server, which knows how such a line is read. */
async function wrongWith(server: Server, params: RecordParams): Promise<string | undefined> {
  const answer = await server.ask<object | Refused | null>(RECORD, params);
  return (answer as Partial<Refused> | undefined)?.refused;
}
