/** Two revisions of a job beside each other, for the one who does it. */
import { phrase } from '../../../shared/phrase';
import type { FaceChange } from '../../documents/compared';
import {
  boughtIn,
  factHead,
  factLinesTold,
  figuresTold,
  linesTold,
  quantitiesTold,
  workHead,
} from '../../documents/pages/compare/told';
import type { Comparison, FactChange, FigureChange, WorkChange } from '../../engine/compare';
import { type Io, paint } from '../io';
import type { Session } from '../session';
import { changeLines, figureRow, hanging, signOf } from './changes';
import { placeText } from './findings';
import { moved, prices } from './moved';
import { table } from './table';

export interface Sides {
  readonly before: string;
  readonly after: string;
}

/** Lines of the report, each with its end. */
export function compareReport(
  found: Comparison,
  faces: readonly FaceChange[],
  { before, after }: Sides,
  session: Session,
  io: Io,
): string {
  const head = before === after ? before : `${before} → ${after}`;
  const sections = [
    [paint(io, 'bold', head), ...(found.nothing ? [phrase`Nothing that counts has changed.`] : [])],
    titled(phrase`Work`, workLines(found), io),
    titled(phrase`Facts`, found.facts.flatMap(factLines), io),
    titled(phrase`Quantities`, quantities(found), io),
    titled(phrase`Price`, prices(found), io),
    titled(phrase`What moved it, the biggest first`, moved(found), io),
    titled(phrase`Cautions`, cautions(found), io),
    titled(phrase`Findings`, findings(found, session), io),
    titled(phrase`Drawing`, faces.flatMap(faceLine), io),
    idle(found),
  ];
  const text = sections.filter((lines) => lines.length).map((lines) => lines.join('\n'));
  return `${text.join('\n\n')}\n`;
}

function titled(title: string, lines: readonly string[], io: Io): string[] {
  return lines.length ? [paint(io, 'bold', title), ...lines] : [];
}

function workLines(found: Comparison): string[] {
  const order = found.reordered
    ? hanging('·', phrase`The pieces of work stand in another order.`, 2)
    : [];
  return [...found.work.flatMap((change) => pieceLines(change, found)), ...order];
}

function pieceLines(change: WorkChange, { before, after }: Comparison): string[] {
  const rows = figuresTold(change).map((figure) =>
    figureRow(figure, figure.label, before.env, after.env),
  );
  return [
    ...hanging(
      signOf(change.change === 'renamed' ? 'changed' : change.change),
      pieceHead(change),
      2,
    ),
    ...linesTold(change).flatMap((line) => changeLines(line, 4)),
    ...table(rows, ['left', 'right', 'right', 'right'], 6),
  ];
}

function pieceHead(work: WorkChange): string {
  const { change, before } = work;
  const said = workHead(work);
  if (change === 'renamed') return phrase`${said}, before: ${before!.name}`;
  return change === 'changed' ? said : `${said}: ${change}`;
}

function factLines(fact: FactChange): string[] {
  if (fact.change === 'moved')
    return hanging('·', phrase`use: its lines stand in another order`, 2);
  const change = fact.change === 'changed' ? '' : `: ${fact.change}`;
  return [
    ...hanging(signOf(fact.change), `${factHead(fact)}${change}`, 2),
    ...factLinesTold(fact).flatMap((each) => changeLines(each, 4)),
  ];
}

function quantities(found: Comparison): string[] {
  const { before, after } = found;
  const rows = quantitiesTold(found).map((figure) =>
    figureRow(figure, labelOf(figure), before.env, after.env),
  );
  return table(rows, ['left', 'right', 'right', 'right']);
}

function labelOf(figure: FigureChange): string {
  const material = boughtIn(figure);
  return material ? phrase`to buy: ${material}` : figure.label;
}

function cautions({ cautions: { new: fresh, gone } }: Comparison): string[] {
  const line = (sign: string) => (each: (typeof fresh)[number]) =>
    hanging(sign, `${each.caution.code} ${each.caution.title}: ${each.works.join(', ')}`, 2);
  return [...fresh.flatMap(line('+')), ...gone.flatMap(line('−'))];
}

/** Those that are gone have no place any more. */
function findings({ findings: { new: fresh, gone } }: Comparison, session: Session): string[] {
  return [
    ...fresh.flatMap((f) =>
      hanging('+', `${placeText(f.place, session)} ${f.severity} ${f.code}: ${f.message}`, 2),
    ),
    ...gone.flatMap((f) => hanging('−', `${f.severity} ${f.code}: ${f.message}`, 2)),
  ];
}

/** That all of a piece of work is new, or gone, is told with the work. */
function faceLine({ change, title, face, placed }: FaceChange): string[] {
  if (change !== 'changed') return [];
  const side = face === 'front' ? '' : phrase`, back`;
  const parts = [
    phrase`${placed.new} new where they lie`,
    phrase`${placed.gone} gone`,
    phrase`${placed.same} as before`,
  ];
  return hanging('·', phrase`${title}${side}: pieces ${parts.join(', ')}`, 2);
}

function idle({ idle: count }: Comparison): string[] {
  if (!count) return [];
  const facts = count === 1 ? phrase`1 other fact` : phrase`${count} other facts`;
  return [phrase`Of the files it uses ${facts} changed that this job does not ask for.`];
}
