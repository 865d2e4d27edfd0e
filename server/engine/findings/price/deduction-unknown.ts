/** A scheme of deduction that no file knows. */
import { phrase } from '../../../../shared/phrase';
import { schemes, schemeWord } from '../../price/deducted';
import { allOfPrice } from '../../price/settings';
import type { Env } from '../../resolve/env';
import { meantBy } from '../names';
import { type Remark, rewrite } from '../remark';

export function deductionUnknown(env: Env): Remark[] {
  const known = [...new Set(schemes(env).map(schemeWord))];
  return allOfPrice(env, 'deducted').flatMap((line): Remark[] => {
    const word = line.word('scheme');
    if (!word || known.includes(word)) return [];
    const meant = meantBy(word, known);
    const said = known.length
      ? phrase`Known are: ${known.join(', ')}.`
      : phrase`No file gives any.`;
    const message = phrase`No file says what “${word}” deducts, so nothing is. ${said} Or write it out: deducted 20% of labour "Tax deducted at source".`;
    const origin = line.at('scheme');
    const ways = meant
      ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
      : [];
    return [{ code: 'deduction-unknown', severity: 'error', origin, message, ways }];
  });
}
