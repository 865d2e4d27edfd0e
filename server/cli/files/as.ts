/** Papers in the form that was asked for: every command that makes one shares this. */

import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import { logoNamed } from '../../documents/letterhead';
import { MOST_PICTURE_BYTES, type Paper, type Picture, pictureSize } from '../../documents/paper';
import { type Heavy, isHeavy, type Written, written } from '../../documents/paper/written';
import type { Given, Option } from '../args';
import { OUT } from '../commands/command';
import { FileTrouble, WrongUse } from '../exits';
import type { Io } from '../io';
import { near } from '../near';
import type { Opened, Session } from '../session';
import { deliver } from './deliver';

/** The endings of files by what is in them. */
const FORMS = { pdf: 'pdf', html: 'html', md: 'md', csv: 'csv', xlsx: 'xlsx' } as const;
export type Form = keyof typeof FORMS;

const ENDINGS: Readonly<Record<string, Form>> = { ...FORMS, htm: 'html', markdown: 'md' };

/** Forms of papers that are read from top to bottom. */
export const READ: readonly Form[] = ['html', 'pdf', 'md'];
/** Forms of papers that are lists as well: their tables alone. */
export const LISTS: readonly Form[] = [...READ, 'csv', 'xlsx'];

/** Of commands whose papers are lists. */
export const BOM: Option = {
  name: '--bom',
  about: later`csv: begin with the mark by which spreadsheets know UTF-8`,
};

/** The option of a command whose paper has these forms; the first is the one without it. */
export function asOption(forms: readonly Form[]): Option {
  return {
    name: '--as',
    value: 'FORM',
    // Options are made before anyone has said which language is spoken.
    get about() {
      const names = phrase`${forms.slice(0, -1).join(', ')} or ${forms.at(-1)}`;
      return phrase`${names}; else as the file ends, or ${forms[0]}`;
    },
  };
}

/** @throws WrongUse */
export function formAsked(given: Given, forms: readonly Form[]): Form {
  const asked = given.value('--as');
  const out = given.value(OUT.name) ?? '';
  const ending = Object.hasOwn(ENDINGS, endOf(out)) ? ENDINGS[endOf(out)] : undefined;
  if (asked === undefined) return ending && forms.includes(ending) ? ending : unsaid(out, forms);
  const found = forms.find((form) => form === asked);
  if (found) return found;
  const [meant] = near(asked, forms);
  const hint = meant ? phrase`Did you mean ${meant}?` : phrase`There are ${forms.join(', ')}.`;
  throw new WrongUse(phrase`There is no form ${asked}. ${hint}`);
}

/** Nobody says which. @throws WrongUse for a file that says it is something else */
function unsaid(out: string, forms: readonly Form[]): Form {
  // What a file in the notation is refused for is said where it would be written.
  if (!endOf(out) || endOf(out) === 'perp') return forms[0]!;
  throw new WrongUse(
    phrase`A paper is no .${endOf(out)}: give it ${forms.map((f) => `.${f}`).join(', ')}, or --as.`,
  );
}

function endOf(out: string): string {
  return path.extname(out).slice(1).toLowerCase();
}

/**
 * Writes a paper to where it was asked for, or prints it.
 * @throws WrongUse for a file of bytes at a terminal, or a list of a paper that holds none. FileTrouble
 */
export function deliverPaper(paper: Paper, form: Form, given: Given, io: Io): void {
  const out = given.value(OUT.name);
  if (isHeavy(form) && io.terminal && (out === undefined || out === '-'))
    throw new WrongUse(
      phrase`A ${form.toUpperCase()} is no text for a terminal: give ${OUT.name} FILE.${form}.`,
    );
  const bom = given.has(BOM.name);
  const made = written(paper, form, { bom, file: '', heavy: loaded });
  if (typeof made === 'string') throw new WrongUse(made);
  for (const aside of made.asides) io.err(`perpend: ${aside}\n`);
  deliver(made.content, out, io);
}

/** Read only here: they weigh more than all the rest of the program. @throws FileTrouble */
function loaded(form: Written): Heavy {
  const writers: Heavy['writers'] = require('../../documents/paper/heavy');
  // Only a PDF is set in type.
  return { writers, fonts: form === 'pdf' ? fonts() : NONE };
}

const NONE: Heavy['fonts'] = {
  regular: new Uint8Array(),
  bold: new Uint8Array(),
  signs: new Uint8Array(),
};

/** Beside the program. @throws FileTrouble */
function fonts(): Heavy['fonts'] {
  const folder = path.join(__dirname, 'fonts');
  const read = (name: string) => new Uint8Array(readFileSync(path.join(folder, name)));
  if (!existsSync(folder))
    throw new FileTrouble(phrase`The fonts of a PDF are not there: ${folder}.`);
  return {
    regular: read('NotoSans-Regular.ttf'),
    bold: read('NotoSans-Bold.ttf'),
    signs: read('NotoSansMath-Signs.ttf'),
  };
}

/** The firm's logo. What is wrong with it is said, and then the paper goes without. */
export function logoOf(
  { job }: Opened,
  session: Session,
  io: Io,
): Omit<Picture, 'words'> | undefined {
  const named = logoNamed(job);
  if (!named) return undefined;
  const found = pictureIn(session.used(named.from, named.file));
  if (typeof found !== 'string') return found;
  io.err(phrase`perpend: The logo ${named.file} is left out: ${found}.\n`);
  return undefined;
}

function pictureIn(file: string | undefined): Omit<Picture, 'words'> | string {
  if (file === undefined) return phrase`it lies outside the workspace`;
  const found = statSync(file, { throwIfNoEntry: false });
  if (!found?.isFile()) return phrase`there is no such file`;
  if (found.size > MOST_PICTURE_BYTES) return phrase`it is larger than 1 MiB`;
  const bytes = new Uint8Array(readFileSync(file));
  const size = pictureSize(bytes);
  return typeof size === 'string' ? size : { bytes, type: size.type };
}
