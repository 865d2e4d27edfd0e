/** A job from a template: which, then its questions, each answer looked at by the server before the next is asked. */
import { commands, l10n, Uri, window, workspace } from 'vscode';
import {
  type AskItem,
  NEW,
  type NewMade,
  type NewParams,
  TEMPLATES,
  type TemplateItem,
} from '../../shared/protocol/new';
import { deed, sayAsides } from '../asking';
import { iconless } from '../iconless';
import { askFolder, ownFolder } from '../place';
import type { Server } from '../server';
import { inFront } from '../status-bar';
import { documentAt } from '../target';
import { freePlace, openNew, openSaved } from './put';
import { ask, choose, runSteps, type Step } from './steps';

interface Wishes {
  readonly template?: TemplateItem;
  readonly answers: NewParams['answers'];
}

/** What `perpend.new` may be given; with answers nothing is asked for. */
export interface NewRequest {
  /** One that ships by its name, or a file of the firm by its address. */
  readonly template?: string;
  readonly answers?: NewParams['answers'];
  /** The folder of the new file. */
  readonly folder?: Uri | string;
}

export async function newJob(server: Server, given?: NewRequest | Uri): Promise<void> {
  const request: NewRequest = given instanceof Uri ? { folder: given } : (given ?? {});
  const folder = folderFor(request);
  const wishes = await wishesFor(server, request);
  if (!wishes?.template) return;
  const { name } = wishes.template;
  const to = await placeFor(folder, stemOf(name));
  const there = (to ?? Uri.parse(`untitled:/${stemOf(name)}.perp`)).toString();
  const made = await deed(server, NEW, { template: name, to: there, answers: wishes.answers });
  if (!made) return;
  // With no folder open, a text that is not saved stands nowhere, and would not find the firm’s prices beside it.
  if (to && !workspace.workspaceFolders?.length) await openSaved(to, made.text);
  else await openNew(to, made.text);
  if (made.firm || !made.missing.length) sayAsides(toldOf(made));
  else void sayNoFirm();
}

function folderFor({ folder }: NewRequest): Uri | undefined {
  const said = typeof folder === 'string' ? Uri.parse(folder, true) : folder;
  return said ?? ownFolder();
}

/** Nothing is written over. Nowhere, when the reader does not say. */
async function placeFor(folder: Uri | undefined, stem: string): Promise<Uri | undefined> {
  const title = l10n.t('Where Are Your Jobs Kept? Beside firm.perp a Job Finds Your Prices');
  const chosen = folder ?? (await askFolder(title));
  return chosen && freePlace(chosen, stem);
}

function stemOf(name: string): string {
  const way = name.includes(':') ? Uri.parse(name, true).path : name;
  return way.replace(/^.*\//, '').replace(/\.perp$/i, '');
}

/** A template of the firm is a file: the one that is named by its address, else the one in front, if it is one. */
async function ownTemplate(template: string | undefined): Promise<Uri | undefined> {
  if (!template?.includes(':')) return inFront()?.uri;
  return (await documentAt(Uri.parse(template)))?.uri;
}

async function wishesFor(server: Server, request: NewRequest): Promise<Wishes | undefined> {
  const own = await ownTemplate(request.template);
  const templates = await deed(server, TEMPLATES, { uri: own && server.uri(own) });
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
    label: iconless(template.title),
    description: questions(template.asks.length),
    template,
  }));
  return async (_, at) => {
    const chosen = await choose({ ...at, items, placeholder: l10n.t('What is to be built?') });
    return typeof chosen === 'object' ? { template: chosen[0]!.template, answers: [] } : chosen;
  };
}

function questions(count: number): string {
  return count === 1 ? l10n.t('one question') : l10n.t('{0} questions', count);
}

function answerStep(server: Server, { what, line, question, value }: AskItem): Step<Wishes> {
  return async (state, at) => {
    const answersWith = (said: string) => {
      const answer = answerOf(said, line);
      return answer ? [...state.answers, { what, line, answer }] : state.answers;
    };
    const wrong = async (said: string) => {
      const params = { template: state.template!.name, answers: answersWith(said) };
      const made = await server.ask<NewMade>(NEW, params);
      return made?.wrong?.find((each) => each.what === what && each.line === line)?.message;
    };
    const placeholder = emptied(value);
    const said = await ask({ ...at, prompt: question, value, placeholder, wrong });
    return typeof said === 'string' ? { ...state, answers: answersWith(said) } : said;
  };
}

/** What it means to leave the answer empty. */
function emptied(value: string | undefined): string {
  return value
    ? l10n.t('Left empty it stays {0}; write ? for what is not known yet', value)
    : l10n.t('It may be left empty');
}

/** Who writes the whole line, as messages show it, means what stands after its word. */
function answerOf(said: string, line: string): string {
  const answer = said.trim();
  return answer.startsWith(`${line} `) ? answer.slice(line.length).trim() : answer;
}

/** Who begins with the job instead of the prices is shown the way to them. */
async function sayNoFirm(): Promise<void> {
  const prices = l10n.t('Your Firm’s Prices');
  const why = l10n.t(
    'No firm.perp stands beside this job, so nothing has a price yet. Put your prices in and save them: then the job offers to use them.',
  );
  const said = await window.showWarningMessage(why, prices);
  if (said === prices) await commands.executeCommand('perpend.firm');
}

function toldOf({ price, missing, firm }: NewMade): string[] {
  const complete = missing.length
    ? l10n.t('The price is not complete: {0}.', missing.slice(0, 5).join('; '))
    : l10n.t('It comes to {0}.', price);
  return [...(firm ? [l10n.t('It uses your firm’s file {0}.', firm)] : []), complete];
}
