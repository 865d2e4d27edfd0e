/** The files of this folder that are made from the table of lines. */
import { reference } from './reference';
import { snippets } from './snippets';
import { languageConfiguration, textmateGrammar } from './textmate';

/** Path from the project's top to text. The JSON is laid out by the project's formatter afterwards. */
export function generated(): Readonly<Record<string, string>> {
  return {
    'grammar/REFERENCE.md': reference(),
    'grammar/textmate/perpend.tmLanguage.json': json(textmateGrammar()),
    'grammar/textmate/language-configuration.json': json(languageConfiguration()),
    'grammar/textmate/snippets.json': json(snippets()),
  };
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
