/** What the editor calls our notation, and the server. */
export const LANGUAGE = 'perpend';
