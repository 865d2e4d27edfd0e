/** What the firm says of a wall to the client. */
import { wordOf } from '../../resolve/book';
import { BlockFacts } from '../../resolve/env';

/** The wall's own notes, and those of its openings and piers, each under the title of what it is of. */
export function notesOf(facts: BlockFacts): string[] {
  const inside = ['opening', 'pier'].flatMap((key) => facts.lines(key));
  return [
    ...sentences(facts),
    ...inside.flatMap((part) => {
      const title = wordOf(part.values.title);
      const said = sentences(new BlockFacts(part.block, part.line, facts.env));
      return title ? said.map((sentence) => `${title}: ${sentence}`) : said;
    }),
  ];
}

function sentences(facts: BlockFacts): string[] {
  return facts.lines('note').map((note) => note.word('text'));
}
