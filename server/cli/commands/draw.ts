/** perpend draw: the face of a wall, every brick where it goes. */
import { drawingToSvg } from '../../documents/svg';
import { drawingOf } from '../../documents/work-drawing';
import type { Work } from '../../engine/work/needs';
import type { Given } from '../args';
import { WrongUse } from '../exits';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { near } from '../near';
import type { Opened } from '../session';
import { type Command, codeOf, fileAnd, OUT, sessionOf, WORKSPACE } from './command';

export const draw: Command = {
  name: 'draw',
  takes: 'FILE [BLOCK]',
  about: 'draw a wall as SVG: every brick, joints, openings, piers',
  more: ['BLOCK is the name of a wall, and may be left out where the file has only one.'],
  options: [OUT, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, block] = fileAnd(given, 'draw', 1);
    const opened = sessionOf(given, io).open(file);
    const work = chosen(opened, block);
    deliver(drawingToSvg(drawingOf(work)!), given.value(OUT.name), io);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** @throws WrongUse that says what there is to draw */
function chosen({ job, shown }: Opened, block: string | undefined): Work {
  const drawable = job.works.filter((work) => work.facts.settingOut);
  const names = drawable.map((work) => work.name);
  const all = names.length ? `There is ${names.join(', ')}.` : 'Nothing in it can be drawn yet.';
  if (block === undefined) {
    if (drawable.length === 1) return drawable[0]!;
    throw new WrongUse(`Say which part of ${shown} to draw. ${all}`);
  }
  const found = drawable.find((work) => work.name === block);
  if (found) return found;
  const [meant] = near(block, names);
  throw new WrongUse(
    `${shown} has nothing called ${block} to draw. ${meant ? `Did you mean ${meant}?` : all}`,
  );
}
