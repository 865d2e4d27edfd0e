/** A new job from a past one: for whom, where, under what reference. */
import { l10n, Uri } from 'vscode';
import { NEXT, type NextMade, type NextParams } from '../../shared/protocol/new';
import { deed, sayAsides } from '../asking';
import { folderOf } from '../papers/save';
import type { Server } from '../server';
import { documentOf } from '../target';
import { freePlace, openNew } from './put';
import { given, today, wrongDay } from './said';
import { ask, runSteps, type Step } from './steps';

type Wishes = Pick<NextParams, 'title' | 'client' | 'site' | 'ref' | 'date'>;

/** What `perpend.next` may be given; with any wish nothing is asked for. */
export interface NextRequest extends Wishes {
  readonly uri?: string;
}

export async function next(server: Server, request?: NextRequest): Promise<void> {
  const document = await documentOf(request);
  if (!document) return;
  const wishes = wishesIn(request) ?? (await wishesAsked());
  if (!wishes) return;
  const stem = document.uri.path.replace(/^.*\//, '').replace(/(-next)?\.perp$/i, '');
  const to = await freePlace(folderOf(document), `${stem}-next`);
  const params = { uri: server.uri(document.uri), to: to.toString(), ...wishes };
  const made = await deed(server, NEXT, params);
  if (!made) return;
  await openNew(to, made.text);
  sayAsides(toldOf(made));
}

function wishesIn(request: NextRequest | undefined): Wishes | undefined {
  if (!request || request instanceof Uri) return undefined;
  const { title, client, site, ref, date } = request;
  const wishes = { title, client, site, ref, date };
  return Object.values(wishes).some((wish) => wish !== undefined) ? wishes : undefined;
}

function wishesAsked(): Promise<Wishes | undefined> {
  const steps: Step<Wishes>[] = [
    text('client', l10n.t('Who is the client? Leave it empty to write it later.')),
    text('site', l10n.t('Where is the work? Leave it empty to write it later.')),
    text('title', l10n.t('What is the job called? Leave it empty to keep the old title.')),
    text('ref', l10n.t('Your reference? Leave it empty for none.')),
    dateStep,
  ];
  return runSteps<Wishes>(l10n.t('New Job from This One'), {}, () => steps);
}

function text(key: 'client' | 'site' | 'title' | 'ref', prompt: string): Step<Wishes> {
  return async (state, at) => {
    const said = await ask({ ...at, prompt, value: state[key] });
    return typeof said === 'string' ? { ...state, [key]: given(said) } : said;
  };
}

const dateStep: Step<Wishes> = async (state, at) => {
  const prompt = l10n.t('The day of the quote');
  const said = await ask({ ...at, prompt, value: state.date ?? today(), wrong: wrongDay });
  return typeof said === 'string' ? { ...state, date: said.trim() } : said;
};

function leftOut(lines: number): string {
  return lines === 1
    ? l10n.t('Left out, as it was the past client’s: one line.')
    : l10n.t('Left out, as they were the past client’s: {0} lines.', lines);
}

/** What it did, in short: the whole stands in the text. */
function toldOf({ cleared, rates, before, after }: NextMade): string[] {
  const price = l10n.t('The old job comes to {0} today, the new one to {1}.', before, after);
  const told = [price];
  if (rates.length)
    told.push(l10n.t('Brought up to today: {0}.', rates.map((r) => r.what).join(', ')));
  if (cleared.length) told.push(leftOut(cleared.length));
  return told;
}
