/** What a reader types into a question, made ready for the server. */
import { l10n } from 'vscode';

/** The day here, as jobs write it. */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** What is wrong with a day; nothing when nothing is. */
export function wrongDay(said: string): string | undefined {
  const text = said.trim();
  const at = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  const is = !Number.isNaN(at) && new Date(at).toISOString().startsWith(text);
  return is ? undefined : l10n.t('Write a day like this: 2026-03-02.');
}

/** Words as a line of a job has them: a text in quotation marks is one word. */
export function wordsOf(said: string): string[] {
  return said.match(/"(?:[^"\\]|\\.)*"|\S+/g) ?? [];
}

/** Nothing for what was left empty. */
export function given(said: string | undefined): string | undefined {
  return said?.trim() || undefined;
}
