/** The work that has changed, in the words that the quotes have for it. */
import type { Comparison, WorkChange, WorkIn } from '../../engine/compare';
import type { Job } from '../../engine/workspace/job';
import { fromBlock } from '../from';
import type { From, Part } from '../paper/model';
import { saysOf, titleOf } from '../quote/work';
import type { ChangesWords, Words } from '../words';

export function workParts(between: Comparison, words: Words): Part[] {
  const parts = between.work.flatMap((change) => changePart(change, between, words));
  return parts.length ? [{ part: 'heading', level: 2, text: words.changes.work }, ...parts] : [];
}

/** Work of an option is there once it is taken, though its lines stood in the file before. */
function changePart(change: WorkChange, { before, after }: Comparison, words: Words): Part[] {
  const say = words.changes;
  const old = change.before?.work ? change.before : undefined;
  const now = change.after?.work ? change.after : undefined;
  const called = ({ work, title }: WorkIn, of: Comparison['after']) =>
    work ? titleOf(work, of.works, words.quote) : title;
  const all = (piece: WorkIn, of: Job) => allSaid(piece, of).map((text) => [text]);
  const from = fromBlock(now?.work?.block);
  if (old && now) {
    const items = moved(allSaid(old, before), allSaid(now, after), say);
    return [group(called(now, after), items, from)];
  }
  if (now) return [group(say.added(called(now, after)), all(now, after), from)];
  return old ? [group(say.dropped(called(old, before)), all(old, before))] : [];
}

/** Sentences that are no longer said, each with the one in its place. */
function moved(old: readonly string[], now: readonly string[], words: ChangesWords): string[][] {
  const gone = old.filter((text) => !now.includes(text));
  const fresh = now.filter((text) => !old.includes(text));
  if (!gone.length && !fresh.length) return [[words.same]];
  return [
    ...fresh.map((text) => [`${words.now}: ${text}`]),
    ...gone.map((text) => [`${words.before}: ${text}`]),
  ];
}

function allSaid({ work }: WorkIn, job: Job): readonly string[] {
  return work ? [...saysOf(work, job), ...work.notes] : [];
}

function group(title: string, items: readonly (readonly string[])[], from?: From): Part {
  return {
    part: 'together',
    parts: [
      { part: 'heading', level: 3, text: title, from },
      { part: 'list', items },
    ],
  };
}
