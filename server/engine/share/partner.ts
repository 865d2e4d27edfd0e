/** A copy of a job for a partner firm, or why none can be made. */
import { later, phrase, spoken } from '../../../shared/phrase';
import type { Place } from '../../../shared/span';
import type { Job } from '../workspace/job';
import { type SharedCopy, sharedCopy } from './index';
import { unreadIn, wrongIn } from './proof';
import { wholeCopy } from './whole';

export const LEVELS = ['costs', 'money', 'nothing'] as const;
export type Level = (typeof LEVELS)[number];

export interface ForPartner {
  /** What the copy is to be without. */
  readonly level: Level;
  /** Whether client, site and reference go with it. */
  readonly client: boolean;
  /** Said at its head: see {@link whomSaid}. */
  readonly whom: string;
}

export type PartnerCopy = Pick<SharedCopy, 'text' | 'left' | 'replaced'>;

/** One line of plain words; empty where nothing was said. */
export function whomSaid(said: string): string {
  return said
    .replace(/[\p{C}\p{Z}]+/gu, ' ')
    .trim()
    .slice(0, 120);
}

/** The job’s own name may say who it is for, and so is not used. */
export function partnerFile(whom: string): string {
  const words = whom.toLowerCase().match(/[\p{L}\p{N}]+/gu);
  return `job-for-${(words?.join('-') ?? 'partner').slice(0, 60)}.perp`;
}

const SAID: Readonly<Record<Level, string>> = {
  costs: later`without costs and margin`,
  money: later`without money`,
  nothing: later`whole`,
};

/**
 * @param shown what a reader calls a place of a file
 * @returns a sentence where there can be no copy
 * @throws Error where the copy holds what it should not
 */
export function partnerCopy(
  job: Job,
  { level, client, whom }: ForPartner,
  called: { readonly file: string; readonly check: string; at(place: Place): string },
): PartnerCopy | string {
  const head = phrase`A copy for ${whom}, ${spoken(SAID[level])}.`;
  if (level === 'nothing')
    return { text: wholeCopy(job, head), left: new Map<string, number>(), replaced: [] };
  const unread = unreadIn(job.scope.files);
  if (unread)
    return phrase`${called.file} is not shared: ${called.at(unread)} cannot be read, and so what it would hide is not known. See: ${called.check}`;
  const copy = sharedCopy(job, { without: level, client, head });
  if (copy.names.length)
    return phrase`${called.file} is not shared: ${copy.names.map((n) => phrase`“${n}”`).join(', ')} says who it is for, and a name cannot be left out. Give it another in the job.`;
  const wrong = wrongIn(copy.text, level);
  if (wrong) throw new Error(`The copy holds ${wrong}, and is not written.`);
  return copy;
}

/** What it says that the client pays; nothing of a whole copy, in which everything is said. */
export function priceTold({ text, left }: PartnerCopy): string | undefined {
  return /^ {2}agreed +(.+)$/m.exec(left.size ? text : '')?.[1];
}
