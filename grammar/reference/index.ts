/** The reference of the notation, made from the table of lines and the table of units. */
import { headings } from './headings';
import { reading } from './reading';

const TITLE = `# The notation

This page is made from the tables that the reader itself uses (\`npm run reference\`); change it there.`;

/** The text of `REFERENCE.md`, in Markdown. */
export function reference(): string {
  return `${[TITLE, ...reading(), headings()].join('\n\n')}\n`;
}
