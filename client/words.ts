/** What the server says, in the language of the editor. Our own words the editor translates by itself. */
import { env, Uri, workspace } from 'vscode';
import type { Words } from '../shared/protocol/files';

/** Nothing where it is English, or a language that we do not have. */
export async function serverWords(extension: Uri): Promise<Words | undefined> {
  for (const language of languages(env.language)) {
    const file = Uri.joinPath(extension, 'client', 'l10n', `server.${language}.json`);
    const words = await read(file);
    if (words) return words;
  }
  return undefined;
}

/** `pt-br`, and then `pt`. English is what is written in the sources. */
function languages(language: string): string[] {
  const name = language.toLowerCase();
  const [main = name] = name.split('-');
  return main === 'en' ? [] : [...new Set([name, main])];
}

async function read(file: Uri): Promise<Words | undefined> {
  try {
    return JSON.parse(new TextDecoder().decode(await workspace.fs.readFile(file)));
  } catch {
    return undefined;
  }
}
