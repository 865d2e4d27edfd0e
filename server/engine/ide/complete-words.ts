/** Words that a slot takes without naming a thing of the job: libraries, currencies, units of time, runs of a wall. */
import { BROUGHT_UP_BY } from '../../../grammar/lines/caution';
import { type Dimension, unitsOf } from '../../../shared/units';
import { taskWords } from '../life/task-words';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { stretches } from './line-text';
import type { Completion } from './types';

/** By what the table calls the word; nothing where any word would do. */
export function wordsFor(what: string, block: SourceBlock | undefined, job: Job): Completion[] {
  switch (what) {
    case 'library':
      return job.libraries.map(word);
    case 'currency':
      return job.book.all('currencies', 'code').map(({ line }) => word(line.syntax.key!.text));
    case 'run':
      return runs(block, job).map(word);
    case 'run of an opening':
      return OPENING_RUNS.map(word);
    case 'work or material':
      return [...Object.keys(BROUGHT_UP_BY), ...job.book.names('material')].map(word);
    case 'task':
      return taskWords().map(word);
    case 'unit of area':
      return units('area');
    case 'unit of distance':
      return units('length').filter((u) => FAR.has(u.label));
    default:
      return (TIMES[what] ?? []).map(word);
  }
}

/** As the findings of an opening name them. */
const OPENING_RUNS = ['head', 'head-height', 'lintel-height', 'subsill', 'arch'];

const TIMES: Readonly<Record<string, readonly string[]>> = {
  'h or day': ['h', 'day'],
  'day or job': ['day', 'job'],
  day: ['day'],
};
const FAR: ReadonlySet<string> = new Set(['km', 'mile', 'm', 'yd']);

function word(text: string): Completion {
  return { label: text, kind: 'word', insert: text };
}

function units(dimension: Dimension): Completion[] {
  return unitsOf(dimension).map(({ name, also }) => ({
    label: name,
    kind: 'unit',
    detail: also[0],
    insert: name,
  }));
}

/** Runs of the wall that a `fit` line may speak of, as the findings name them. */
function runs(block: SourceBlock | undefined, job: Job): string[] {
  const out = job.workAt(block)?.facts.settingOut;
  const walls = out ? stretches(out).map((_, i) => `run-${i + 1}`) : [];
  return ['coping', 'height', ...walls];
}
