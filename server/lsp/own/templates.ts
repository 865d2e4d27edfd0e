/** A job from a template: what it asks, and the text that the answers make. */
import { phrase } from '../../../shared/phrase';
import {
  type AskItem,
  NEW,
  type NewMade,
  type NewParams,
  TEMPLATES,
  type TemplateItem,
  type TemplatesParams,
} from '../../../shared/protocol/new';
import type { Refused } from '../../../shared/protocol/pages';
import { answerNow, askable, asksOf, templateOf } from '../../engine/life/template';
import { answered } from '../../engine/life/template/answer';
import { jobFrom } from '../../engine/life/template/final';
import { usesFiles, usesReached, withFirm } from '../../engine/life/template/firm';
import { firmNear } from '../../engine/resolve/firm-near';
import { TEMPLATES as SHIPPED } from '../../engine/templates';
import { missingOf, showTerm } from '../../engine/views/show';
import { SourceFile } from '../../engine/workspace/source';
import { jobOfText } from '../beside';
import type { Parts } from '../parts';
import type { Session } from '../session';
import { onMany } from './asked';
import { reaching } from './deeds';
import { refused } from './exports';

export function registerTemplates(parts: Parts): void {
  const { session } = parts;
  onMany<TemplatesParams | undefined, readonly TemplateItem[]>(parts, TEMPLATES, async (params) =>
    templates(session(), params?.uri),
  );
  onMany<NewParams, NewMade | Refused>(parts, NEW, async (params) => made(session(), params));
}

function templates(session: Session, uri: string | undefined): TemplateItem[] {
  const file = uri === undefined ? undefined : session.file(uri);
  const own = file ? [[file.uri, session.source(file).text] as const] : [];
  return [...own, ...SHIPPED].flatMap(([name, text]) => itemOf(name, text) ?? []);
}

function itemOf(name: string, text: string): TemplateItem | undefined {
  const file = new SourceFile('', text);
  const template = templateOf(file);
  if (!template) return undefined;
  const targets = askable(file.blocks);
  const asks = asksOf(text).map((ask): AskItem => {
    const { what, word, question } = ask;
    return { what, line: word, question, value: answerNow(ask, targets) };
  });
  return { name, title: template.title, asks };
}

function made(session: Session, { template, to, answers }: NewParams): NewMade | Refused {
  const found = textOf(session, template, to);
  if (found === undefined) return refused(phrase`There is no template ${template}.`);
  const name = to === undefined ? '' : session.lent.names.nameOf(to);
  const firm = usesFiles(found) ? undefined : firmFor(session, name);
  const start = firm === undefined ? found : withFirm(found, firm);
  const { text, wrong } = filled(session, name, start, answers);
  const fresh = jobFrom(text);
  const { price, env, isJob } = jobOfText(session, name, fresh);
  const total = isJob ? showTerm(price.total, env) : '';
  return { text: fresh, wrong, firm, price: total, missing: isJob ? missingOf(price.total) : [] };
}

/** One that ships, or an open file; what that uses is named as the new file reaches it. */
function textOf(session: Session, template: string, to: string | undefined): string | undefined {
  const shipped = SHIPPED.get(template);
  if (shipped !== undefined) return shipped;
  const file = session.file(template);
  if (!file) return undefined;
  const { text } = session.source(file);
  if (!templateOf(new SourceFile('', text))) return undefined;
  return to === undefined ? text : usesReached(text, reaching(session, file, to));
}

type Answers = NewParams['answers'];

/** Each answer that is one put in, one after another; of the others what is wrong. */
function filled(session: Session, name: string, start: string, answers: Answers) {
  const asks = asksOf(start);
  const wrong: NewMade['wrong'][number][] = [];
  let text = start;
  for (const { what, line, answer } of answers.slice(0, MOST_ANSWERS)) {
    const ask = asks.find((each) => each.what === what && each.word === line);
    const done = ask && answered(text, ask, answer);
    const message = done
      ? (done.fault?.message ?? faultIn(session, name, done))
      : phrase`The template does not ask for ${what} ${line}.`;
    if (message === undefined) text = done!.text;
    else wrong.push({ what, line, message });
  }
  return { text, wrong };
}

/** No template asks so much. */
const MOST_ANSWERS = 200;

/** By what the job would be told at its line. */
function faultIn(
  session: Session,
  name: string,
  { text, line }: { readonly text: string; readonly line: number },
): string | undefined {
  const { findings } = jobOfText(session, name, text);
  return findings.find((f) => f.severity === 'error' && f.place.line === line)?.message;
}

/** The nearest one in or above the folder of a new file, as that reaches it; inside the open folders. */
function firmFor({ lent: { files, names } }: Session, name: string): string | undefined {
  if (!names.hasPlace(name)) return undefined;
  return firmNear((way) => {
    const firm = files.resolve(name, way);
    if (firm === undefined) return 'outside';
    return firm !== name && files.read(firm) !== undefined ? 'there' : 'missing';
  });
}
