/** Two revisions of a job beside each other, for the one who does it. */
import type { FaceChange } from '../../documents/compared';
import type {
  Comparison,
  FactChange,
  FigureChange,
  LineChange,
  WorkChange,
} from '../../engine/compare';
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
    [paint(io, 'bold', head), ...(found.nothing ? ['Nothing that counts has changed.'] : [])],
    titled('Work', workLines(found), io),
    titled('Facts', found.facts.flatMap(factLines), io),
    titled('Quantities', quantities(found), io),
    titled('Price', prices(found), io),
    titled('What moved it, the biggest first', moved(found), io),
    titled('Cautions', cautions(found), io),
    titled('Findings', findings(found, session), io),
    titled('Drawing', faces.flatMap(faceLine), io),
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
    ? hanging('·', 'The pieces of work stand in another order.', 2)
    : [];
  return [...found.work.flatMap((change) => pieceLines(change, found)), ...order];
}

function pieceLines(change: WorkChange, { before, after }: Comparison): string[] {
  const rows = change.figures
    .filter(({ money, id }) => !money && !id.includes('.match.'))
    .map((figure) => figureRow(figure, figure.label, before.env, after.env));
  const body = change.after?.said.body ?? [];
  const all = change.change === 'new' ? body.map((line) => ({ change: 'new' as const, line })) : [];
  return [
    ...hanging(
      signOf(change.change === 'renamed' ? 'changed' : change.change),
      pieceHead(change),
      2,
    ),
    ...change.lines
      .filter((line) => !namesOnly(line, change))
      .flatMap((line) => changeLines(line, 4)),
    ...all.flatMap(({ line }) => changeLines({ change: 'new', under: [], after: line }, 4)),
    ...table(rows, ['left', 'right', 'right', 'right'], 6),
  ];
}

/** That a piece of work has another name is told with it. */
function namesOnly(line: LineChange, { change, before, after }: WorkChange): boolean {
  if (change !== 'renamed' || line.after !== after!.said) return false;
  const own = (piece: typeof before) => (piece!.title === piece!.name ? '' : piece!.title);
  return own(before) === own(after) && before!.kind === after!.kind;
}

function pieceHead({ change, before, after }: WorkChange): string {
  const { kind, name, title } = (after ?? before)!;
  const said = [kind, name, title !== name && `“${title}”`].filter(Boolean).join(' ');
  if (change === 'renamed') return `${said}, before: ${before!.name}`;
  return change === 'changed' ? said : `${said}: ${change}`;
}

function factLines(fact: FactChange): string[] {
  const line = (fact.after ?? fact.before)!;
  const file = fact.used
    ? ` (${line
        .place()
        .file.split(/[\\/:]/)
        .at(-1)})`
    : '';
  if (fact.change === 'moved') return hanging('·', 'use: its lines stand in another order', 2);
  const whole = fact.change !== 'changed' && !fact.lines.length;
  const said = whole ? line.text : fact.head;
  const change = fact.change === 'changed' ? '' : `: ${fact.change}`;
  const inner = whole ? line.body.map((l) => wholeLine(fact, l)) : fact.lines;
  return [
    ...hanging(signOf(fact.change), `${said}${file}${change}`, 2),
    ...inner.flatMap((each) => changeLines(each, 4)),
  ];
}

function wholeLine({ change }: FactChange, line: NonNullable<FactChange['after']>) {
  return change === 'new'
    ? { change: 'new' as const, under: [], after: line }
    : { change: 'gone' as const, under: [], before: line };
}

/** What follows from others, figure by figure, is for those who ask for all of them. */
const IN_DETAIL =
  /^(need|cost|left|lays|batch|batches|last|over|stage)\.|^mix\.[^.]+\.|^job\.time$/;

function quantities({ figures, before, after }: Comparison): string[] {
  const some = figures.filter(
    ({ id, money }) => !IN_DETAIL.test(id) && !(money && /^job\./.test(id)),
  );
  const rows = some.map((figure) => figureRow(figure, labelOf(figure), before.env, after.env));
  return table(rows, ['left', 'right', 'right', 'right']);
}

function labelOf({ id, label }: FigureChange): string {
  const [, material] = /^buy\.(.*)$/.exec(id) ?? [];
  return material ? `to buy: ${material}` : label;
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
  const side = face === 'front' ? '' : ', back';
  const parts = [
    `${placed.new} new where they lie`,
    `${placed.gone} gone`,
    `${placed.same} as before`,
  ];
  return hanging('·', `${title}${side}: pieces ${parts.join(', ')}`, 2);
}

function idle({ idle: count }: Comparison): string[] {
  if (!count) return [];
  const facts = count === 1 ? '1 other fact' : `${count} other facts`;
  return [`Of the files it uses ${facts} changed that this job does not ask for.`];
}
