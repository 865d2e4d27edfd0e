/** Words of the notation where they stand in sentences: what kind a thing is, and at which end of a wall it is. */
import { later, phrase, spoken } from '../../shared/phrase';

const KINDS: ReadonlySet<string> = new Set([
  later`job`,
  later`wall`,
  later`pier`,
  later`repair`,
  later`opening`,
  later`cost`,
  later`option`,
  later`brick`,
  later`bond`,
  later`mix`,
  later`material`,
  later`measure`,
  later`trade`,
  later`partner`,
  later`tolerance`,
  later`yield-model`,
  later`mortar-class`,
  later`caution`,
]);

/** What the word of a heading is called in a sentence; a word that is no kind stays as it is. */
export function kindSaid(kind: string): string {
  return KINDS.has(kind) ? spoken(kind) : kind;
}

/** The end of a wall, as it stands after “at the”. */
export function endSaid(side: string): string {
  return side === 'left' ? phrase`left end` : phrase`right end`;
}
