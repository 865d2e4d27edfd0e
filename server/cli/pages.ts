/** Pages of help at a terminal: `perpend help fit-run`. They stand beside the program. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { HELP_FILE, pageFor } from '../../shared/protocol/help';

/** As text; nothing for what no page is about. */
export function helpPage(code: string): string | undefined {
  const file = path.join(__dirname, HELP_FILE);
  if (!existsSync(file)) return undefined;
  const page = pageFor(JSON.parse(readFileSync(file, 'utf8')), code);
  return page && plain(page);
}

/** Without the signs of Markdown: examples indented, and the title by itself. */
function plain(page: string): string {
  let inExample = false;
  const lines = page
    .trimEnd()
    .split('\n')
    .flatMap((line) => {
      if (line.startsWith('```')) {
        inExample = !inExample;
        return [];
      }
      if (inExample) return [`    ${line}`];
      return wrapped(line.replace(/^# /, '').replace(/\*\*|(?<![\w-])_|_(?![\w-])/g, ''));
    });
  return lines.join('\n');
}

/** As wide as a terminal is at the least. */
const WIDTH = 78;

function wrapped(text: string): string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1)!;
    if (line && line.length + 1 + word.length > WIDTH) lines.push(word);
    else lines[lines.length - 1] = line ? `${line} ${word}` : word;
  }
  return lines;
}
