/** A rate per something that is no unit of what it is a rate of: per week, per furlong. */

import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import type { Origin } from '../working/term';
import { meantBy } from './names';
import { type Remark, rewrite } from './remark';

export function perUnknown(origin: Origin, word: string, takes: readonly string[]): Remark {
  const meant = meantBy(word, takes);
  const message = phrase`“${word}” is nothing that this can be reckoned by. It can be ${listed(takes)}. Nothing is guessed at: what hangs on it is left out of the totals.`;
  const ways = meant
    ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
    : [];
  return { code: 'per-unknown', severity: 'error', origin, message, ways };
}
