/** perpend draw: the face of a wall, every brick where it goes; or of a pier that stands alone. */
import { drawingToSvg } from '../../documents/svg';
import { drawingOf, hasDrawing } from '../../documents/work-drawing';
import type { Work } from '../../engine/brickwork/needs';
import { A4_LANDSCAPE, LETTER_LANDSCAPE } from '../../engine/drawing';
import type { Given } from '../args';
import { FAILED } from '../exits';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { near } from '../near';
import type { Opened } from '../session';
import { type Command, codeOf, fileAnd, OUT, sessionOf, WORKSPACE } from './command';

export const draw: Command = {
  name: 'draw',
  takes: 'FILE [BLOCK]',
  about: 'draw a wall or a pier as SVG: every brick, joints, openings',
  more: ['BLOCK is the name of a wall or a pier. Where there is only one, leave it out.'],
  options: [OUT, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, block] = fileAnd(given, 'draw', 1);
    const opened = sessionOf(given, io).open(file);
    const work = chosen(opened, block);
    if (typeof work === 'string') {
      io.err(`perpend: ${work}\n`);
      return FAILED;
    }
    const { env } = opened.job;
    const paper = env.imperial ? LETTER_LANDSCAPE : A4_LANDSCAPE;
    deliver(drawingToSvg(drawingOf(work, env)!, paper), given.value(OUT.name), io);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** What to draw; else a sentence that says why not, and what there is. */
function chosen(opened: Opened, block: string | undefined): Work | string {
  const drawable = opened.job.works.filter(hasDrawing);
  const found =
    block === undefined && drawable.length === 1
      ? drawable[0]
      : drawable.find((work) => work.name === block);
  return found ?? whyNot(opened, block, drawable);
}

function whyNot({ job, shown }: Opened, block: string | undefined, drawable: Work[]): string {
  const named = job.works.find((work) => work.name === block);
  if (block && named) return `${undrawn(named, shown)}${others(drawable)}`;
  if (!drawable.length) return nothing(job.works, shown);
  const names = drawable.map((work) => work.name);
  if (block === undefined) return `Say which part of ${shown} to draw.${others(drawable)}`;
  const [meant] = near(block, names);
  const hint = meant ? ` Did you mean ${meant}?` : others(drawable);
  return `${shown} has nothing called ${block} to draw.${hint}`;
}

/** Why one piece of work has no drawing. */
function undrawn(work: Work, shown: string): string {
  const name = work.name || `this ${work.kind}`;
  if (work.kind === 'repair') return `${name} is a repair, which has no drawing.`;
  return `${name} cannot be laid yet, and so not drawn: perpend check ${shown}.`;
}

function nothing(works: readonly Work[], shown: string): string {
  const unlaid = works.find((work) => work.kind !== 'repair');
  if (unlaid) return undrawn(unlaid, shown);
  const why = works.length ? 'a repair has no drawing' : 'it holds no wall and no pier';
  return `There is nothing to draw in ${shown}: ${why}.`;
}

function others(drawable: readonly Work[]): string {
  const names = drawable.map((work) => work.name || `the ${work.kind} without a name`);
  return names.length ? ` There is ${names.join(', ')}.` : '';
}
