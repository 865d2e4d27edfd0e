/** Writes the fonts and their licence into a folder. */
export function makeFonts(folder: string): Promise<void>;
