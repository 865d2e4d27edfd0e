/** All that the engine says of a job to somebody in an editor, with where each comes from. */
import { actionsFor, refactoringsFor } from '../../server/engine/ide/actions';
import { completion } from '../../server/engine/ide/completion';
import { ALL_HINTS, hintsOf } from '../../server/engine/ide/hints';
import { hover } from '../../server/engine/ide/hover';
import { lensesOf, lensText } from '../../server/engine/ide/lenses';
import { partsOf, partTold } from '../../server/engine/ide/parts';
import { type Signature, signaturesAt } from '../../server/engine/ide/signature';
import { symbolsOf } from '../../server/engine/ide/symbols';
import { totalsOf } from '../../server/engine/ide/totals';
import { figureItems, workingFor } from '../../server/engine/ide/working';
import type { Job } from '../../server/engine/workspace/job';

export interface Said {
  readonly where: string;
  readonly text: string;
}

/** Texts anywhere in an answer, but for those that are no words: ids, kinds, edits, places. */
const SILENT = new Set(
  'kind code edits insert id file figure severity key filter sort command data label_ icon context unit name from href data place origin range span'.split(
    ' ',
  ),
);

function* textsIn(value: unknown): Generator<string> {
  if (typeof value === 'string') yield value;
  else if (Array.isArray(value)) for (const each of value) yield* textsIn(each);
  else if (value && typeof value === 'object')
    for (const [key, each] of Object.entries(value)) if (!SILENT.has(key)) yield* textsIn(each);
}

const all = (where: string, value: unknown): Said[] =>
  [...textsIn(value)].map((text) => ({ where, text }));

/** Of the job as a whole. @param every so many figures are one whose working is read */
export function saidOf(job: Job, every = 1): Said[] {
  const ids = figureItems(job).flatMap(({ id }, i) => (i % every ? [] : [id]));
  const kinds = new Set(['figures', 'drawing', 'working'] as const);
  return [
    ...findingsOf(job),
    ...all(
      'hint',
      // What a name stands for is told in the notation, as its own lines say it.
      hintsOf(job, { first: 0, last: job.file.lines.length }, ALL_HINTS)
        .filter((hint) => hint.kind !== 'name')
        .map((hint) => hint.text),
    ),
    ...all(
      'lens',
      lensesOf(job.file, kinds).map((lens) => lensText(job, lens)),
    ),
    ...all(
      'outline',
      symbolsOf(job.file).map(({ detail }) => detail),
    ),
    ...all('totals', totalsOf(job)),
    ...all('parts', partsOf(job)),
    ...all('figures', figureItems(job)),
    ...ids.flatMap((id) => all(`working of ${id}`, workingFor(job, id))),
    ...ids.flatMap((id) => all(`part ${id}`, partTold(job, id))),
  ];
}

export function findingsOf(job: Job): Said[] {
  return job.findings.flatMap(({ code, message, ways, related }) => [
    ...all(code, message),
    ...all(
      `${code}, way`,
      ways.map((way) => way.title),
    ),
    ...all(
      `${code}, related`,
      related.map((each) => each.message),
    ),
  ]);
}

/** The label of a signature is notation. */
const told = ({ text, parts }: Signature) => [text, parts.map((part) => part.text)];

/** At places of a line: its word, and the end of each of its words. */
export function saidAt(job: Job, line: number): Said[] {
  const text = job.file.lines[line]!;
  const columns = new Set([
    text.search(/\S|$/),
    ...[...text.matchAll(/\S+/g)].map((m) => m.index + 1),
    text.length,
  ]);
  return [...columns].flatMap((column) => {
    const at = { line, column };
    const range = { startLine: line, endLine: line, startColumn: column, endColumn: column };
    const where = `line ${line + 1}:${column}`;
    const offered = completion(job, at)?.items ?? [];
    return [
      ...all(`hover, ${where}`, hover(job, at)?.markdown),
      ...all(
        `completion, ${where}`,
        offered.map(({ detail }) => detail),
      ),
      ...all(
        `explained, ${where}`,
        offered.slice(0, 12).map((item) => item.explains?.()),
      ),
      ...all(`signature, ${where}`, signaturesAt(job, at)?.signatures.map(told)),
      ...all(
        `action, ${where}`,
        [...actionsFor(job, range), ...refactoringsFor(job, range, true)].map((a) => a.title),
      ),
    ];
  });
}
