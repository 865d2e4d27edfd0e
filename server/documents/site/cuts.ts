/** The cuts of bricks that are cut together: a table of the pieces, and what each brick is cut into. */
import { cutRow } from '../../engine/brickwork/cuts/rows';
import type { CutPart } from '../../engine/brickwork/cuts/sheet';
import { cuttingsText } from '../../engine/brickwork/cuts/text';
import type { Job } from '../../engine/workspace/job';
import { fromTerms } from '../from';
import type { Part } from '../paper/model';
import type { SiteWords } from '../words';

export function cutTable(part: CutPart, { env }: Job, words: SiteWords): Part[] {
  const { label, brick, places, needed, alike } = part;
  const from = fromTerms(part.bricks);
  const times = alike > 1 ? ` × ${alike}` : '';
  const numbers = new Set([2, 3]);
  const table: Part = {
    part: 'table',
    name: `${words.cuts}: ${label}`,
    columns: words.cutHeads.map((title, i) => ({
      title,
      holds: numbers.has(i) ? 'number' : 'text',
    })),
    rows: places.map((place) => ({ cells: cutRow(place, env).map((text) => ({ text })), from })),
  };
  const [head, ...ways] = cuttingsText(needed, env);
  return [
    { part: 'heading', level: 3, text: `${words.cuts}: ${label} (${brick})${times}`, from },
    ...(places.length ? [table] : []),
    ...cutFrom(head, ways),
  ];
}

/** How many bricks it takes, and what each is cut into. */
function cutFrom(head: string | undefined, ways: readonly string[]): Part[] {
  if (!head) return [];
  const items = ways.map((way) => [way.trim()]);
  return [
    {
      part: 'together',
      parts: [
        { part: 'words', text: sentence(head) },
        { part: 'list', items },
      ],
    },
  ];
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
