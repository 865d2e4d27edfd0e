/** perpend draw: the faces of a wall, its courses on plan, its coping, its gauge rod; or those of a pier alone. */
import { later, phrase, spoken } from '../../../shared/phrase';
import { type DrawnView, drawnViews } from '../../documents/drawings';
import { sheetsToDxf } from '../../documents/dxf';
import { sheetsToSvg } from '../../documents/svg';
import { hasDrawing } from '../../documents/work-drawing';
import { canDraw, VIEWS, type View } from '../../documents/work-sheets';
import type { Work } from '../../engine/brickwork/work';
import type { Sheet } from '../../engine/drawing';
import type { Given, Option } from '../args';
import { FAILED, WrongUse } from '../exits';
import { deliver, isFolder } from '../files/deliver';
import type { Io } from '../io';
import { near } from '../near';
import type { Opened } from '../session';
import { type Command, codeOf, fileAnd, OUT, sessionOf, WORKSPACE } from './command';

const ALL = 'all';
const FORMATS = ['svg', 'dxf'] as const;
type Format = (typeof FORMATS)[number];

const VIEW: Option = {
  name: '--view',
  value: 'VIEW',
  about: later`front, back, plan, top, rod or all; without it, front`,
};
const FORMAT: Option = {
  name: '--format',
  value: 'FORMAT',
  about: later`svg or dxf; without it, as the file ends, else svg`,
};
const COURSE: Option = {
  name: '--course',
  value: 'NUMBER',
  about: later`plan: the lower of the two courses, counted from 1`,
};
const WHERE: Option = { ...OUT, about: later`write to this file, or each sheet into this folder` };

export const draw: Command = {
  name: 'draw',
  takes: 'FILE [BLOCK]',
  about: later`draw a wall or a pier, every brick, as SVG or DXF`,
  more: [
    later`BLOCK is the name of a wall, a pier or a repair; where there is only one, leave
it out. front and back are the faces; plan is two courses, one on the other, at
every end, quoin, reveal and pier; top is the coping from above; rod the gauge
rod. SVG sheets are to scale on paper; DXF is at full size in millimetres.`,
  ],
  options: [VIEW, FORMAT, COURSE, WHERE, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, block] = fileAnd(given, 'draw', 1);
    const views = viewsAsked(given);
    const format = formatAsked(given);
    const course = courseAsked(given);
    const opened = sessionOf(given, io).open(file);
    const work = chosen(opened, block);
    const drawn = typeof work === 'string' ? work : drawnOf(work, opened, views, course);
    if (typeof drawn === 'string') {
      io.err(`perpend: ${drawn}\n`);
      return FAILED;
    }
    handOver(drawn, format, given.value(OUT.name), io);
    return codeOf({ opened: [opened], unread: [] });
  },
};

function viewsAsked(given: Given): readonly View[] {
  const asked = given.value(VIEW.name) ?? VIEWS[0];
  if (asked === ALL) return VIEWS;
  return [oneOf(asked, VIEWS, 'view', [ALL])];
}

function formatAsked(given: Given): Format {
  const ends = /\.dxf$/i.test(given.value(OUT.name) ?? '') ? 'dxf' : 'svg';
  return oneOf(given.value(FORMAT.name) ?? ends, FORMATS, 'format');
}

function oneOf<T extends string>(
  asked: string,
  known: readonly T[],
  what: string,
  more: readonly string[] = [],
): T {
  const found = known.find((name) => name === asked);
  if (found) return found;
  const names = [...known, ...more];
  const [meant] = near(asked, names);
  const hint = meant ? phrase`Did you mean ${meant}?` : phrase`There are ${names.join(', ')}.`;
  throw new WrongUse(phrase`There is no ${what} ${asked}. ${hint}`);
}

function courseAsked(given: Given): number | undefined {
  const asked = given.value(COURSE.name);
  if (asked === undefined) return undefined;
  if (!/^[1-9]\d{0,5}$/.test(asked))
    throw new WrongUse(phrase`${COURSE.name} ${asked} is no course: they are counted from 1.`);
  return Number(asked);
}

/** What was asked for; else a sentence that says what there is not. */
function drawnOf(
  work: Work,
  { job }: Opened,
  views: readonly View[],
  course: number | undefined,
): DrawnView[] | string {
  const some = drawnViews(work, job, views, course);
  return some.length
    ? some
    : phrase`${work.name || phrase`The ${work.kind}`} has ${spoken(LACKS[views[0]!])}.`;
}

const LACKS: Readonly<Record<View, string>> = {
  front: later`no face to draw`,
  back: later`no back to draw: a wall has one`,
  plan: later`no plan to draw: where its bricks lie is not known`,
  top: later`no coping and no cap to draw from above`,
  rod: later`no courses to mark on a rod`,
};

/** One file, its sheets one under another; or a folder, a file for each sheet. */
function handOver(
  drawn: readonly DrawnView[],
  format: Format,
  out: string | undefined,
  io: Io,
): void {
  const made = (sheets: readonly Sheet[]) =>
    format === 'dxf' ? sheetsToDxf(sheets) : sheetsToSvg(sheets);
  if (out === undefined || !isFolder(out, io)) {
    const all = drawn.flatMap(({ sheets }) => sheets);
    deliver(made(all), out, io);
    if (format === 'svg') io.err(oneUnderAnother(all.length, out));
    return;
  }
  for (const { name, sheets } of drawn)
    for (const [i, sheet] of sheets.entries()) {
      const number = sheets.length > 1 ? `-${i + 1}` : '';
      deliver(made([sheet]), `${out.replace(/\/+$/, '')}/${name}${number}.${format}`, io);
    }
}

/** What of a picture of several sheets is not as one expects of a page; nothing where it is printed. */
function oneUnderAnother(sheets: number, out = '-'): string {
  if (sheets < 2 || out === '-') return '';
  return phrase`perpend: ${out} holds ${sheets} sheets, one under another, and is no page to print. For a page each, name a folder: ${OUT.name} FOLDER/\n`;
}

/** What to draw; else a sentence that says why not, and what there is. */
function chosen(opened: Opened, block: string | undefined): Work | string {
  const drawable = opened.job.works.filter(canDraw);
  // A repair is drawn where it is named, or where there is nothing else.
  const plain = drawable.filter(hasDrawing);
  const [only, ...more] = plain.length ? plain : drawable;
  const found =
    block === undefined && !more.length ? only : drawable.find((work) => work.name === block);
  return found ?? whyNot(opened, block, drawable);
}

function whyNot({ job, shown }: Opened, block: string | undefined, drawable: Work[]): string {
  const named = job.works.find((work) => work.name === block);
  if (block && named) return `${undrawn(named, shown)}${others(drawable)}`;
  if (!drawable.length) return nothing(job.works, shown);
  const names = drawable.map((work) => work.name);
  if (block === undefined) return phrase`Say which part of ${shown} to draw.${others(drawable)}`;
  const [meant] = near(block, names);
  const hint = meant ? phrase` Did you mean ${meant}?` : others(drawable);
  return phrase`${shown} has nothing called ${block} to draw.${hint}`;
}

/** Why one piece of work has no drawing. */
function undrawn(work: Work, shown: string): string {
  const name = work.name || phrase`this ${work.kind}`;
  if (work.kind === 'repair') return phrase`${name} builds nothing again, and so has no drawing.`;
  return phrase`${name} cannot be laid yet, and so not drawn: perpend check ${shown}.`;
}

function nothing(works: readonly Work[], shown: string): string {
  const unlaid = works.find((work) => work.kind !== 'repair');
  if (unlaid) return undrawn(unlaid, shown);
  const why = works.length
    ? phrase`a repair that builds nothing again has no drawing`
    : phrase`it holds no wall and no pier`;
  return phrase`There is nothing to draw in ${shown}: ${why}.`;
}

function others(drawable: readonly Work[]): string {
  const names = drawable.map((work) => work.name || phrase`the ${work.kind} without a name`);
  return names.length ? phrase` There is ${names.join(', ')}.` : '';
}
