/** A copy of a job for a partner firm, as a text to look at before it is saved and sent. */
import { l10n } from 'vscode';
import { SHARE, type SharedMade, type ShareParams } from '../../shared/protocol/partners';
import { deed, sayAsides } from '../asking';
import { folderOf } from '../papers/save';
import type { Server } from '../server';
import { documentOf } from '../target';
import { freePlace, openNew } from './put';
import { ask, choose, runSteps, type Step } from './steps';

type Wishes = Partial<Pick<ShareParams, 'whom' | 'without' | 'client'>>;

/** What `perpend.share` may be given; with all of it nothing is asked for. */
export interface ShareRequest extends Wishes {
  readonly uri?: string;
}

export async function share(server: Server, request?: ShareRequest): Promise<void> {
  const document = await documentOf(request);
  const wishes = document && (isWhole(request) ? request : await asked());
  if (!document || !isWhole(wishes)) return;
  const { whom, without, client } = wishes;
  const made = await deed(server, SHARE, { uri: server.uri(document.uri), whom, without, client });
  if (!made) return;
  const stem = made.name.replace(/\.perp$/i, '');
  await openNew(await freePlace(folderOf(document), stem), made.text);
  sayAsides(toldOf(made));
}

type Whole = Required<Wishes>;

function isWhole(wishes: Wishes | undefined): wishes is Whole {
  return Boolean(wishes?.whom && wishes.without) && wishes?.client !== undefined;
}

function asked(): Promise<Wishes | undefined> {
  const title = l10n.t('Copy for a Partner Firm');
  // The whole job has its client in it: there is nothing more to ask.
  return runSteps<Wishes>(title, {}, ({ without }) =>
    without === 'nothing' ? [whomStep, withoutStep] : [whomStep, withoutStep, clientStep],
  );
}

const whomStep: Step<Wishes> = async (state, at) => {
  const prompt = l10n.t('Whom is the copy for? It is said at its head.');
  const wrong = (said: string) => (said.trim() ? undefined : l10n.t('Write the name of the firm.'));
  const whom = await ask({ ...at, prompt, value: state.whom, wrong });
  return typeof whom === 'string' ? { ...state, whom: whom.trim() } : whom;
};

const withoutStep: Step<Wishes> = async (state, at) => {
  const items = [
    {
      label: l10n.t('Without costs'),
      detail: l10n.t(
        'No prices of what is bought, no labour, margin or record; what the client pays stays, if a price was given.',
      ),
      without: 'costs' as const,
    },
    {
      label: l10n.t('Without money'),
      detail: l10n.t('No money at all.'),
      without: 'money' as const,
    },
    {
      label: l10n.t('The whole job'),
      detail: l10n.t('Costs, comments and record too.'),
      without: 'nothing' as const,
    },
  ];
  const chosen = await choose({ ...at, items, placeholder: l10n.t('What is left out?') });
  if (typeof chosen !== 'object') return chosen;
  const { without } = chosen[0]!;
  return { ...state, without, client: without === 'nothing' ? true : undefined };
};

const clientStep: Step<Wishes> = async (state, at) => {
  const items = [
    {
      label: l10n.t('Without the client'),
      detail: l10n.t('Client, site and reference are left out.'),
      client: false,
    },
    {
      label: l10n.t('With the client'),
      detail: l10n.t('Client, site and reference stay.'),
      client: true,
    },
  ];
  const chosen = await choose({
    ...at,
    items,
    placeholder: l10n.t('Does it say whose job it is?'),
  });
  return typeof chosen === 'object' ? { ...state, client: chosen[0]!.client } : chosen;
};

function takenOut(texts: number): string {
  return texts === 1
    ? l10n.t('Money or names were taken out of one text.')
    : l10n.t('Money or names were taken out of {0} texts.', texts);
}

function toldOf({ left, replaced, asides }: SharedMade): string[] {
  const told = left.map(({ what, count }) => `${what}: ${count}`);
  return [
    ...(told.length ? [l10n.t('Left out: {0}.', told.join(', '))] : []),
    ...(replaced.length ? [takenOut(replaced.length)] : []),
    ...asides,
  ];
}
