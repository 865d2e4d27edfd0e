/** A paper as JSON: what it says, in the order it is read. Of a drawing its words; `perpend draw` gives the drawing. */
import { VERSION } from '../../../shared/version';
import type { Paper, Part } from './model';

export function paperJson(paper: Paper, file: string): string {
  const { kind, lang, date, title, letterhead, parts, foot } = paper;
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-paper',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file,
    kind,
    lang,
    date,
    title,
    letterhead: letterhead && {
      name: letterhead.name,
      address: letterhead.address,
      contact: letterhead.contact,
    },
    parts: parts.flatMap(partJson),
    foot,
  };
  return `${JSON.stringify(document)}\n`;
}

/** Where pages end is no part of what is said. */
function partJson(part: Part): object[] {
  if (part.part === 'new-page') return [];
  if (part.part === 'together') return part.parts.flatMap(partJson);
  // Which lines it tells of is for an editor alone.
  if (part.part === 'table')
    return [{ ...part, rows: part.rows.map(({ cells, role }) => ({ cells, role })) }];
  if (part.part === 'list') return [{ ...part, from: undefined }];
  return part.part === 'drawing' ? [{ part: 'drawing', words: part.words }] : [part];
}
