/** Papers in the form that was asked for: every command that makes one shares this. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { logoNamed } from '../../documents/letterhead';
import {
  csvOf,
  htmlOf,
  MOST_PICTURE_BYTES,
  markdownOf,
  type Paper,
  type Picture,
  pictureSize,
  tablesOf,
} from '../../documents/paper';
import type { Fonts } from '../../documents/paper/heavy';
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
  about: 'csv: begin with the mark by which spreadsheets know UTF-8',
};

/** The option of a command whose paper has these forms; the first is the one without it. */
export function asOption(forms: readonly Form[]): Option {
  const names = `${forms.slice(0, -1).join(', ')} or ${forms.at(-1)}`;
  return {
    name: '--as',
    value: 'FORM',
    about: `${names}; else as the file ends, or ${forms[0]}`,
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
  const hint = meant ? `Did you mean ${meant}?` : `There are ${forms.join(', ')}.`;
  throw new WrongUse(`There is no form ${asked}. ${hint}`);
}

/** Nobody says which. @throws WrongUse for a file that says it is something else */
function unsaid(out: string, forms: readonly Form[]): Form {
  // What a file in the notation is refused for is said where it would be written.
  if (!endOf(out) || endOf(out) === 'perp') return forms[0]!;
  throw new WrongUse(
    `A paper is no .${endOf(out)}: give it ${forms.map((f) => `.${f}`).join(', ')}, or --as.`,
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
  const binary = form === 'pdf' || form === 'xlsx';
  if (binary && io.terminal && (out === undefined || out === '-'))
    throw new WrongUse(
      `A ${form.toUpperCase()} is no text for a terminal: give ${OUT.name} FILE.${form}.`,
    );
  deliver(WRITERS[form](paper, io, given), out, io);
}

const WRITERS: Readonly<Record<Form, (paper: Paper, io: Io, given: Given) => string | Uint8Array>> =
  {
    html: htmlOf,
    md: markdownOf,
    pdf(paper, io) {
      const { bytes, missing, noLogo } = heavy().pdfOf(paper, fonts());
      if (missing.length) io.err(`perpend: ${notInFonts(missing)}\n`);
      if (noLogo) io.err('perpend: The logo cannot be read, and is left out.\n');
      return bytes;
    },
    csv(paper, _, given) {
      const tables = tablesIn(paper).map((table) => csvOf(table));
      // Several stand under each other, an empty line between them.
      return (given.has(BOM.name) ? '\ufeff' : '') + tables.join('\r\n');
    },
    xlsx(paper) {
      tablesIn(paper);
      return heavy().xlsxOf(paper);
    },
  };

function tablesIn({ parts, title }: Paper) {
  const tables = tablesOf(parts);
  if (!tables.length) throw new WrongUse(`There is no table in ${title}.`);
  return tables;
}

/** So many are named; a text in another alphabet would have hundreds. */
const NAMED = 12;

function notInFonts(missing: readonly string[]): string {
  const some = missing.slice(0, NAMED).join(' ');
  const more = missing.length > NAMED ? ' and others' : '';
  return `The fonts of a PDF have no ${some}${more}: a box stands for each. A page of HTML shows them.`;
}

/** Read only here: they weigh more than all the rest of the program. */
function heavy() {
  return require('../../documents/paper/heavy') as typeof import('../../documents/paper/heavy');
}

/** Beside the program. @throws FileTrouble */
function fonts(): Fonts {
  const folder = path.join(__dirname, 'fonts');
  const read = (name: string) => new Uint8Array(readFileSync(path.join(folder, name)));
  if (!existsSync(folder)) throw new FileTrouble(`The fonts of a PDF are not there: ${folder}.`);
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
  io.err(`perpend: The logo ${named.file} is left out: ${found}.\n`);
  return undefined;
}

function pictureIn(file: string | undefined): Omit<Picture, 'words'> | string {
  if (file === undefined) return 'it lies outside the workspace';
  const found = statSync(file, { throwIfNoEntry: false });
  if (!found?.isFile()) return 'there is no such file';
  if (found.size > MOST_PICTURE_BYTES) return 'it is larger than 1 MiB';
  const bytes = new Uint8Array(readFileSync(file));
  const size = pictureSize(bytes);
  return typeof size === 'string' ? size : { bytes, type: size.type };
}
