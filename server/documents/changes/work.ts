/** The work that has changed, in the words that the quotes have for it. */
import type { Comparison, WorkChange, WorkIn } from '../../engine/compare';
import type { Part } from '../paper/model';
import { titleOf } from '../quote/work';
import type { ChangesWords, Words } from '../words';

export function workParts(between: Comparison, words: Words): Part[] {
  const parts = between.work.map((change) => changePart(change, between, words));
  return parts.length ? [{ part: 'heading', level: 2, text: words.changes.work }, ...parts] : [];
}

function changePart(change: WorkChange, { before, after }: Comparison, words: Words): Part {
  const say = words.changes;
  const called = (piece: WorkIn, of: Comparison['after']) =>
    piece.work ? titleOf(piece.work, of.works, words.quote) : piece.title;
  if (change.change === 'gone') {
    const piece = change.before!;
    return group(
      say.dropped(called(piece, before)),
      saysOf(piece).map((text) => [text]),
    );
  }
  const piece = change.after!;
  const title = called(piece, after);
  if (change.change === 'new')
    return group(
      say.added(title),
      saysOf(piece).map((text) => [text]),
    );
  return group(title, moved(change, say));
}

/** Sentences that are no longer said, each with the one in its place. */
function moved({ before, after }: WorkChange, words: ChangesWords): string[][] {
  const [old, now] = [saysOf(before!), saysOf(after!)];
  const gone = old.filter((text) => !now.includes(text));
  const fresh = now.filter((text) => !old.includes(text));
  if (!gone.length && !fresh.length) return [[words.same]];
  return [
    ...fresh.map((text) => [`${words.now}: ${text}`]),
    ...gone.map((text) => [`${words.before}: ${text}`]),
  ];
}

function saysOf({ work }: WorkIn): readonly string[] {
  return work ? [...work.facts.says, ...work.notes] : [];
}

function group(title: string, items: readonly (readonly string[])[]): Part {
  return {
    part: 'together',
    parts: [
      { part: 'heading', level: 3, text: title },
      { part: 'list', items },
    ],
  };
}
