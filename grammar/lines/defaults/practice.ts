/** Defaults that are the practice of the trade: how work goes on, how finely it is measured, how a price is told. */
import { choice, type LineKind, limits, line, list, number, quantity } from '../slots';
import { TASKS } from '../tasks';

const tasks = (key: string, means: string, example: string): LineKind =>
  line(key, [list('tasks', ',', choice('task', ...TASKS))], means, example);

export const LIFT: LineKind = line(
  'lift',
  [quantity('height', 'length')],
  'The most that is built up in a day.',
  'lift 1500 mm',
);

export const PRACTICE_DEFAULTS: readonly LineKind[] = [
  line(
    'movement-seal',
    [number('times')],
    'How deep the seal at each face of a movement joint is, in widths of the joint: so much less is filled.',
    'movement-seal 1',
  ),
  line(
    'movement-least',
    [quantity('bricks', 'bricks')],
    'The shortest length of wall that movement joints part off, in bricks of its face.',
    'movement-least 4 bricks',
  ),
  line(
    'measured-within',
    [quantity('length', 'length')],
    'How closely standing work is measured: a length that is over by no more is not told of.',
    'measured-within 10 mm',
  ),
  line(
    'price-between',
    [{ ...limits('shares', 'percent'), most: 1 }],
    'Which shares of all jobs alike come out below the low price and below the high one.',
    'price-between 10..90%',
  ),
  tasks(
    'task-order',
    'In which order the tasks of a piece of work are done; those not named come after what raises the work and what is let into it.',
    'task-order take-down, clean, footing, facework, coping, repoint',
  ),
  tasks(
    'raising',
    'Tasks that raise the work: of those no more than a lift is done in a day.',
    'raising facework, blockwork, pier-work',
  ),
  tasks(
    'let-in',
    'Tasks let into the work as it goes up, after its first lift.',
    'let-in lintel, arch, head',
  ),
  tasks(
    'overnight',
    'Tasks that have to set: nothing stands on them before the next day.',
    'overnight footing',
  ),
];
