/** A job from a template: which, then its questions, each answer looked at by the server before the next is asked. */
import { l10n, Uri, workspace } from 'vscode';
import {
  type AskItem,
  NEW,
  type NewMade,
  type NewParams,
  TEMPLATES,
  type TemplateItem,
} from '../../shared/protocol/deeds';
import { deed, sayAsides } from '../asking';
import { folderOf } from '../papers/save';
import type { Server } from '../server';
import { inFront } from '../status-bar';
import { freePlace, openNew } from './put';
import { ask, choose, runSteps, type Step } from './steps';

interface Wishes {
  readonly template?: TemplateItem;
  readonly answers: NewParams['answers'];
}

/** What `perpend.new` may be given; with answers nothing is asked for. */
export interface NewRequest {
  readonly template?: string;
  readonly answers?: NewParams['answers'];
  /** The folder of the new file. */
  readonly folder?: Uri | string;
}

export async function newJob(server: Server, given?: NewRequest | Uri): Promise<void> {
  const request: NewRequest = given instanceof Uri ? { folder: given } : (given ?? {});
  const folder = await folderFor(request);
  const wishes = await wishesFor(server, request);
  if (!wishes?.template) return;
  const { name } = wishes.template;
  const to = await freePlace(folder, name.replace(/^.*\//, '').replace(/\.perp$/i, ''));
  const params = { template: name, to: to.toString(), answers: wishes.answers };
  const made = await deed(server, NEW, params);
  if (!made) return;
  await openNew(to, made.text);
  sayAsides(toldOf(made));
}

/** The folder that was said, that of the job in front, or the one that is open. */
async function folderFor({ folder }: NewRequest): Promise<Uri> {
  const said = typeof folder === 'string' ? Uri.parse(folder, true) : folder;
  if (said) return said;
  const front = inFront();
  return (
    (front && folderOf(front)) ?? workspace.workspaceFolders?.[0]?.uri ?? Uri.parse('untitled:/')
  );
}

async function wishesFor(server: Server, request: NewRequest): Promise<Wishes | undefined> {
  const templates = await deed(server, TEMPLATES, {});
  if (!templates) return undefined;
  const template = templates.find(({ name }) => name === request.template);
  if (template && request.answers) return { template, answers: request.answers };
  const first: Wishes = { template, answers: [] };
  const which = template ? [] : [templateStep(templates)];
  return runSteps(l10n.t('New Job'), first, (state) => [
    ...which,
    ...(state.template?.asks ?? []).map((item) => answerStep(server, item)),
  ]);
}

function templateStep(templates: readonly TemplateItem[]): Step<Wishes> {
  const items = templates.map((template) => ({
    label: template.title,
    description: l10n.t('{0} questions', template.asks.length),
    template,
  }));
  return async (_, at) => {
    const chosen = await choose({ ...at, items, placeholder: l10n.t('What is to be built?') });
    return typeof chosen === 'object' ? { template: chosen[0]!.template, answers: [] } : chosen;
  };
}

function answerStep(server: Server, { what, line, question, value }: AskItem): Step<Wishes> {
  return async (state, at) => {
    const answersWith = (said: string) =>
      said.trim() ? [...state.answers, { what, line, answer: said.trim() }] : state.answers;
    const wrong = async (said: string) => {
      const params = { template: state.template!.name, answers: answersWith(said) };
      const made = await server.ask<NewMade>(NEW, params);
      return made?.wrong?.find((each) => each.what === what && each.line === line)?.message;
    };
    const said = await ask({ ...at, prompt: question, value, wrong });
    return typeof said === 'string' ? { ...state, answers: answersWith(said) } : said;
  };
}

function toldOf({ price, missing, firm }: NewMade): string[] {
  const complete = missing.length
    ? l10n.t('The price is not complete: it lacks {0}.', missing.slice(0, 5).join('; '))
    : l10n.t('It comes to {0}.', price);
  return [...(firm ? [l10n.t('It uses your firm’s file {0}.', firm)] : []), complete];
}
