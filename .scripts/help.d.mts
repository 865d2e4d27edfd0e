/** Pages of help, in Markdown, by the code of what they explain. */
export function helpPages(): Record<string, string>;
