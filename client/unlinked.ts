/**
 * Text for a message of the editor, as it stands. An editor makes links of `[words](command:…)` in messages and under
 * questions, and one click then runs the command: the words of a job, a file’s name among them, never become one.
 */
export function unlinked(text: string): string {
  return text.replace(/\](?=\()/g, '] ');
}
