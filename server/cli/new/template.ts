/** The template that a name means: one that ships, or a file. */

import { existsSync } from 'node:fs';
import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { templateOf } from '../../engine/life/template';
import { usesFiles, usesReached, withFirm } from '../../engine/life/template/firm';
import { FIRM } from '../../engine/resolve/firm-near';
import { TEMPLATES } from '../../engine/templates';
import { SourceFile } from '../../engine/workspace/source';
import { WrongUse } from '../exits';
import { reaching } from '../files/reach';
import { near } from '../near';
import type { Session } from '../session';

export interface Found {
  readonly text: string;
  readonly title: string;
  /** Its real name, of one that is a file. */
  readonly file?: string;
}

/** @throws WrongUse, FileTrouble */
export function templateNamed(name: string, session: Session): Found {
  const shipped = TEMPLATES.get(name);
  if (shipped !== undefined) return found(name, shipped);
  if (!/\.perp$/i.test(name)) throw new WrongUse(unknown(name));
  const { job, shown } = session.open(name);
  return found(shown, job.file.text, job.file.name);
}

function found(name: string, text: string, file?: string): Found {
  const template = templateOf(new SourceFile('', text));
  if (!template)
    throw new WrongUse(
      phrase`${name} is no template: it has no heading like template "Garden wall". To begin from a past job, see: perpend next`,
    );
  return { text, title: template.title, file };
}

function unknown(name: string): string {
  const [meant] = near(name, [...TEMPLATES.keys()]);
  const hint = meant
    ? phrase`Did you mean ${meant}?`
    : phrase`There are ${[...TEMPLATES.keys()].join(', ')}.`;
  return phrase`There is no template ${name}. ${hint} A file of your own ends with .perp.`;
}

/** Its text as it stands in a new file, with the firm’s file where one is found and the template uses none. */
export function standing({ text, file }: Found, name: string, session: Session) {
  const own = file === undefined ? text : usesReached(text, reaching(file, name));
  if (usesFiles(own)) return { text: own };
  const firm = firmNear(name, session.rootOf(name));
  return firm === undefined ? { text: own } : { text: withFirm(own, firm), firm };
}

/** The nearest one above, in the same workspace; as the new file reaches it. */
function firmNear(name: string, root: string): string | undefined {
  for (let at = path.dirname(name); ; at = path.dirname(at)) {
    const firm = path.join(at, FIRM);
    if (firm !== name && existsSync(firm)) return reaching(firm, name)(FIRM);
    if (at === root || path.dirname(at) === at) return undefined;
  }
}
