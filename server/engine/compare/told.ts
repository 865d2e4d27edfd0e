/** Findings and cautions that are new, and those that are gone. */
import type { Finding } from '../../../shared/finding';
import type { CautionView } from '../../../shared/views';
import { cautionViews } from '../views/caution-view';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { pairedBy, pairedOn } from './pair';
import type { WorkPair } from './work';

export interface NewAndGone<T> {
  readonly new: readonly T[];
  readonly gone: readonly T[];
}

/** A caution, and the pieces of work that it has come to, or gone from. */
export interface CautionChange {
  readonly caution: CautionView;
  /** As the later job names them; of those that are gone as the earlier did. */
  readonly works: readonly string[];
}

/** What a piece of work of the earlier job is called in the later, where that is plain: no name of both is another’s. */
function renames(pairs: readonly WorkPair[]): (name: string) => string {
  const old = new Set(pairs.map(({ before }) => before?.name));
  const now = new Set(pairs.map(({ after }) => after?.name));
  const names = new Map(
    pairs.flatMap(({ before, after }) =>
      before && after && !now.has(before.name) && !old.has(after.name)
        ? [[before.name, after.name] as const]
        : [],
    ),
  );
  return (name) => names.get(name) ?? name;
}

interface Placed {
  readonly finding: Finding;
  /** The block it is in, its line’s first word. */
  readonly at: string;
}

/**
 * The same finding is one that says the same of the same block; one whose words hold another figure than before is
 * still the same at its line.
 */
export function findingChanges(
  before: Job,
  after: Job,
  pairs: readonly WorkPair[],
): NewAndGone<Finding> {
  const now = renames(pairs);
  const [old, fresh] = [placed(before, now), placed(after, (name) => name)];
  const said = pairedBy(
    old,
    fresh,
    ({ finding, at }) => `${finding.code} ${at} ${finding.message}`,
  );
  const alike = pairedOn(said, (a, b) =>
    pairedBy(a, b, ({ finding, at }) => `${finding.code} ${at}`),
  );
  return {
    new: alike.added.map(({ finding }) => finding),
    gone: alike.gone.map(({ finding }) => finding),
  };
}

function placed(job: Job, nameOf: (name: string) => string): Placed[] {
  const files = new Map(job.scope.files.map((file) => [file.name, file]));
  return job.findings.map((finding) => {
    const { file, line } = finding.place;
    const source = files.get(file);
    const block = source?.blocks[source.blockAt(line)];
    const own = file === job.file.name ? 'own' : file;
    return { finding, at: block ? `${own} ${inBlock(block, line, nameOf)}` : own };
  });
}

function inBlock(block: SourceBlock, line: number, nameOf: (name: string) => string): string {
  const text = block.lines[line - block.firstLine] ?? '';
  const [, word = ''] = /^\s*(\S*)/.exec(text) ?? [];
  return [block.kind, block.name && nameOf(block.name), word].join(' ');
}

export function cautionChanges(
  before: Job,
  after: Job,
  pairs: readonly WorkPair[],
): NewAndGone<CautionChange> {
  const now = renames(pairs);
  const [old, fresh] = [cautionViews(before), cautionViews(after)];
  const at = (views: readonly CautionView[], nameOf: (name: string) => string) =>
    new Set(views.flatMap(({ code, here }) => here.map(({ name }) => `${code} ${nameOf(name)}`)));
  const [were, are] = [at(old, now), at(fresh, (name) => name)];
  return {
    new: changesOf(fresh, (code, name) => !were.has(`${code} ${name}`)),
    gone: changesOf(old, (code, name) => !are.has(`${code} ${now(name)}`)),
  };
}

function changesOf(
  views: readonly CautionView[],
  isOther: (code: string, name: string) => boolean,
): CautionChange[] {
  return views.flatMap((caution) => {
    const names = caution.here
      .map(({ name }) => name)
      .filter((name) => isOther(caution.code, name));
    const works = [...new Set(names)];
    return works.length ? [{ caution, works }] : [];
  });
}
