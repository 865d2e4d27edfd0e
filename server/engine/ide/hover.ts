/** What is told of the word under the pointer. */
import { contains, cover, type Span } from '../../../shared/span';
import { kindIn } from '../life/step';
import { askable } from '../life/template';
import type { Job } from '../workspace/job';
import { OF_BLOCKS } from './complete-option';
import { coursesSaid } from './courses-said';
import { hoverHeading } from './hover-heading';
import { explainKey, hoverKey } from './hover-key';
import { hoverThing } from './hover-name';
import { givenAt, thingsMeant } from './names';
import { otherUnits } from './other-units';
import { priceSaid } from './price-said';
import { rangeSaid } from './range-said';
import { onComment, onKey, type Spot, spotAt, textOf, valueAt } from './spot';
import { type Hover, type Linker, PLAIN, type Position } from './types';

/** Nothing in comments, spaces and lines that cannot be read. */
export function hover(job: Job, at: Position, link: Linker = PLAIN): Hover | undefined {
  const spot = spotAt(job.file, at);
  if (!spot?.read || onComment(spot)) return undefined;
  if (onKey(spot)) return said(spot, spot.syntax!.key!.span, keyText(spot, job, link));
  const value = valueAt(spot);
  const anew = writtenAnew(spot, job);
  if (anew || !value) return anew;
  if (givenAt(spot)?.span === value.value.span)
    return said(spot, value.value.span, keyText(spot, job, link));
  const things = thingsMeant(job, value, spot);
  const text = things.length ? hoverThing(things, job, link) : otherUnits(value.value, job.env);
  const more = [
    ...priceSaid(spot, value.value, job),
    ...coursesSaid(spot, value.value, job),
    ...rangeSaid(spot, value.value, job),
  ];
  const all = [text ?? keyText(spot, job, link), ...more];
  return said(spot, value.value.span, all.join('\n\n'));
}

function keyText(spot: Spot, job: Job, link: Linker): string {
  return spot.read!.kind.body
    ? hoverHeading(spot, job, link)
    : hoverKey(spot.read!, spot.parents.at(-1), job, link);
}

function said(spot: Spot, span: Span, markdown: string): Hover {
  const whole = cover(span, span);
  return { span: { ...whole, line: spot.block.firstLine + spot.line }, markdown };
}

/** The word of a line that an option writes anew, or a template asks for. */
function writtenAnew(spot: Spot, job: Job): Hover | undefined {
  const { what, line } = spot.read!.values;
  const word = line?.kind === 'rest' ? line.items[0] : line;
  if (!word || !OF_BLOCKS.has(spot.parents[0]?.kind.key ?? '')) return undefined;
  if (!contains(word.span, spot.line, spot.column)) return undefined;
  const [target] = askable(job.file.blocks).get(textOf(what) ?? '') ?? [];
  const kind = target && kindIn(spot.read!, target);
  return kind && said(spot, word.span, explainKey(kind, job));
}
