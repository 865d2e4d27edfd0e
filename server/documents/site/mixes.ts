/** Mortar for the site: how much of each mix, in what batches, and what goes into one. */
import { type Mixed, mixedIn } from '../../engine/views/mixing';
import type { Job } from '../../engine/workspace/job';
import { fromBlock, fromTerms } from '../from';
import type { Part, Row } from '../paper/model';
import type { SiteWords } from '../words';

export function mixParts(job: Job, words: SiteWords): Part[] {
  const all = mixedIn(job);
  if (!all.length) return [];
  return [
    { part: 'heading', level: 2, text: words.mixes },
    ...all.map((mix) => oneMix(mix, words)),
  ];
}

function oneMix({ title, wet, batches, parts, terms, block }: Mixed, words: SiteWords): Part {
  const rows = parts.map(
    (part): Row => ({
      cells: [
        { text: part.title || words.packs },
        { text: part.amount },
        { text: part.measures.join(', ') },
      ],
      from: fromTerms(part.term),
    }),
  );
  return {
    part: 'together',
    parts: [
      { part: 'heading', level: 3, text: title, from: fromBlock(block) },
      { part: 'words', text: `${wet}: ${batches}`, from: fromTerms(...terms) },
      {
        part: 'table',
        name: title,
        columns: [
          { title: words.inBatch, holds: 'text' },
          { title: words.amount, holds: 'number' },
          { title: words.measure, holds: 'text' },
        ],
        rows,
      },
    ],
  };
}
