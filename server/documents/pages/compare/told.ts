/** What of a comparison is told: not what follows from something that is told already. */
import type {
  Comparison,
  FactChange,
  FigureChange,
  LineChange,
  WorkChange,
} from '../../../engine/compare';

/** What follows from others, figure by figure, is for those who ask for all of them. */
const IN_DETAIL =
  /^(need|cost|left|lays|batch|batches|last|over|stage)\.|^mix\.[^.]+\.|^job\.time$/;

/** Amounts of the job as a whole; its money is told step by step. */
export function quantitiesTold({ figures }: Comparison): FigureChange[] {
  return figures.filter(({ id, money }) => !IN_DETAIL.test(id) && !(money && /^job\./.test(id)));
}

/** Amounts of a piece of work. */
export function figuresTold({ figures }: WorkChange): FigureChange[] {
  return figures.filter(({ money, id }) => !money && !id.includes('.match.'));
}

/** The material of which this is how much is bought; nothing of other figures. */
export function boughtIn({ id }: FigureChange): string | undefined {
  return /^buy\.(.*)$/.exec(id)?.[1];
}

/** Lines of a piece of work; of a new one all that it says. */
export function linesTold(change: WorkChange): LineChange[] {
  const body = change.change === 'new' ? (change.after?.said.body ?? []) : [];
  return [
    ...change.lines.filter((line) => !namesOnly(line, change)),
    ...body.map((line): LineChange => ({ change: 'new', under: [], after: line })),
  ];
}

/** That a piece of work has another name is told with it. */
function namesOnly(line: LineChange, { change, before, after }: WorkChange): boolean {
  if (change !== 'renamed' || line.after !== after!.said) return false;
  const own = (piece: typeof before) => (piece!.title === piece!.name ? '' : piece!.title);
  return own(before) === own(after) && before!.kind === after!.kind;
}

/** Lines of a block that is new or gone; of one that is in both those that are others. */
export function factLinesTold(fact: FactChange): readonly LineChange[] {
  if (!isWhole(fact)) return fact.lines;
  const line = (fact.after ?? fact.before)!;
  return line.body.map((each) =>
    fact.change === 'new'
      ? { change: 'new', under: [], after: each }
      : { change: 'gone', under: [], before: each },
  );
}

/** It is new or gone as a whole. */
function isWhole({ change, lines }: FactChange): boolean {
  return change !== 'changed' && !lines.length;
}

/** The one line of a block that is new or gone as a whole, else its heading; and the file, where it is another’s. */
export function factHead(fact: FactChange): string {
  const line = (fact.after ?? fact.before)!;
  const file = line
    .place()
    .file.split(/[\\/:]/)
    .at(-1);
  return `${isWhole(fact) ? line.text : fact.head}${fact.used ? ` (${file})` : ''}`;
}

/** `wall north “Garden wall”`: what it is and how it is called. */
export function workHead({ before, after }: WorkChange): string {
  const { kind, name, title } = (after ?? before)!;
  return [kind, name, title !== name && `“${title}”`].filter(Boolean).join(' ');
}
