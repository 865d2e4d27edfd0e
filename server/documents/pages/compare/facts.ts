/** What a job says besides its work, and what files that it uses say, where it is other than before. */
import type { Comparison, FactChange } from '../../../engine/compare';
import { under } from '../../cells';
import type { Part } from '../../paper/model';
import type { CompareWords } from '../../words';
import { lineText } from './changes';
import { factHead, factLinesTold } from './told';

export function factParts({ facts }: Comparison, words: CompareWords): Part[] {
  if (!facts.length) return [];
  const items = facts.map((fact) => [
    headOf(fact, words),
    ...(fact.change === 'moved' ? [] : factLinesTold(fact).map((line) => lineText(line, words))),
  ]);
  return under(words.facts, { part: 'list', items });
}

function headOf(fact: FactChange, words: CompareWords): string {
  if (fact.change === 'moved') return words.movedLines('use');
  const said = factHead(fact);
  if (fact.change === 'new') return words.isNew(said);
  return fact.change === 'gone' ? words.isGone(said) : said;
}
