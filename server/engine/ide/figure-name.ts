/** The name in a figure’s id that a record keeps: the wall of `was north.bricks 480 bricks`. */
import { type NamedKind, name } from '../../../grammar/lines/slots';
import type { ReadLine } from '../../../grammar/read/values';
import type { Said } from './said';

/** What is named after the first word of an id; all other ids begin with the name of a piece of work. */
const KINDS: Readonly<Record<string, readonly NamedKind[]>> = {
  cost: ['brick', 'material', 'cost'],
  option: ['option'],
  partner: ['partner'],
};
const WORK: readonly NamedKind[] = ['wall', 'pier', 'repair'];

/** As a value that is a name, with the place of the name alone. Nothing for a figure of the whole job. */
export function figureName({ kind, values }: ReadLine): Said | undefined {
  const { figure } = values;
  if (kind.key !== 'was' || figure?.kind !== 'word' || figure.text.startsWith('job.'))
    return undefined;
  const { text, span } = figure;
  const first = text.slice(0, Math.max(0, text.indexOf('.')));
  const kinds = Object.hasOwn(KINDS, first) ? KINDS[first]! : undefined;
  const from = kinds ? first.length + 1 : 0;
  const to = first === 'cost' ? text.length : text.lastIndexOf('.');
  if (to <= from) return undefined;
  const place = { ...span, start: span.start + from, end: span.start + to };
  const value = { kind: 'word', span: place, text: text.slice(from, to) } as const;
  return { slot: name('figure', ...(kinds ?? WORK)), value, names: kinds ?? WORK };
}
