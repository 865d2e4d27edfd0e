/**
 * Text for a row of a list, as it stands: an editor draws a picture where `$(flame)` is written, and the words of a job or
 * of a commit never become one. A sign that nobody sees stands between the two.
 */
export function iconless(text: string): string {
  return text.replace(/\$(?=\()/g, '$\u2060');
}
